using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

public class ABracketIsDrivenAgain
{
    private static Plan FiveRuns => ADay.ShortPlan with { Order = [new Place(0), new Place(1), new Place(0), new Place(1), new Place(0)] };

    [Theory]
    [InlineData("rerun bracket 1")]
    [InlineData("rerun 1 odd value")]
    [InlineData("rerun run 2 odd value")]
    [InlineData("rerun bracket x odd value")]
    public void Only_a_whole_bracket_and_only_with_a_reason(string line) =>
        Assert.Contains("rerun bracket 2 WHY", ThreeRuns().Refusal(line).Instead);

    [Fact]
    public void A_bracket_that_was_not_driven_can_not_be_driven_again()
    {
        Assert.Contains("no bracket 2", ThreeRuns().Refusal("rerun bracket 2 lorry").Why);
        Assert.Contains("nothing has been driven", new ADay(FiveRuns).Ready().Refusal("rerun bracket 1 lorry").Why);
        Assert.Contains("is on", ThreeRuns().Typed("run 862").Refusal("rerun bracket 1 lorry").Why);
    }

    [Fact]
    public void It_is_driven_next_as_a_whole_and_the_order_goes_on_after_it()
    {
        ADay day = ThreeRuns().Typed("rerun bracket 1 lorry ahead");
        Assert.Equal(8, day.Study.RunsToDrive);
        foreach (string code in new[] { "417", "862", "417", "862", "417" })
        {
            Assert.Equal(code, day.Study.CodeAsked!.Value.Digits);
            Run(day, code);
        }

        Assert.True(day.Study.OrderDriven);
        Assert.Equal(8, day.Study.Runs.Count);
        Assert.All(day.Study.Runs, run => Assert.Null(run.Doubt));
    }

    [Theory]
    [InlineData(null, "1 2 3")]
    [InlineData(RerunRule.Rerun, "1 2 3")]
    [InlineData(RerunRule.First, "4 5")]
    [InlineData(RerunRule.Both, "")]
    public void The_plans_rule_decides_which_drive_counts_and_both_are_kept(RerunRule? rule, string leftOut)
    {
        ADay day = ThreeRuns(FiveRuns with { RerunRule = rule }).Typed("rerun bracket 1 lorry ahead");
        Run(day, "417");
        Run(day, "862");
        Assert.Empty(LeftOut(day));
        Run(day, "417");
        Run(day, "862");
        Run(day, "417");
        Assert.Equal(leftOut, string.Join(' ', LeftOut(day)));
        Assert.Equal(24, StudyReadings.Of(day.Study).Levels.Count);
    }

    [Fact]
    public void The_rule_never_looks_at_a_reading()
    {
        ADay quiet = ThreeRuns().Typed("rerun bracket 1 lorry ahead");
        ADay loud = ThreeRuns().Typed("rerun bracket 1 lorry ahead");
        foreach (string code in new[] { "417", "862", "417" })
        {
            quiet.Typed($"run {code}", "5050", "5555", "600");
            loud.Typed($"run {code}", "8080", "8585", "900");
        }

        Assert.Equal(LeftOut(quiet), LeftOut(loud));
        Assert.NotEmpty(LeftOut(quiet));
    }

    [Fact]
    public void Replaced_runs_are_called_replaced_and_their_readings_are_not_counted_as_spoilt()
    {
        ADay day = new ADay(FiveRuns).Ready();
        day.Typed("run 417", "6060 t lorry", "6565", "700");
        Run(day, "862");
        Run(day, "417");
        day.Typed("rerun bracket 1 lorry ahead");
        Run(day, "417");
        Run(day, "862");
        Run(day, "417");
        Comparison found = BlindComparison.Of(StudyReadings.Of(day.Study), StudyTerms.Of(day.Study));
        string[] remarks = [.. found.Comparisons[0].Classes.Steady!.Remarks];
        Assert.Equal((18, 0, 9), (found.Readings.Total, found.Readings.Spoilt, found.Readings.Replaced));
        Assert.Empty(found.Readings.ByCause);
        Assert.Contains("replaced or aborted, so left out of the clean result: run 1, 2, 3", remarks);
        Assert.DoesNotContain(remarks, remark => remark.StartsWith("not counted", StringComparison.Ordinal));
    }

    [Fact]
    public void It_can_be_taken_back()
    {
        ADay day = ThreeRuns().Typed("rerun bracket 1 lorry ahead", "u");
        Assert.Equal(5, day.Study.RunsToDrive);
        Assert.Equal("862", day.Study.CodeAsked!.Value.Digits);
    }

    private static ADay ThreeRuns(Plan? plan = null)
    {
        ADay day = new ADay(plan ?? FiveRuns).Ready();
        Run(day, "417");
        Run(day, "862");
        Run(day, "417");
        return day;
    }

    private static void Run(ADay day, string code) => day.Typed($"run {code}", "6060", "6565", "700");

    private static int[] LeftOut(ADay day) =>
        [
            .. StudyReadings
                .Of(day.Study)
                .Levels.Where(level => level.Cause == StudyReadings.DrivenAgain)
                .Select(level => level.Run)
                .Distinct()
                .Order(),
        ];
}
