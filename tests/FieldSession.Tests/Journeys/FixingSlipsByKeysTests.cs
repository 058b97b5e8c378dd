using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Slips of a real car, keys in, screen out: each is seen at the stop and repaired there.</summary>
public sealed class FixingSlipsByKeysTests
{
    private static readonly string[] Whole = ["5860", "6365", "714"];

    private static string Unbroken(Tui tui) => string.Join(' ', tui.Rows.Select(row => row.Trim()));

    private static Reading On(ADay day, int segment) => day.Study.Runs[0].ReadingsOn(segment).Last();

    [Fact]
    public void Off_by_one_seen_later_after_a_jump_is_shifted_into_the_gap_and_the_skipped_segment_filled()
    {
        // segment 2 was not typed: its values are on 2 and 3 one too early, then ':seg 5' was right again
        ADay day = new ADay(ARoute.Plan)
            .Ready()
            .Typed("run 417", "5355", "6265", "699", "seg 5", "6468", "6166", "732", "6971", "6367", "5861", "6569");
        using Tui tui = new(day, 120, 40);
        tui.Keys("parked<Enter>");
        Assert.Matches("4 Dellinbrook joint +impact +not read", tui.Screen);
        tui.Keys("<CursorUp><CursorUp><CursorUp><CursorUp><CursorUp><CursorUp><CursorUp><CursorUp><CursorUp>>");
        Assert.Contains("Run 1, segments 2 to 3, all one further on:", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("   3 Sallowheath lane            69.9            62-65", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Enter><CursorUp>6062<Enter>");
        Assert.Equal(["60-62", "62-65", "69.9"], new[] { 2, 3, 4 }.Select(segment => $"{On(day, segment).Levels}"));
        Assert.True(On(day, 2).FilledAtStop);
        Assert.Contains("filled in at the stop", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shift_that_was_only_looked_at_is_not_written()
    {
        ADay day = new ADay(ARoute.Plan).Ready().Typed("run 417", "5355", "6062", "end");
        int lines = day.Book.Lines.Count;
        using Tui tui = new(day);
        tui.Keys("parked<Enter>><Esc>");
        Assert.Equal(lines, day.Book.Lines.Count);
        Assert.Contains("Run 1 on 417", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("no gap before segment 1", tui.Keys("<CursorUp>").Keys("<").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_that_ended_early_says_so_asks_for_its_cause_and_offers_its_place_again()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", Whole[0], Whole[1], Whole[2], "run 862", Whole[0], Whole[1], Whole[2], "run 417", "5860");
        using Tui tui = new(day);
        tui.Keys(":end<Enter>");
        Assert.Contains("run 4, place 3 of 3", tui.Rows[0], StringComparison.Ordinal);
        Assert.Contains("run 3 was aborted; say why", Unbroken(tui), StringComparison.Ordinal);
        Assert.DoesNotContain("runs driven", tui.Screen, StringComparison.Ordinal);
        tui.Keys("parked<Enter>end puncture<Enter>");
        Assert.Contains("Run 3 on 417, aborted: puncture", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Enter>");
        Assert.Equal((4, 2), (day.Study.RunOn?.Number, day.Study.RunOn?.Turn));
    }

    [Fact]
    public void A_note_a_phrase_a_flag_and_figures_all_go_to_the_marked_row()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "m", "714");
        using Tui tui = new(day);
        tui.Keys("parked<Enter><CursorUp>;2<Enter>6365<Enter>t<Enter>; a queue<Enter>d<Enter>");
        Assert.Equal(
            [(2, "grit", null), (2, "a queue", "Ro")],
            day.Study.Notes.Select(note => (note.Segment!.Value, note.Words, note.Who))
        );
        Assert.Equal(("63-65", SpoiltCause.Traffic), ($"{On(day, 2).Levels}", On(day, 2).Spoilt!.Cause));
        Assert.Null(On(day, 1).Spoilt);
    }

    [Fact]
    public void A_rating_that_is_due_is_asked_with_its_key_first_in_the_footer_until_it_is_given()
    {
        ADay day = new ADay(ADay.ShortPlan with { Attributes = ["roar"] })
            .Ready()
            .Typed(["run 417", .. Whole])
            .Typed(["run 862", .. Whole]);
        using Tui tui = new(day, 60, 20);
        Assert.Contains("F3 rate", tui.Rows[^1], StringComparison.Ordinal);
        Assert.Contains("run 2 on 862 is not rated by Ro and Tam", Unbroken(tui), StringComparison.Ordinal);
        day.Typed("rate Ro roar 6", "rate Tam roar 6.5", "weather air=7");
        Assert.DoesNotContain("is not rated", Unbroken(tui.Keys("parked<Enter>")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubtful_reading_of_two_runs_ago_is_asked_until_it_is_answered()
    {
        ADay day = new ADay().Ready().Typed("run 417", "8486", "6365", "714").Typed(["run 862", .. Whole]).Typed(["run 417", .. Whole]);
        using Tui tui = new(day);
        Assert.Contains("1.1 Mill lane: is 84-86 right?", Unbroken(tui), StringComparison.Ordinal);
        tui.Keys("<Tab><Enter>");
        Assert.Contains("Run 1, still doubtful", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Tab>y");
        Assert.True(On(day, 1).Confirmed);
        Assert.DoesNotContain("still doubtful", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_typed_for_the_next_due_thing_is_begun_by_Tab()
    {
        ADay day = new ADay().Ready().Typed(["run 417", .. Whole]);
        using Tui tui = new(day);
        tui.Keys("parked<Enter><Tab>air 8 road 7 wind 2 dry<Enter>");
        Assert.Equal(("dry", 8), (day.Study.Weather[^1].Surface, day.Study.Weather[^1].Air!.Value.Celsius));
        Assert.DoesNotContain("no weather since", Unbroken(tui), StringComparison.Ordinal);
    }
}
