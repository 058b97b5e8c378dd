using FieldSession.Aligning;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>A program of the user's prints levels: the range is ready in the box, and one key takes it.</summary>
public sealed class LevelsByStreamTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Enter_takes_the_range_that_is_ready_and_the_trace_shows_the_last_seconds(int columns, int rows)
    {
        (ADay day, StreamedLevels levels, Tui tui) = OnTheRoad(columns, rows);
        using Tui _ = tui;
        Go(day, levels, tui, 8, second => 58 + (second % 3));

        Assert.Equal("58.0-60.0", tui.Box);
        Assert.Contains("Enter takes it", tui.Screen, StringComparison.Ordinal);
        Assert.Contains('\u2588', tui.Screen);
        tui.Keys("<Enter>");

        Reading taken = Assert.Single(day.Study.RunOn!.Readings);
        Assert.Equal((58, 60), (taken.Levels.LowDb, taken.Levels.HighDb));
        Assert.Equal("", tui.Box);
    }

    [Fact]
    public void Typing_takes_the_place_of_the_range_and_Esc_drops_it_until_the_next_segment()
    {
        (ADay day, StreamedLevels levels, Tui tui) = OnTheRoad(80, 24);
        using Tui _ = tui;
        Go(day, levels, tui, 8, second => 58 + (second % 3));
        tui.Keys("6163<Enter>");
        Assert.Equal(62, Assert.Single(day.Study.RunOn!.Readings).Levels.MidpointDb);

        Go(day, levels, tui, 8, second => 63 + (second % 3));
        Assert.Equal("63.0-65.0", tui.Box);
        tui.Keys("<Esc>");
        Go(day, levels, tui, 3, _ => 63);
        Assert.Equal("", tui.Box);
        tui.Keys("6466<Enter>");
        Go(day, levels, tui, 8, second => 70 + (second % 3));
        Assert.Equal("72.0", tui.Box);
    }

    [Fact]
    public void A_letter_acts_as_on_an_empty_box_and_a_half_typed_reading_is_left_alone()
    {
        (ADay day, StreamedLevels levels, Tui tui) = OnTheRoad(80, 24);
        using Tui _ = tui;
        Go(day, levels, tui, 8, second => 58 + (second % 3));
        tui.Keys("<Enter>");
        Go(day, levels, tui, 8, second => 63 + (second % 3));
        tui.Keys("t");
        Assert.Equal(SpoiltCause.Traffic, day.Study.RunOn!.Readings.Single().Spoilt?.Cause);
        tui.Keys("64");
        Go(day, levels, tui, 3, second => 63 + (second % 3));
        Assert.Equal("64", tui.Box);
    }

    [Fact]
    public void A_silent_and_an_ended_source_are_said_and_typing_goes_on()
    {
        (ADay day, StreamedLevels levels, Tui tui) = OnTheRoad(80, 24);
        using Tui _ = tui;
        Go(day, levels, tui, 8, _ => 60);
        tui.Wait(5);
        Assert.Contains("no level from the source for 3 s; type the reading", tui.Screen, StringComparison.Ordinal);
        Assert.Equal("", tui.Box);
        levels.End();
        tui.Wait(1);
        Assert.Contains("the source of levels has ended; type the reading", tui.Screen, StringComparison.Ordinal);
        tui.Keys("5860<Enter>");
        Assert.Single(day.Study.RunOn!.Readings);
    }

    [Fact]
    public void At_a_stop_nothing_is_offered_and_Enter_starts_the_run()
    {
        ADay day = new ADay().Ready();
        StreamedLevels levels = new();
        using Tui tui = new(day.Book, day.Clock, desk => desk with { Levels = levels });
        Go(day, levels, tui, 8, _ => 60);
        Assert.Equal("", tui.Box);
        tui.Keys("<Enter>");
        Assert.NotNull(day.Study.RunOn);
    }

    private static (ADay Day, StreamedLevels Levels, Tui Tui) OnTheRoad(int columns, int rows)
    {
        ADay day = new ADay().Ready().Typed("run 417");
        StreamedLevels levels = new();
        return (day, levels, new Tui(day.Book, day.Clock, desk => desk with { Levels = levels }, columns, rows));
    }

    private static void Go(ADay day, StreamedLevels levels, Tui tui, int seconds, Func<int, double> levelDb)
    {
        for (int second = 1; second <= seconds; second++)
        {
            levels.Take(
                levelDb(second).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture),
                day.Clock.GetUtcNow().AddSeconds(0.5)
            );
            tui.Wait(1);
        }
    }
}
