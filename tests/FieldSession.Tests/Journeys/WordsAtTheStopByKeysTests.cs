using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>The stop is as forgiving as the drive screen: words are words, a refused line comes back, shifts are looked at first.</summary>
public sealed class WordsAtTheStopByKeysTests
{
    // 84-86 is far from the plan's 60 dB
    private static ADay Doubtful() => new ADay().Ready().Typed("run 417", "8486", "6365", "714");

    private static ADay TwoSkipped() =>
        new ADay(ARoute.Plan).Ready().Typed("run 417", "5355", "6062", "6265", "seg 6", "6166", "732", "end");

    // the marked row begins with the same sign as the box
    private static string Box(Tui tui) => tui.Rows.Last(row => row.StartsWith(" >", StringComparison.Ordinal))[2..].Trim();

    private static void Type(Tui tui, string keys, int gapMs)
    {
        foreach (char key in keys)
        {
            tui.After(gapMs, key);
        }
    }

    [Theory]
    [InlineData("yes", 60)]
    [InlineData("yes", 450)]
    [InlineData("undo that", 120)]
    [InlineData("your turn", 300)]
    [InlineData("/usr/bin/env", 90)]
    [InlineData("yyes", 200)]
    public void A_word_that_begins_with_an_act_changes_nothing_and_is_in_the_box(string words, int gapMs)
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>");
        string before = string.Join('\n', day.Study.Runs[0].Passages);
        Type(tui, words, gapMs);
        Assert.Equal(before, string.Join('\n', day.Study.Runs[0].Passages));
        Assert.EndsWith(words[^2..], Box(tui), StringComparison.Ordinal);
        Assert.Contains(">  1 Mill lane", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_held_key_confirms_one_reading_and_the_rest_is_said_to_be_left_out()
    {
        ADay day = new ADay().Ready().Typed("run 417", "8486", "6393", "714");
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>y").After(100, 'y');
        Assert.Equal([true, false], day.Study.Runs[0].Readings.Take(2).Select(reading => reading.Confirmed));
        Assert.Contains("'y' came again within 0.3 s and counts once", tui.Screen, StringComparison.Ordinal);
        tui.After(700, 'y');
        Assert.Equal([true, true], day.Study.Runs[0].Readings.Take(2).Select(reading => reading.Confirmed));
    }

    [Fact]
    public void A_refused_line_leaves_the_box_free_and_Backspace_brings_it_back_to_be_put_right()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>58,66<Enter>");
        Assert.Equal("", Box(tui));
        Assert.Contains("Backspace brings the line back", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Backspace>");
        Assert.Equal("58,66", Box(tui));
        tui.Keys("<Backspace><Backspace><Backspace>60<Enter>");
        Assert.Equal("58-60", $"{day.Study.Runs[0].Readings.First().Levels}");
        tui.Keys("<Backspace>");
        Assert.Equal("", Box(tui));
    }

    [Fact]
    public void Tab_completes_a_word_that_was_begun_and_on_an_empty_box_goes_to_what_is_due()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter>we<Tab>");
        Assert.Equal(":weather", Box(tui));
        tui.Keys("air 8 dry<Enter>");
        Assert.Equal("dry", day.Study.Weather[^1].Surface);
    }

    [Fact]
    public void A_second_Enter_that_bounced_starts_no_run_and_is_said()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>5860<Enter>").Bounce(120);
        Assert.Null(day.Study.RunOn);
        Assert.Contains(
            "a second Enter within 0.3 s was left out",
            string.Join(' ', tui.Rows.Select(row => row.Trim())),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_shift_by_two_is_the_key_pressed_twice_shown_first_and_one_act()
    {
        ADay day = TwoSkipped();
        int lines = day.Book.Lines.Count;
        using Tui tui = new(day);
        tui.Keys("parked<Enter><CursorUp><CursorUp><CursorUp><CursorUp><CursorUp>>>");
        Assert.Contains("Run 1, segments 2 to 3, all 2 further on:", tui.Screen, StringComparison.Ordinal);
        tui.Keys(">");
        Assert.Contains("no gap of 3 after segment 2", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("all 2 further on", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("all one further on", tui.Keys("<").Screen, StringComparison.Ordinal);
        tui.Keys("><Enter>");
        Assert.Equal([1, 4, 5, 6, 7], day.Study.Runs[0].Readings.Select(reading => reading.Segment));
        Assert.Equal(lines + 1, day.Book.Lines.Count);
        Assert.Contains(">  4 Dellinbrook joint", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shift_that_is_typed_is_shown_as_a_table_too_before_it_is_taken()
    {
        ADay day = TwoSkipped();
        int lines = day.Book.Lines.Count;
        using Tui tui = new(day);
        tui.Keys("parked<Enter>shift 1.2-3 +2<Enter>");
        Assert.Equal(lines, day.Book.Lines.Count);
        Assert.Contains("Run 1, segments 2 to 3, all 2 further on:", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Enter>");
        Assert.Equal([1, 4, 5, 6, 7], day.Study.Runs[0].Readings.Select(reading => reading.Segment));
    }

    [Fact]
    public void Choices_that_are_due_have_the_key_of_the_rating_screen_in_the_footer_as_ratings_have()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714", "run 862", "5860", "6365", "714", "trials 862 417 n=10");
        using Tui tui = new(day);
        Assert.Contains("F3 choose", tui.Rows[^1], StringComparison.Ordinal);
        Assert.Contains("F3 choose", tui.Keys("parked<Enter>").Rows[^1], StringComparison.Ordinal);
        Assert.Contains("choose NAME first", string.Join(' ', tui.Keys("<F3>").Rows.Select(row => row.Trim())), StringComparison.Ordinal);
    }

    [Fact]
    public void The_segment_on_which_one_already_is_is_not_chosen_again_and_nothing_is_written()
    {
        ADay day = Doubtful().Typed("run 862", "5860");
        int lines = day.Book.Lines.Count;
        using Tui tui = new(day);
        Assert.Contains("segment 2 is the next one already", tui.Keys(":seg 2<Enter>").Screen, StringComparison.Ordinal);
        Assert.Equal(lines, day.Book.Lines.Count);
    }
}
