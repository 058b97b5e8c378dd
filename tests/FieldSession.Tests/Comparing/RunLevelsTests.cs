using FieldSession.Comparing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Comparing;

public sealed class RunLevelsTests
{
    // by hand: middles 59 and 64, 60 and 65, 59 and 64.5
    [Fact]
    public void With_nothing_spoilt_a_run_s_level_is_the_mean_of_its_segments()
    {
        RunLevels levels = RunLevels.Of(Day("6465"), MeasureClass.Steady)!;
        Assert.Equal([1, 2, 3], levels.Runs.Select(run => run.Run));
        Assert.Equal(["417", "862", "417"], levels.Runs.Select(run => run.Code));
        Assert.Equal([61.5, 62.5, 61.75], levels.Runs.Select(run => Math.Round(run.LevelDb, 9)));
    }

    // by hand: the two runs on 417 differ by 0 on Mill lane, so Quarry road is taken as read in run 1
    [Fact]
    public void A_spoilt_segment_does_not_make_its_run_quiet_or_loud() =>
        Assert.Equal(61.5, RunLevels.Of(Day("7476 t"), MeasureClass.Steady)!.Runs[2].LevelDb, 9);

    [Fact]
    public void Two_codes_at_least_are_needed() =>
        Assert.Null(RunLevels.Of(StudyReadings.Of(new ADay().Ready().Typed("run 417", "5860", "6365", "714").Study), MeasureClass.Steady));

    private static MeasuredDay Day(string last) =>
        StudyReadings.Of(
            new ADay()
                .Ready()
                .Typed("run 417", "5860", "6365", "714", "run 862", "5961", "6466", "72", "run 417", "5860", last, "715")
                .Study
        );
}
