using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: slips of a hand in a moving seat, and what they cost.</summary>
public sealed class SlipsByKeysTests
{
    private static ADay OnTheRoad(Plan? plan = null) => new ADay(plan ?? ARoute.Plan).Ready().Typed("run 417");

    private static string[] Levels(ADay day) => [.. day.Study.Runs[0].Readings.Select(reading => reading.Levels.ToString())];

    private static Tui Type(Tui tui, string keys, int gapMs)
    {
        tui.After(2000, keys[0]);
        foreach (char key in keys[1..])
        {
            tui.After(gapMs, key);
        }

        return tui;
    }

    private static object Data(ADay day) =>
        (
            day.Study.NextSegment,
            string.Join(' ', day.Study.Runs.SelectMany(run => run.Passages)),
            day.Study.Notes.Count,
            day.Study.Runs.Count
        );

    [Fact]
    public void A_refused_line_costs_no_reading_but_itself_and_one_key_brings_it_back()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        Assert.Contains("NOT STORED", tui.Keys("62,66<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("5860, 58-60 or 714", tui.Screen, StringComparison.Ordinal);
        tui.Keys("6769<Enter>5861<Enter>6569<Enter>");
        Assert.Equal(["67-69", "58-61", "65-69"], Levels(day));
        Assert.DoesNotContain("NOT STORED", tui.Screen, StringComparison.Ordinal);
        tui.Keys("62,66<Enter>");
        Assert.Equal("62,66", tui.Keys("<Backspace>").Box);
        tui.Keys("<Backspace><Backspace><Backspace>66<Enter>");
        Assert.Equal("62-66", Levels(day)[^1]);
    }

    [Fact]
    public void A_phrase_that_the_plan_does_not_have_is_refused_at_its_figure_and_the_reading_behind_it_is_a_reading()
    {
        ADay day = OnTheRoad(ARoute.Plan with { Phrases = [] });
        using Tui tui = new(day);
        Assert.Contains("the plan has no phrase 1", tui.Keys(";1").Screen, StringComparison.Ordinal);
        tui.Keys("6367<Enter>");
        Assert.Equal(["63-67"], Levels(day));
        Assert.Empty(day.Study.Notes);
    }

    [Theory]
    [InlineData("; 6367<Enter>")]
    [InlineData("; lorry6367<Enter>")]
    public void A_figure_never_becomes_a_note(string keys)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        Assert.Contains("NOT STORED", tui.Keys(keys).Screen, StringComparison.Ordinal);
        Assert.Empty(day.Study.Notes);
        Assert.Equal("", tui.Box);
    }

