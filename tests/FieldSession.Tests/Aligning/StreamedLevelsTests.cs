using FieldSession.Aligning;

namespace FieldSession.Tests.Aligning;

public sealed class StreamedLevelsTests
{
    private static readonly DateTimeOffset Start = new(2026, 2, 3, 9, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("61.3", 61.3)]
    [InlineData("61,3", 61.3)]
    [InlineData("09:00:01 61.3\r", 61.3)]
    [InlineData("2026-02-03T09:00:01,61.3", 61.3)]
    [InlineData("2026-02-03 09:00:01;61,3", 61.3)]
    [InlineData("LAF 61", 61.0)]
    [InlineData("61.3 dB", null)]
    [InlineData("-61.3", null)]
    [InlineData("999", null)]
    [InlineData("", null)]
    public void The_last_word_of_a_line_is_the_level_with_or_without_a_time(string line, double? level) =>
        Assert.Equal(level, StreamedLevels.LevelIn(line));

    [Fact]
    public void The_range_over_the_segment_is_ready_after_3_s_and_off_an_impact_it_is_the_highest()
    {
        StreamedLevels levels = Fed(seconds: 10, second => 60 + (second % 3));
        DateTimeOffset now = Start.AddSeconds(10);

        StreamSight steady = levels.Now(now, Start.AddSeconds(2), isImpact: false);
        Assert.Equal((60, 62), (steady.LowDb, steady.HighDb));
        Assert.Equal(
            (62, 62),
            (levels.Now(now, Start.AddSeconds(2), isImpact: true).LowDb, levels.Now(now, Start.AddSeconds(2), isImpact: true).HighDb)
        );
        Assert.Null(levels.Now(now, now.AddSeconds(-2), isImpact: false).HighDb);
        Assert.Equal(StreamHealth.Good, steady.Health);
        Assert.Equal(10, steady.LastSecondsDb.Count(level => level is not null));
        Assert.Null(steady.LastSecondsDb[0]);
    }

    [Fact]
    public void A_silent_a_wild_and_an_ended_source_are_told_apart_and_offer_nothing()
    {
        StreamedLevels levels = Fed(seconds: 10, _ => 60);
        StreamSight silent = levels.Now(Start.AddSeconds(14), Start, isImpact: false);
        Assert.Equal((StreamHealth.Silent, (double?)null), (silent.Health, silent.HighDb));

        for (int i = 0; i < 10; i++)
        {
            levels.Take("error 7!", Start.AddSeconds(14));
        }

        Assert.Equal(StreamHealth.Wild, levels.Now(Start.AddSeconds(14), Start, isImpact: false).Health);
        Assert.Equal(StreamHealth.Silent, new StreamedLevels().Now(Start, Start, isImpact: false).Health);
        levels.End();
        Assert.Equal(StreamHealth.Ended, levels.Now(Start.AddSeconds(14), Start, isImpact: false).Health);
    }

    [Fact]
    public void A_flood_of_lines_is_wild()
    {
        StreamedLevels levels = new();
        for (int i = 0; i < 1000; i++)
        {
            levels.Take("60.0", Start.AddMilliseconds(i / 10.0));
        }

        Assert.Equal(StreamHealth.Wild, levels.Now(Start.AddSeconds(0.2), Start, isImpact: false).Health);
    }

    private static StreamedLevels Fed(int seconds, Func<int, double> levelDb)
    {
        StreamedLevels levels = new();
        for (int second = 1; second <= seconds; second++)
        {
            levels.Take(levelDb(second).ToString(System.Globalization.CultureInfo.InvariantCulture), Start.AddSeconds(second));
        }

        return levels;
    }
}
