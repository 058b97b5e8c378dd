using FieldSession.State;
using FieldSession.Terminal.Screens.Driving;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class ALargeStudyTests
{
    [Fact]
    public void A_study_too_large_to_be_compared_on_the_move_is_compared_at_the_stop()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714", "run 862", "5961");
        Run long417 = day.Study.Runs[0] with
        {
            Passages = [.. Enumerable.Repeat(day.Study.Runs[0].Passages[0], RunningComparison.MostPassagesComparedOnTheMove)],
        };
        Study large = day.Study with { Runs = day.Study.Runs.SetItem(0, long417) };

        Assert.All(Rows(large), row => Assert.Equal("compared at the stop", row.WhyCovered));
        Study atTheStop = large.WithLastRun(large.LastRun! with { Ended = large.LastRun!.Started });
        Assert.False(Rows(atTheStop)[0].IsCovered);
        Assert.False(Rows(day.Study)[0].IsCovered);
    }

    private static System.Collections.Immutable.ImmutableArray<SegmentRow> Rows(Study study) =>
        RunningComparison.Of(study, FieldSession.Comparing.BlindComparison.Of);
}