    [Fact]
    public void A_reading_typed_later_behind_a_note_that_lacks_its_Enter_stores_the_note_and_is_a_reading()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("; lorry");
        day.Clock.Advance(TimeSpan.FromSeconds(20));
        tui.Keys("6367<Enter>");
        Assert.Equal("lorry", Assert.Single(day.Study.Notes).Words);
        Assert.Equal(["63-67"], Levels(day));
    }

    [Fact]
    public void Figures_before_the_run_was_started_do_not_pile_up_and_the_cure_is_in_sight()
    {
        ADay day = new ADay().Ready();
        using Tui tui = new(day);
        Assert.Contains("Enter starts run 1", tui.Keys("5860<Enter>6365<Enter>").Screen, StringComparison.Ordinal);
        Assert.Equal("6365", tui.Keys("<Enter><Backspace>").Box);
        tui.Keys("<Enter>");
        Assert.Equal(["63-65"], Levels(day));
    }

    [Theory]
    [InlineData("motorbike in the way")]
    [InlineData("truck overtaking us")]
    [InlineData("we were set west")]
    [InlineData("unused turn")]
    [InlineData("eels /mm")]
    [InlineData("rm -rf build && git push")]
    [InlineData("sudo sh run.sh *.txt")]
    [InlineData("/usr/bin/env m u t")]
    public void Words_without_a_sign_change_nothing_and_offer_themselves_as_a_note(string words)
    {
        foreach (int gapMs in (ImmutableArray<int>)[50, 120, 250, 500])
        {
            ADay day = OnTheRoad().Typed("5355", "6062 t", "6265");
            object before = Data(day);
            using Tui tui = new(day);
            Assert.Equal($"; {words}"[..Math.Min(words.Length + 2, 30)], Type(tui, words, gapMs).Box[..Math.Min(words.Length + 2, 30)]);
            Assert.Equal(before, Data(day));
            Assert.Equal("", tui.Keys("<Esc>").Box);
            Assert.Equal(before, Data(day));
        }
    }

    [Fact]
    public void What_letters_of_a_word_did_is_taken_back_as_one_recorded_act()
    {
        ADay day = OnTheRoad().Typed("5355", "6062");
        int lines = day.Journal.Lines.Count;
        using Tui tui = new(day);
        Type(tui, "ummm", 500);
        Assert.Equal(["undo", "letters"], day.Journal.Lines.Skip(lines).Select(line => line.Kind));
        Assert.Equal(["53-55", "60-62"], Levels(day));
        Assert.Contains("; ummm", tui.Box, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_that_began_by_itself_gives_way_to_a_reading_and_can_be_brought_back()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        Type(tui, "lorry ahead", 150);
        day.Clock.Advance(TimeSpan.FromSeconds(2));
        tui.Keys("6367<Enter>");
        Assert.Equal(["63-67"], Levels(day));
        Assert.Empty(day.Study.Notes);
    }

    [Fact]
    public void A_draft_is_a_note_after_Enter()
    {
        ADay day = OnTheRoad().Typed("5355");
        using Tui tui = new(day);
        Type(tui, "truck overtaking us", 150).Keys("<Enter>");
        Assert.Equal("truck overtaking us", Assert.Single(day.Study.Notes).Words);
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Theory]
    [InlineData("mmm", 100)]
    [InlineData("mm", 290)]
    public void A_bouncing_key_counts_once_and_the_screen_says_so(string keys, int gapMs)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        Assert.Contains("came again within 0.3 s", Type(tui, keys, gapMs).Screen, StringComparison.Ordinal);
        Assert.Equal(2, day.Study.NextSegment!.Number);
    }

    [Theory]
    [InlineData('m', 2)]
    [InlineData('u', 2)]
    [InlineData('t', 3)]
    public void A_key_that_is_held_down_counts_once_although_it_begins_to_repeat_late(char key, int next)
    {
        ADay day = key == 'm' ? OnTheRoad() : OnTheRoad().Typed("5355", "6062");
        using Tui tui = new(day);
        tui.After(2000, key).After(500, key);
        for (int i = 0; i < 20; i++)
        {
            tui.After(33, key);
        }

        Assert.Equal(next, day.Study.NextSegment!.Number);
        Assert.Equal(key == 't', day.Study.Runs[0].LastReading?.Spoilt is not null);
    }

    [Fact]
    public void Two_segments_missed_one_after_the_other_are_two()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.After(2000, 'm').After(400, 'm');
        Assert.Equal(3, day.Study.NextSegment!.Number);
    }

    [Fact]
    public void A_second_Enter_that_is_left_out_is_told()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365");
        using Tui tui = new(day);
        tui.Keys("714<Enter>").Bounce(120);
        Assert.Null(day.Study.RunOn);
        Assert.Contains("a second Enter within 0.3 s was left out", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_whose_Enter_was_forgotten_is_stored_when_the_next_figures_come_and_asked_about()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("5355");
        day.Clock.Advance(TimeSpan.FromSeconds(20));
        Assert.Contains("Enter was missing", tui.Keys("6").Screen, StringComparison.Ordinal);
        tui.Keys("062<Enter>");
        Assert.Equal(["53-55", "60-62"], Levels(day));
        Assert.Equal([true, false], day.Study.Runs[0].Readings.Select(reading => reading.IsToBeAsked));
    }

    [Fact]
    public void One_end_of_a_range_may_wait_for_the_other()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("53");
        day.Clock.Advance(TimeSpan.FromSeconds(20));
        tui.Keys("55<Enter>");
        Assert.Equal(["53-55"], Levels(day));
    }

    [Fact]
    public void Readings_that_a_full_disk_would_not_take_wait_in_their_order()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        day.Journal.DiskIsFull = true;
        tui.Keys("5355<Enter>6062<Enter>6265<Enter>");
        Assert.Contains("3 lines wait for the disk", tui.Screen, StringComparison.Ordinal);
        day.Journal.DiskIsFull = false;
        tui.Keys("<Enter>");
        Assert.Equal(["53-55", "60-62", "62-65"], Levels(day));
        Assert.Equal("", tui.Box);
    }

    [Fact]
    public void Letters_on_figures_that_are_a_word_make_no_flag_and_the_line_is_refused()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("5355");
        Type(tui, "rest", 150).Keys("<Enter>");
        Assert.Empty(Levels(day));
        Assert.Contains("NOT STORED", tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("6256", "typed high first and 6 dB wide")]
    [InlineData("585605", "in tenths, where the run's other ranges are whole")]
    public void A_reading_that_shows_the_trace_of_a_slip_is_asked_about(string typed, string doubt) =>
        Assert.Contains(doubt, OnTheRoad().Typed("5355").Answer(typed).Doubt, StringComparison.Ordinal);

    [Fact]
    public void A_peak_of_two_figures_is_asked_about_where_other_peaks_have_three()
    {
        ADay day = OnTheRoad().Typed("5355", "6062", "6265", "699", "6468", "6166");
        Assert.Contains("two figures", day.Answer("73").Doubt, StringComparison.Ordinal);
        Assert.Null(OnTheRoad().Typed("5355", "6062", "6265", "69", "6468", "6166").Answer("73").Doubt);
    }
}
