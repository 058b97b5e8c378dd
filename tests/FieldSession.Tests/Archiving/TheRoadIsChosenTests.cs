using FieldSession.Archiving;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Archiving;

/// <summary>Earlier days say which segments are worth driving.</summary>
public sealed class TheRoadIsChosenTests
{
    private static readonly StudyIdentity SomeStudy = StudyIdentity.WithHash(new string('a', 64))!.Value;

    [Fact]
    public void Segments_that_tell_more_a_minute_are_proposed_with_the_runs_they_save()
    {
        RoadAdvice advice = RoadAdvice.Of(Plan, [Day(), Day()])!;

        RoadSwap swap = Assert.Single(advice.Swaps);
        Assert.Equal(("Mill lane", "Long hill"), (swap.Out.Segment, swap.In.Segment));
        // by hand: 12 of 12 readings in 12 times 30 s at 0.5 dB, against 12 of 16 in 16 times 40 s at 1 dB
        Assert.Equal(12 / 6.0 / 0.25, swap.In.PerDb2Minute!.Value, 9);
        Assert.Equal(12 / (16 * 40 / 60.0) / 1.0, swap.Out.PerDb2Minute!.Value, 9);
        Assert.Equal("cobble", Assert.Single(advice.Missing).Kind);
        Assert.Empty(advice.Spoilt);
        Assert.True(advice.RunsThen < advice.RunsNow, $"{advice.RunsNow} {advice.RunsThen}");
        Assert.Equal("Drive Long hill for Mill lane: it says 7.1 times as much per minute.", RoadWords.Of(advice).First());
        Assert.All(RoadWords.Of(advice), words => Assert.InRange(words.Split(' ').Length, 1, 16));
    }

    [Fact]
    public void A_segment_that_loses_more_than_a_third_of_its_readings_is_named()
    {
        RoadAdvice advice = RoadAdvice.Of(Plan, [Day(counted: 2), Day(counted: 2)])!;
        Assert.Equal("Mill lane", Assert.Single(advice.Spoilt).Segment);
        Assert.Contains("Mill lane lost 75 % of its readings: choose another.", RoadWords.Of(advice));
    }

    [Fact]
    public void An_archive_of_another_road_or_of_one_day_says_nothing()
    {
        Assert.Null(RoadAdvice.Of(Plan, [Day()]));
        Assert.Null(RoadAdvice.Of(Plan with { Route = [Plan.Route[0] with { Name = "Nowhere" }] }, [Day(), Day()]));
        Assert.Null(RoadAdvice.Of(Plan, [Day() with { IsFinished = false }, Day()]));
    }

    [Fact]
    public void The_orders_command_and_the_plan_screen_tell_it()
    {
        using AnArchive archive = new();
        archive.Finished("AR-1", 0.6).Finished("AR-2", 1.0);
        string plan = archive.Plan("AR-9", $"archive = \"{archive.Folder}\"\n");
        archive.Prompt.Write("AR-9/route.csv", AnArchive.Route.Replace("Quarry road,coarse,80,900\n", "", StringComparison.Ordinal));
        Assert.Contains(
            "No coarse segment is in the plan: add Quarry road.",
            archive.Prompt.Must(Terminal.Commands.ExitCode.Done, ["orders", plan]),
            StringComparison.Ordinal
        );

        ADay day = new();
        Terminal.EditedPlan edited = new(
            plan,
            _ => [],
            found => Terminal.Commands.ArchiveCommand.RoadOf(plan, found, archive.Prompt.Outside())
        );
        using Tui tui = new(day.Book, day.Clock, desk => desk with { PlanTable = edited }, rows: 40, screen: Terminal.ScreenName.Plan);
        tui.Keys("<Ctrl+O>");
        Assert.Contains("No coarse segment is in the plan: add Quarry road.", tui.Screen.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private static Plan Plan =>
        new()
        {
            StudyName = "next",
            SpecCount = 2,
            Order = [new Place(0), new Place(1), new Place(1), new Place(0)],
            Route = [Segment(1, "Mill lane", "smooth"), Segment(2, "Quarry road", "coarse")],
        };

    private static Segment Segment(int number, string name, string kind) =>
        new(number, name, SegmentKind.Of(kind), Measures.Speed.FromKmh(60), Measures.Distance.FromMetres(600));

    private static ArchivedStudy Day(int counted = 6) =>
        new(SomeStudy, "AR", null, ["Ro"], "", 6, true, [new ArchivedScatter("steady", false, 4, 0.3, 0.2, 20, 0.8)], [])
        {
            Details = ArchivedDetails.None with
            {
                Segments =
                [
                    new ArchivedSegment(1, "Mill lane", "smooth", 40, 8, counted, 0, 4, 1),
                    new ArchivedSegment(2, "Quarry road", "coarse", 36, 6, 6, 0, 4, 0.6),
                    new ArchivedSegment(3, "Long hill", "smooth", 30, 6, 6, 0, 4, 0.5),
                    new ArchivedSegment(4, "Old setts", "cobble", 30, 6, 6, 0, 4, 1.5),
                ],
            },
        };
}
