using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Checking;

public class BracketsAreLookedAt
{
    [Theory]
    [InlineData("61-61", "66-66", 0)]
    [InlineData("61-61", "66.2-66.2", 1)]
    [InlineData("62-62", "67-67", 1)]
    [InlineData("62-62", "67.2-67.2", 2)]
    public void The_controls_repeat_warns_and_then_makes_the_bracket_void(string first, string second, int gravity)
    {
        BracketCheck check = Assert.Single(BracketCheck.Of(Driven(first, second).Study));
        Limits limits = new();
        Assert.Equal(gravity > 0, check.Warnings(limits).Any(words => words.Contains("repeats", StringComparison.Ordinal)));
        Assert.Equal(gravity > 1, check.IsVoid(limits));
    }

    [Theory]
    [InlineData("11.1", false)]
    [InlineData("11.2", true)]
    public void The_air_may_change_by_five_degrees_within_a_bracket(string air, bool warns)
    {
        ADay day = new ADay()
            .Ready()
            .Typed(
                "run 417",
                "6060",
                "6565",
                "700",
                $"weather air={air}",
                "run 862",
                "6060",
                "6565",
                "700",
                "run 417",
                "6060",
                "6565",
                "700"
            );
        Assert.Equal(
            warns,
            Assert
                .Single(BracketCheck.Of(day.Study))
                .Warnings(new Limits())
                .Any(words => words.Contains("the air changed", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData(60, false)]
    [InlineData(61, true)]
    public void An_hour_may_pass_between_two_runs_of_a_bracket(int minutes, bool warns)
    {
        ADay day = new ADay().Ready().Typed("run 417", "6060", "6565", "700");
        day.Clock.Advance(TimeSpan.FromMinutes(minutes));
        day.Typed("run 862", "6060", "6565", "700", "run 417", "6060", "6565", "700");
        Assert.Equal(
            warns,
            Assert
                .Single(BracketCheck.Of(day.Study))
                .Warnings(new Limits())
                .Any(words => words.Contains("min between", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("t", "", true)]
    [InlineData("", "", false)]
    public void A_run_with_a_third_of_its_readings_spoilt_is_offered_again(string one, string other, bool offered)
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "6060", "6565", "700", "run 862", $"6060 {one}", $"6565 {other}", "700", "run 417", "6060", "6565", "700");
        Assert.Equal(
            offered,
            Assert
                .Single(BracketCheck.Of(day.Study))
                .Warnings(new Limits())
                .Any(words => words.Contains("rerun bracket 1", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Uneven_flags_and_a_segment_without_a_clean_reading_are_told_by_code()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "6060", "6565", "700", "run 862", "6060 t", "6565", "700", "run 417", "6060", "6565", "700");
        string[] words = [.. SpoiltBalance.Warnings(day.Study)];
        Assert.Contains(words, word => word.Contains("uneven", StringComparison.Ordinal));
        Assert.Contains(words, word => word.Contains("every reading of 862 on Mill lane", StringComparison.Ordinal));
        Assert.Empty(SpoiltBalance.Warnings(Driven("60-60", "65-65").Study));
    }

    [Fact]
    public void The_report_lists_checks_warnings_overrides_and_changed_limits()
    {
        ADay day = new ADay().Typed(
            "calibration before 94.0",
            "weather wind=9",
            "override wind one gust",
            "check tyres tread=0.9",
            "run 417",
            "end"
        );
        string report = string.Join('\n', ChecksSection.Of(day.Study).Blocks.SelectMany(Texts));
        string[] parts = ["tread depth differs by 0.9 mm, more than 0.5 mm", "look out", "Overridden before run 1: wind: one gust"];
        Assert.All(parts, part => Assert.Contains(part, report));
    }

    [Fact]
    public void What_the_next_day_has_to_drive_follows_from_what_is_missing()
    {
        ADay day = new ADay().Ready().Typed("run 417", "6060", "6565", "700", "calibration after 94.7");
        string[] missing = [.. StillMissing.In(day.Study)];
        Assert.Contains(missing, words => words == "still to drive: 862 417; begin the next session with 'calibration before'");
        Assert.Contains(missing, words => words.StartsWith("session 1 is void", StringComparison.Ordinal));
        ADay whole = Driven("60-60", "65-65");
        Assert.Contains(
            StillMissing.In(whole.Study),
            words => words.StartsWith("862 has 1 bracket; 2 are the least", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Another_day_is_asked_for_until_every_code_is_in_four_brackets_and_its_order_is_told()
    {
        ADay day = Driven("60-60", "65-65");
        Assert.Equal("for another day type 'amend order=R 1 R R 1 R because WHY', then 'calibration before'", NextDay.Line(day.Study));
        day.Typed("amend order=R 1 R 1 R 1 R 1 R because three brackets more");
        Assert.Null(NextDay.Line(day.Study));
        for (int bracket = 0; bracket < 3; bracket++)
        {
            day.Typed("run 862", "6060", "6565", "700", "run 417", "6060", "6565", "700");
        }

        Assert.Empty(StillMissing.In(day.Study));
        Assert.Null(NextDay.Line(day.Study));
    }

    [Fact]
    public void Every_second_day_goes_backwards()
    {
        ADay day = new ADay(ADay.ShortPlan with { Order = [new Place(0), new Place(1)] })
            .Ready()
            .Typed("run 417", "6060", "6565", "700", "run 862", "6060", "6565", "700");
        Assert.Contains("order=R 1 1 R because", NextDay.Line(day.Study));
        day.Typed("amend order=R 1 1 R because a day more", "run 862", "6060", "6565", "700", "run 417", "6060", "6565", "700");
        Assert.Contains("order=R 1 1 R R 1 because", NextDay.Line(day.Study));
    }

    private static ADay Driven(string first, string second) =>
        new ADay().Ready().Typed("run 417", "6060", "6565", "700", "run 862", "6060", "6565", "700", "run 417", first, second, "700");

    private static IEnumerable<string> Texts(ReportBlock block) =>
        block switch
        {
            Paragraph paragraph => [paragraph.Words],
            Points points => points.Items,
            ReportTable table => table.Rows.SelectMany(row => row),
            _ => [],
        };
}
