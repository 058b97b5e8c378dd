using FieldSession.Comparing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Comparing;

public sealed class StudyReadingsTests
{
    [Fact]
    public void A_flag_in_time_spoils_a_late_one_does_not()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860 t", "6365", "714", "flag 1.2 w");
        MeasuredDay measured = StudyReadings.Of(day.Study);
        Assert.Equal([true, false, false], measured.Levels.Select(l => l.Spoilt));
        Assert.Equal("traffic", measured.Levels[0].Cause);
        Assert.Equal(MeasureClass.Impact, measured.Levels[2].Class);
    }

    [Fact]
    public void What_was_not_read_counts_as_missed_once_the_run_is_over()
    {
        ADay day = new ADay().Ready().Typed("run 417", "m", "6365");
        Assert.Equal(1, StudyReadings.Of(day.Study).Missed);
        day.Typed("end");
        Assert.Equal(2, StudyReadings.Of(day.Study).Missed);
    }

    [Fact]
    public void Minutes_are_the_middles_of_the_runs()
    {
        ADay day = new ADay().Ready();
        Drive(day, "417", minutes: 30);
        Drive(day, "862", minutes: 20);
        Assert.Equal([15.0, 40.0], StudyReadings.Of(day.Study).Levels.Select(l => l.Minutes).Distinct());
    }

    [Fact]
    public void Times_of_runs_typed_in_afterwards_are_not_believed()
    {
        ADay day = new ADay().Ready();
        Drive(day, "417", minutes: 1);
        Drive(day, "862", minutes: 1);
        Assert.All(StudyReadings.Of(day.Study).Levels, l => Assert.Null(l.Minutes));
    }

    [Fact]
    public void Readings_of_a_session_whose_meter_drifted_too_far_are_left_out()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "5860", "6365 t", "714", "calibration after 93.2", "calibration before 94", "run 862", "5961", "6466", "72");
        MeasuredDay measured = StudyReadings.Of(day.Study);
        Assert.Equal(["void session", "traffic", "void session", null, null, null], measured.Levels.Select(l => l.Cause));
        Assert.Equal(["1", "2"], measured.Levels.Select(l => l.Session).Distinct());
    }

    private static void Drive(ADay day, string code, double minutes)
    {
        day.Typed($"run {code}", "5860", "6365");
        day.Clock.Advance(TimeSpan.FromMinutes(minutes));
        day.Typed("714");
    }
}
