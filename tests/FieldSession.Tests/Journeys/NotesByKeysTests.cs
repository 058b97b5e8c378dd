using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: a note, and whose words it was.</summary>
public sealed class NotesByKeysTests
{
    private static ADay OnTheRoad() => new ADay().Ready().Typed("run 417", "5860");

    private static ADay AtAStop() => OnTheRoad().Typed("6365", "714");

    [Theory]
    [InlineData(";2d", "grit", "Ro")]
    [InlineData(";2c", "grit", "Tam")]
    [InlineData(";2C", "grit", "Tam")]
    [InlineData("; a tick on the left<Enter>d", "a tick on the left", "Ro")]
    [InlineData(";2duc", "grit", "Tam")]
    [InlineData(";2", "grit", null)]
    public void One_more_key_right_after_a_note_says_whose_words_it_was(string keys, string words, string? who)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys(keys);
        Note note = Assert.Single(day.Study.Notes);
        Assert.Equal((words, who), (note.Words, note.Who));
        Assert.Equal("", tui.Box);
    }

    [Theory]
    [InlineData("d")]
    [InlineData("c")]
    [InlineData(";2<Enter>6365<Enter>d")]
    [InlineData(";2cd")]
    public void Anywhere_else_on_the_road_the_same_key_changes_nothing_and_says_so(string keys)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys(keys[..^1]);
        Study before = day.Study;
        Assert.Contains("words begin with ':'", tui.Keys(keys[^1..]).Screen, StringComparison.Ordinal);
        Assert.Same(before, day.Study);
        Assert.Equal("", tui.Box);
    }

    [Fact]
    public void Pasted_lines_of_a_note_become_one_line()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("; ").Paste("first\r\nsecond\nthird");
        tui.Keys("<Enter>");
        Assert.Equal("first second third", Assert.Single(day.Study.Notes).Words);
    }

    [Fact]
    public void The_footer_shows_the_two_keys_while_they_work()
    {
        using Tui tui = new(OnTheRoad(), 120, 40);
        Assert.DoesNotContain("whose words", tui.Rows[^1], StringComparison.Ordinal);
        Assert.Contains("d c whose words", tui.Keys(";1").Rows[^1], StringComparison.Ordinal);
        Assert.DoesNotContain("whose words", tui.Keys("d").Rows[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("calibration after 94<Enter>")]
    [InlineData(";1calibration after 94<Enter>")]
    [InlineData("; long words<Enter>calibration after 94<Enter>")]
    public void At_a_stop_words_that_begin_like_the_key_are_typed_even_right_after_a_note(string keys)
    {
        ADay day = AtAStop();
        using Tui tui = new(day);
        tui.Keys(keys);
        Assert.NotNull(day.Study.Sessions[^1].After);
        Assert.All(day.Study.Notes, note => Assert.Null(note.Who));
    }

    [Theory]
    [InlineData("correct 1.2 64-66<Enter>", "64-66")]
    [InlineData(";1correct 1.2 64-66<Enter>", "64-66")]
    [InlineData("shift 1.3 -1<Enter>", "63-65")]
    public void What_repairs_a_run_is_typed_at_a_stop_without_a_colon(string keys, string second)
    {
        ADay day = AtAStop();
        using Tui tui = new(day);
        tui.Keys(keys);
        Assert.Equal(second, day.Study.Runs[0].Readings.First(r => r.Segment == 2).Levels.ToString());
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Fact]
    public void On_the_first_stop_of_the_day_no_letter_is_a_flag()
    {
        ADay day = new();
        using Tui tui = new(day);
        tui.Keys("calibration before 94<Enter>weather surface=dry<Enter>run 417<Enter>");
        Assert.Equal(("dry", "417"), (day.Study.Weather[0].Surface, day.Study.RunOn!.Code.Digits));
    }

    [Fact]
    public void The_last_reading_of_a_run_is_flagged_by_one_key_until_another_act_comes_between()
    {
        ADay day = AtAStop();
        using Tui tui = new(day);
        tui.Keys("t");
        Assert.Equal(SpoiltCause.Traffic, day.Study.Runs[0].LastReading!.Spoilt!.Cause);
        tui.Keys("tweather surface=dry<Enter>s");
        Assert.Null(day.Study.Runs[0].LastReading!.Spoilt);
        Assert.Equal("s", tui.Box);
    }
}
