using FieldSession.Driving;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Tests.Driving;

public sealed class ReadingTextTests
{
    [Theory]
    [InlineData("5860", 58, 60)]
    [InlineData("58-60", 58, 60)]
    [InlineData("58 60", 58, 60)]
    [InlineData("58 - 60", 58, 60)]
    [InlineData("58.4-60.1", 58.4, 60.1)]
    [InlineData("58,4-60,1", 58.4, 60.1)]
    [InlineData("584601", 58.4, 60.1)]
    [InlineData("71.4", 71.4, 71.4)]
    [InlineData("714", 71.4, 71.4)]
    [InlineData("71,4", 71.4, 71.4)]
    [InlineData("71", 71, 71)]
    [InlineData("103.5", 103.5, 103.5)]
    [InlineData("  5860  ", 58, 60)]
    public void A_reading_is_understood_as_the_crew_types_it(string typed, double lowDb, double highDb)
    {
        ReadingTaken reading = Assert.IsType<ReadingTaken>(ReadingText.Parse(typed)?.Entry);
        Assert.Equal(new LevelRange(lowDb, highDb), reading.Levels);
        Assert.False(reading.Swapped);
        Assert.Null(reading.Spoilt);
    }

    [Theory]
    [InlineData("6058")]
    [InlineData("60-58")]
    [InlineData("60.0-58.0")]
    public void A_range_typed_high_first_is_swapped_and_says_so(string typed)
    {
        ReadingTaken reading = Assert.IsType<ReadingTaken>(ReadingText.Parse(typed)?.Entry);
        Assert.Equal(new LevelRange(58, 60), reading.Levels);
        Assert.True(reading.Swapped);
    }

    [Theory]
    [InlineData("69-73 t two lorries", SpoiltCause.Traffic, "two lorries")]
    [InlineData("5860 w", SpoiltCause.Wind, null)]
    [InlineData("5860s", SpoiltCause.Speed, null)]
    [InlineData("714 r patch", SpoiltCause.Road, "patch")]
    [InlineData("58 60 n", SpoiltCause.Noise, null)]
    [InlineData("5860 E", SpoiltCause.EntryDoubt, null)]
    public void A_reading_can_be_flagged_as_it_is_typed(string typed, SpoiltCause cause, string? words)
    {
        ReadingTaken reading = Assert.IsType<ReadingTaken>(ReadingText.Parse(typed)?.Entry);
        Assert.Equal(cause, reading.Spoilt);
        Assert.Equal(words, reading.Words);
    }

    [Theory]
    [InlineData("5")]
    [InlineData("58605")]
    [InlineData("5860585")]
    [InlineData("58-60-62")]
    [InlineData("58--60")]
    [InlineData("58.60")]
    [InlineData("58.4.1")]
    [InlineData("5860 x")]
    [InlineData("5860 traffic")]
    [InlineData("999.9")]
    [InlineData("1e3")]
    [InlineData("58 60 62")]
    public void What_is_no_reading_is_refused_with_what_to_type(string typed)
    {
        Assert.Contains("5860", ReadingText.Parse(typed)?.Objection?.Instead, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run 417")]
    [InlineData("t")]
    [InlineData("")]
    [InlineData("-58")]
    public void Other_lines_are_left_to_others(string typed) => Assert.Null(ReadingText.Parse(typed));
}
