using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

public sealed class FixingAtAStopTests
{
    [Fact]
    public void A_slip_by_one_segment_is_repaired_as_one_act_and_undone_as_one()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "714", "end");
        Echo echo = day.Answer("shift 1.2 +1");
        Assert.Equal("run 1, segment 2 shifted by +1: now 3", echo.Words);
        Assert.Equal([1, 3], day.Study.Runs[0].Readings.Select(r => r.Segment));
        Assert.Null(day.Study.Runs[0].LastReading?.Doubt);
        day.Typed("u");
        Assert.Equal([1, 2], day.Study.Runs[0].Readings.Select(r => r.Segment));
        Assert.Equal("one value; this segment needs low and high", day.Study.Runs[0].LastReading?.Doubt);
    }

    [Theory]
    [InlineData("shift 1.1 +2", "not on the route")]
    [InlineData("shift 1.2 -1", "has an entry already")]
    [InlineData("shift 1.1 0", "changes nothing")]
    [InlineData("shift 2.1 +1", "no run 2")]
    [InlineData("shift 1 +1", "run and segment")]
    [InlineData("confirm 1.1", "no doubtful reading")]
    [InlineData("confirm", "by run and segment")]
    [InlineData("correct 1.3 58-60", "no reading 1.3")]
    [InlineData("correct 1.1 58-60 t", "a reading alone")]
    [InlineData("correct 1.1 hello", "a reading alone")]
    [InlineData("d", "no note yet")]
    public void What_cannot_be_repaired_is_refused_and_changes_nothing(string typed, string why)
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "end");
        Assert.Contains(why, day.Refusal(typed).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_repaired_while_a_run_is_on()
    {
        ADay day = new ADay().Ready().Typed("run 417", "601");
        Assert.Contains("run 1 is on", day.Refusal("confirm 1.1").Why, StringComparison.Ordinal);
        Assert.Contains("run 1 is on", day.Refusal("correct 1.1 5860").Why, StringComparison.Ordinal);
        Assert.Contains("run 1 is on", day.Refusal("shift 1.1 +1").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubtful_reading_is_confirmed_once_and_not_asked_about_again()
    {
        ADay day = new ADay().Ready().Typed("run 417", "601", "end");
        Assert.True(day.Study.Runs[0].LastReading?.IsToBeAsked);
        day.Typed("confirm 1.1");
        Assert.False(day.Study.Runs[0].LastReading?.IsToBeAsked);
        Assert.Contains("no doubtful reading", day.Refusal("confirm 1.1").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_corrected_reading_keeps_what_was_stored_first()
    {
        ADay day = new ADay().Ready().Typed("run 417", "8860", "end", "correct 1.1 58-60", "correct 1.1 59-60");
        Reading? reading = day.Study.Runs[0].LastReading;
        Assert.Equal(new LevelRange(59, 60), reading?.Levels);
        Assert.Equal(new LevelRange(60, 88), reading?.CorrectedFrom);
        Assert.Null(reading?.Doubt);
    }

    [Fact]
    public void One_more_key_says_whose_words_a_note_was()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", ";1", "d");
        Assert.Equal("Ro", day.Study.Notes[^1].Who);
        day.Typed("c");
        Assert.Equal("Tam", day.Study.Notes[^1].Who);
    }
}
