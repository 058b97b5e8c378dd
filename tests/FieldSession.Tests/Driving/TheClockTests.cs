using FieldSession.Comparing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

/// <summary>The laptop's clock may be set, or move to another zone; the journal says what came first.</summary>
public sealed class TheClockTests
{
    [Fact]
    public void A_clock_set_back_while_the_program_runs_does_not_turn_the_times_round()
    {
        ADay day = new ADay().Ready();
        Drive(day, "417");
        day.Clock.Set(-TimeSpan.FromHours(1));
        Drive(day, "862");

        Assert.Equal([15.0, 45.0], StudyReadings.Of(day.Study).Levels.Select(l => l.Minutes).Distinct());
        Assert.Equal(day.Book.Lines.OrderBy(line => line.At), day.Book.Lines);
    }

    [Fact]
    public void Two_clocks_that_run_apart_by_less_than_a_second_do_not_turn_the_order_of_two_acts_round()
    {
        ADay day = new ADay().Ready();
        day.Clock.Set(TimeSpan.FromMilliseconds(400));
        day.Typed("run 417");
        day.Clock.Set(TimeSpan.FromMilliseconds(-700));
        day.Typed("5860");

        Assert.Equal(day.Book.Lines.OrderBy(line => line.At), day.Book.Lines);
    }

    [Fact]
    public void A_clock_set_back_between_two_sittings_leaves_the_order_and_takes_the_minutes_away()
    {
        ADay day = new ADay().Ready();
        Drive(day, "417");
        day.Clock.Set(-TimeSpan.FromMinutes(10));
        Logbook again = Logbook.Open(day.Journal, day.Clock, "00000000000000aa");
        Assert.True(again.Write("run 862").IsWritten);
        Assert.True(again.Write("5860").IsWritten);
        day.Clock.Advance(TimeSpan.FromMinutes(60));
        Assert.True(again.Write("5961").IsWritten);

        Assert.Equal([1, 2], again.Study.Runs.Select(run => run.Number));
        Assert.True(again.Study.Runs[1].Started.At < again.Study.Runs[0].Ended!.Value.At);
        Assert.All(StudyReadings.Of(again.Study).Levels, level => Assert.Null(level.Minutes));
    }

    [Fact]
    public void A_laptop_that_slept_goes_on_with_the_time_that_its_clock_shows()
    {
        ADay day = new ADay().Ready().Typed("run 417");
        DateTimeOffset before = day.Book.Lines[^1].At;
        day.Clock.Set(TimeSpan.FromHours(2));
        day.Typed("5860");

        Assert.Equal(TimeSpan.FromHours(2), day.Book.Lines[^1].At - before);
    }

    [Fact]
    public void Times_are_in_the_journal_as_UTC_whatever_the_zone()
    {
        ADay day = new ADay();

        Assert.All(day.Book.Lines, line => Assert.Contains($"\"at\":\"2026-02-03T09:00:00Z\"", line.Json, StringComparison.Ordinal));
    }

    private static void Drive(ADay day, string code)
    {
        day.Typed($"run {code}", "5860", "6365");
        day.Clock.Advance(TimeSpan.FromMinutes(30));
        day.Typed("714");
    }
}
