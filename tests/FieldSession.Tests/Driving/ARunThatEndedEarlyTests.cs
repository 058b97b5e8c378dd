using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

/// <summary>A run that ended before its last segment: aborted with a cause, its place offered again, what was read kept.</summary>
public sealed class ARunThatEndedEarlyTests
{
    private static readonly string[] Whole = ["5860", "6365", "714"];

    private static ADay Aborted(Plan? plan = null) =>
        new ADay(plan).Ready().Typed(["run 417", .. Whole]).Typed("run 862", "5961", "end puncture");

    [Fact]
    public void It_is_aborted_with_its_cause_and_its_place_is_offered_again()
    {
        ADay day = Aborted();
        Assert.Equal("puncture", day.Study.Runs[1].Aborted?.Cause);
        Assert.Equal("862", day.Study.CodeAsked?.Digits);
        Assert.Equal("run 3 on 862, again for run 2; first segment 1 Mill lane", day.Answer("run 862").Words);
        Assert.Equal((2, 1), (day.Study.Runs[2].Turn + 1, day.Study.Runs[2].Step));
        Assert.Null(day.Study.Runs[2].Doubt);
    }

    [Fact]
    public void Several_aborts_of_one_place_are_each_kept_and_the_order_ends_where_it_was_planned()
    {
        ADay day = Aborted().Typed(["run 862", "5961", "end t", "run 862", .. Whole]).Typed(["run 417", .. Whole]);
        Assert.True(day.Study.OrderDriven);
        Assert.Equal([null, "puncture", "traffic", null, null], day.Study.Runs.Select(run => run.Aborted?.Cause));
        Assert.Equal([0, 1, 1, 1, 2], day.Study.Runs.Select(run => run.Turn));
        Assert.Single(Brackets.Of(day.Study));
    }

    [Fact]
    public void The_order_is_not_driven_while_its_last_run_is_aborted()
    {
        ADay day = new ADay().Ready().Typed(["run 417", .. Whole]).Typed(["run 862", .. Whole]).Typed("run 417", "5860", "end");
        Assert.False(day.Study.OrderDriven);
        Assert.Equal("417", day.Study.CodeAsked?.Digits);
        day.Typed("end rain came");
        Assert.Equal("rain came", day.Study.Runs[2].Aborted?.Cause);
    }

    [Fact]
    public void Who_goes_on_with_the_next_code_leaves_it_aborted_and_no_run_is_doubtful()
    {
        ADay day = Aborted();
        Assert.Equal("run 3 on 417; run 2 stays aborted; first segment 1 Mill lane", day.Answer("run 417").Words);
        day.Typed(Whole[0], Whole[1], Whole[2]);
        Assert.True(day.Study.OrderDriven);
        Assert.All(day.Study.Runs, run => Assert.Null(run.Doubt));
    }

    [Theory]
    [InlineData(null, false, false)]
    [InlineData(null, true, true)]
    [InlineData(AbortRule.Both, true, false)]
    [InlineData(AbortRule.Neither, false, true)]
    public void What_was_read_before_counts_by_the_rule_of_the_plan(AbortRule? rule, bool isRepeated, bool isLeftOut)
    {
        ADay day = Aborted(ADay.ShortPlan with { AbortRule = rule });
        _ = isRepeated ? day.Typed(["run 862", .. Whole]) : day;
        MeasuredLevel level = StudyReadings.Of(day.Study).Levels.Single(one => one.Run == 2);
        Assert.Equal((isLeftOut, isLeftOut ? "run aborted" : null), (level.Spoilt, level.Cause));
    }

    [Fact]
    public void An_undo_puts_the_run_on_again() => Assert.Equal(2, Aborted().Typed("u").Study.RunOn?.Number);

    [Fact]
    public void A_line_of_an_older_program_ends_a_run_as_it_did_then()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860");
        Assert.True(day.Book.Write(new FieldSession.Driving.RunEnded()).IsWritten);
        Assert.Null(day.Study.Runs[0].Aborted);
        Assert.Equal("862", day.Study.CodeAsked?.Digits);
    }
}
