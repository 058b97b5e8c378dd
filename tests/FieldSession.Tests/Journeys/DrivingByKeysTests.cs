using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: what the co-driver's hand does on the drive screen.</summary>
public sealed class DrivingByKeysTests
{
    private static ADay OnTheRoad() => new ADay().Ready().Typed("run 417");

    [Fact]
    public void Four_figures_and_Enter_store_a_range_and_bring_the_next_segment()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("5860<Enter>");
        Assert.Equal("58-60", day.Study.RunOn!.LastReading!.Levels.ToString());
        Assert.Contains("NEXT 2 of 3   COARSE   80 km/h", tui.Screen, StringComparison.Ordinal);
        Assert.Equal("", tui.Box);
    }

    [Theory]
    [InlineData("5860t<Enter>", SpoiltCause.Traffic)]
    [InlineData("5860<Enter>t", SpoiltCause.Traffic)]
    [InlineData("5860<Enter>+", SpoiltCause.Traffic)]
    [InlineData("58w60<Enter>", SpoiltCause.Wind)]
    [InlineData("5860ts<Enter>", SpoiltCause.Speed)]
    [InlineData("5860<Enter>T", SpoiltCause.Traffic)]
    [InlineData("5860tt<Enter>", null)]
    [InlineData("5860<Enter>tt", null)]
    public void One_key_flags_a_reading_before_or_after_Enter_and_again_takes_the_flag_back(string keys, SpoiltCause? cause)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys(keys);
        Assert.Equal("58-60", day.Study.RunOn!.LastReading!.Levels.ToString());
        Assert.Equal(cause, day.Study.RunOn!.LastReading!.Spoilt?.Cause);
    }

    [Fact]
    public void The_flag_is_in_the_box_and_words_may_follow_it()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("5860t");
        Assert.Equal("5860 t", tui.Box);
        tui.Keys(" two lorries, 3 m<Enter>");
        Assert.Equal("two lorries, 3 m", day.Study.RunOn!.LastReading!.Spoilt!.Words);
    }

    [Theory]
    [InlineData("m")]
    [InlineData("*")]
    public void One_key_says_missed_and_moves_on(string key)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys(key);
        Assert.IsType<Missed>(Assert.Single(day.Study.RunOn!.Passages));
        Assert.Equal(2, day.Study.NextSegment!.Number);
    }

    [Theory]
    [InlineData("u")]
    [InlineData("/")]
    public void One_key_takes_the_last_act_back(string key)
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("5860<Enter>" + key);
        Assert.Empty(day.Study.RunOn!.Passages);
        Assert.Contains("nothing in this run yet", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_keys_write_a_phrase_of_the_plan()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("5860<Enter>;2");
        Assert.Equal("grit", Assert.Single(day.Study.Notes).Words);
        Assert.Equal("", tui.Box);
    }

    [Fact]
    public void A_free_note_takes_every_character_until_Enter()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("; m+u/*? 2 t: tr\u00e4ge_\u6f22<Enter>");
        Assert.Equal("m+u/*? 2 t: tr\u00e4ge_\u6f22", Assert.Single(day.Study.Notes).Words);
    }

    [Fact]
    public void Words_are_typed_behind_a_colon()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys(":seg 3<Enter>");
        Assert.Equal(3, day.Study.NextSegment!.Number);
        tui.Keys(":end<Enter>");
        Assert.Null(day.Study.RunOn);
    }

    [Fact]
    public void Tab_completes_the_words_that_are_begun()
    {
        ADay day = new();
        using Tui tui = new(day);
        tui.Keys(":c<Tab>94<Enter>:w<Tab>surface=dry<Enter>");
        Assert.Equal(94, day.Study.SessionOn!.Before!.LevelDb);
        Assert.Equal("dry", day.Study.Weather[0].Surface);
    }

    [Fact]
    public void Enter_on_an_empty_box_at_a_stop_starts_the_run_that_the_order_asks_for()
    {
        ADay day = new ADay().Ready();
        using Tui tui = new(day);
        tui.Keys("<Enter>");
        Assert.Equal("417", day.Study.RunOn!.Code.Digits);
    }

    [Theory]
    [InlineData("run 862<Enter>")]
    [InlineData("weather wind=3<Enter>run 862<Enter>")]
    public void Words_typed_at_a_stop_without_a_colon_leave_no_flag_behind(string keys)
    {
        ADay day = OnTheRoad().Typed("5860", "6365", "714");
        using Tui tui = new(day);
        tui.Keys(keys);
        Assert.Equal(2, day.Study.RunOn?.Number);
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Fact]
    public void A_rating_typed_at_a_stop_without_a_colon_leaves_no_flag_behind()
    {
        ADay day = OnTheRoad().Typed("5860", "6365", "714", "run 862", "5961", "6466", "724");
        using Tui tui = new(day);
        tui.Keys("rate Ro roar 6<Enter>");
        Assert.Equal("coarse roar", Assert.Single(day.Study.Ratings).Attribute);
        Assert.All(day.Study.Runs[1].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Theory]
    [InlineData("ru")]
    [InlineData("we")]
    public void While_a_run_is_on_the_same_two_keys_are_two_acts(string keys)
    {
        ADay day = OnTheRoad().Typed("5860");
        using Tui tui = new(day);
        Assert.Equal("", tui.Keys(keys).Box);
        Assert.Equal(keys == "we" ? SpoiltCause.EntryDoubt : null, day.Study.RunOn!.LastReading!.Spoilt?.Cause);
    }

    [Fact]
    public void A_second_Enter_within_300_ms_is_swallowed()
    {
        ADay day = OnTheRoad().Typed("5860", "6365");
        using Tui tui = new(day);
        tui.Keys("714<Enter>").Bounce(299);
        Assert.Null(day.Study.RunOn);
        tui.Bounce(300);
        Assert.Equal(2, day.Study.RunOn!.Number);
    }

    [Fact]
    public void A_refused_line_says_why_and_is_brought_back_to_be_put_right()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("58601<Enter>");
        Assert.Contains("'58601' is not a reading; type 5860 for a range", tui.Screen, StringComparison.Ordinal);
        Assert.Equal("", tui.Box);
        Assert.Equal("58601", tui.Keys("<Backspace>").Box);
        tui.Keys("<Backspace><Enter>");
        Assert.Equal("58-60", day.Study.RunOn!.LastReading!.Levels.ToString());
        Assert.DoesNotContain("is not a reading", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Esc_empties_the_box_and_does_not_leave()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("58<Esc><Esc>");
        Assert.Equal("", tui.Box);
        Assert.False(tui.HasEnded);
        Assert.True(tui.Keys("<Ctrl+Q>").HasEnded);
    }

    [Fact]
    public void A_full_disk_is_said_in_the_header_and_Enter_tries_again()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        day.Journal.DiskIsFull = true;
        tui.Keys("5860<Enter>");
        Assert.Contains("NOT SAVED: no space left", tui.Rows[0], StringComparison.Ordinal);
        Assert.Equal("5860", tui.Box);
        Assert.Empty(day.Study.RunOn!.Passages);
        day.Journal.DiskIsFull = false;
        tui.Keys("<Enter>");
        Assert.DoesNotContain("NOT SAVED", tui.Rows[0], StringComparison.Ordinal);
        Assert.Single(day.Study.RunOn!.Passages);
    }

    [Fact]
    public void An_act_of_one_key_that_the_disk_would_not_take_waits_in_the_box()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        day.Journal.DiskIsFull = true;
        tui.Keys("m");
        Assert.Equal("m", tui.Box);
        day.Journal.DiskIsFull = false;
        tui.Keys("<Enter>");
        Assert.Equal(2, day.Study.NextSegment!.Number);
        Assert.Equal("", tui.Box);
    }

    [Fact]
    public void A_key_that_waits_for_an_empty_box_changes_nothing()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("58u");
        Assert.Equal("58", tui.Box);
        Assert.Contains("waits for an empty box", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unlocked_keypad_is_noticed()
    {
        using Tui tui = new(OnTheRoad());
        Assert.Contains("NumLock", tui.Keys("<CursorUp>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_can_be_typed_straight_through_the_help()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        Assert.Contains("Keys on drive", tui.Keys("?").Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("Keys on drive", tui.Keys("5860<Enter>").Screen, StringComparison.Ordinal);
        Assert.Equal("58-60", day.Study.RunOn!.LastReading!.Levels.ToString());
        Assert.DoesNotContain("Keys on drive", tui.Keys("??").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_on_another_code_than_the_order_asks_for_is_said_at_once()
    {
        using Tui tui = new(new ADay().Ready());

        tui.Keys(":run 862<Enter>");

        Assert.Contains("the order asks for 417 now; 'u' takes this run back", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Parked_typed_as_letters_while_a_run_is_on_is_no_note()
    {
        ADay day = new ADay().Ready().Typed("run 417");
        using Tui tui = new(day);

        "parked".ToList().ForEach(letter => tui.After(250, letter));
        tui.Keys("<Enter>");

        Assert.Empty(day.Study.Notes);
        Assert.Contains("run 1 is on; when it is over, or after", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubtful_reading_is_stored_with_a_question_mark_and_asked_at_the_stop()
    {
        ADay day = OnTheRoad();
        using Tui tui = new(day);
        tui.Keys("7577<Enter>");
        Assert.Contains("? over 8 dB off the plan's 60", tui.Screen, StringComparison.Ordinal);
        tui.Keys("6365<Enter>714<Enter>");
        Assert.Contains("1.1 Mill lane: is 75-77 right? over 8 dB off", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_day_is_typed_on_the_numeric_keypad_once_the_meter_is_checked()
    {
        ADay day = new ADay().Ready();
        using Tui tui = new(day);
        for (int run = 0; run < 3; run++)
        {
            tui.Keys("<Enter>5860<Enter>63.4-65.1+<Enter>*");
        }

        Assert.True(day.Study.OrderDriven);
        Assert.Equal(6, day.Study.Runs.Sum(r => r.Readings.Count()));
        Assert.Contains("all 3 runs driven", tui.Rows[0], StringComparison.Ordinal);
    }
}
