using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: the run is read back at the stop, repaired, and the next one is started.</summary>
public sealed class StoppingByKeysTests
{
    // 84-86 is far from the plan's 60 dB; 63-65 was typed for the coarse segment.
    private static ADay Doubtful() => new ADay().Ready().Typed("run 417", "8486", "6365", "714");

    private static ADay Slipped() => new ADay(ARoute.Plan).Ready().Typed("run 417", "5355", "6062", "6265", "6468", "6166", "end");

    private static Reading Of(ADay day, int segment) => day.Study.Runs[^1].Readings.First(r => r.Segment == segment);

    private static string Unbroken(Tui tui) => string.Join(' ', tui.Rows.Select(row => row.Trim()));

    [Fact]
    public void Typing_parked_on_the_drive_screen_reads_the_run_back_and_Esc_goes_back()
    {
        using Tui tui = new(Doubtful());
        Assert.Contains("reads run 1 back", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("Run 1 on 417", tui.Keys("parked<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("STOP   next:", tui.Keys("<Esc>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void While_a_run_is_on_the_word_opens_nothing_and_the_stop_is_shut()
    {
        ADay day = Doubtful().Typed("run 862", "5860");
        using Tui tui = new(day);
        Assert.Contains("run 2 is on", tui.Keys(":parked<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("Shut: run 2 is on.", tui.Keys("<F10>").Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("84-86", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("NEXT 2 of 3", tui.Keys("<F2>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void The_mark_begins_at_the_newest_reading_Tab_brings_the_doubtful_one_and_one_key_keeps_it()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        Assert.Contains(">  3 Bridge joint", tui.Keys("parked<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains(">  1 Mill lane", tui.Keys("<Tab>").Screen, StringComparison.Ordinal);
        Assert.Contains("84-86 ?", tui.Screen, StringComparison.Ordinal);
        tui.Keys("y");
        Assert.True(Of(day, 1).Confirmed);
        Assert.Contains("confirmed as typed", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("doubts 0", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_correct_the_marked_reading_and_the_first_value_stays_in_sight()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>5860<Enter>");
        Assert.Equal("58-60", Of(day, 1).Levels.ToString());
        Assert.Contains("corrected from 84-86", tui.Screen, StringComparison.Ordinal);
        tui.Keys("u");
        Assert.Equal("84-86", Of(day, 1).Levels.ToString());
    }

    [Fact]
    public void A_cause_letter_flags_the_marked_reading_late()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter><CursorUp>t lorry in the next lane<Enter>");
        Assert.Equal((SpoiltCause.Traffic, true), (Of(day, 2).Spoilt!.Cause, Of(day, 2).Spoilt!.Late));
        Assert.Contains("! traffic, flagged late: lorry in the next lane", Unbroken(tui), StringComparison.Ordinal);
    }

    [Fact]
    public void An_off_by_one_is_shown_as_a_table_and_repaired_as_one_recorded_act()
    {
        ADay day = Slipped();
        int lines = day.Book.Lines.Count;
        using Tui tui = new(day);
        tui.Keys("parked<Enter><CursorUp>>");
        Assert.Contains("Run 1, segments 4 to 5, all one further on:", tui.Screen, StringComparison.Ordinal);
        Assert.Equal(lines, day.Book.Lines.Count);
        tui.Keys("<Enter>");
        Assert.Equal(lines + 1, day.Book.Lines.Count);
        Assert.Equal([1, 2, 3, 5, 6], day.Study.Runs[0].Readings.Select(r => r.Segment));
        Assert.Contains(">  5 Ferrowdyke slabs", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<CursorDown>").Keys("<").Keys("<Enter>");
        Assert.Equal([1, 2, 3, 4, 5], day.Study.Runs[0].Readings.Select(r => r.Segment));
    }

    [Fact]
    public void Notes_weather_and_calibration_are_typed_there_too()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter>; a long note, with commas<Enter>d<Enter>weather air=9 surface=dry<Enter>");
        Assert.Equal(("a long note, with commas", "Ro"), (day.Study.Notes[0].Words, day.Study.Notes[0].Who));
        Assert.Contains("; a long note, with commas (Ro)", Unbroken(tui), StringComparison.Ordinal);
        Assert.Contains("air 9 ", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_on_an_empty_box_starts_the_next_run_with_the_protocol_and_drives_on()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        Assert.Contains(
            "Enter: starts run 2 on 862 and confirms: windows and vents shut",
            Unbroken(tui.Keys("parked<Enter>")),
            StringComparison.Ordinal
        );
        tui.Keys("<Enter>");
        Assert.Equal(2, day.Study.RunOn?.Number);
        Assert.Contains("NEXT 1 of 3", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("84-86", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("Shut: run 2 is on.", tui.Keys("<Alt+0>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bouncing_Enter_after_a_correction_starts_no_run()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>5860<Enter>").Bounce(120);
        Assert.Null(day.Study.RunOn);
        Assert.Equal("58-60", Of(day, 1).Levels.ToString());
    }

    [Fact]
    public void A_line_that_is_refused_says_why_and_changes_nothing()
    {
        ADay day = Doubtful();
        using Tui tui = new(day);
        Study before = day.Study;
        Assert.Contains("there is no doubtful reading 1.2", tui.Keys("parked<Enter><CursorUp>y").Screen, StringComparison.Ordinal);
        Assert.Contains("is not understood", tui.Keys("nonsense<Enter>").Screen, StringComparison.Ordinal);
        Assert.Same(before, day.Study);
    }

    [Fact]
    public void A_plan_that_covers_all_until_the_evening_shows_no_other_run_and_no_comparison_at_the_stop()
    {
        ADay day = new ADay(ADay.ShortPlan with { CoveredUntilEvening = true })
            .Ready()
            .Typed("run 417", "5860", "6365", "714", "run 862", "5961", "6466", "725");
        using Tui tui = new(day);
        tui.Keys("parked<Enter>");
        Assert.Contains("59-61", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("58-60", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("+1.0", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void After_the_last_run_Enter_starts_nothing_and_the_next_act_is_told()
    {
        ADay day = Doubtful().Typed("run 862", "5860", "6365", "714", "run 417", "5860", "6365", "714");
        using Tui tui = new(day);
        Assert.Contains("calibration after", tui.Keys("parked<Enter><Enter>").Screen, StringComparison.Ordinal);
        Assert.Null(day.Study.RunOn);
    }
}
