using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

/// <summary>
/// What was skipped, missed or never read is filled in at the stop, and everything typed goes to the place that is named.
/// </summary>
public sealed class FilledInAtAStopTests
{
    private static ADay WithHole(Plan? plan = null) => new ADay(plan).Ready().Typed("run 417", "5860", "m", "714");

    [Fact]
    public void A_missed_segment_is_filled_kept_as_such_and_never_flagged_on_the_spot()
    {
        ADay day = WithHole().Typed("fill 1.2 6365", "flag 1.2 t");
        Reading reading = day.Study.Runs[0].Readings.Single(r => r.Segment == 2);
        Assert.True(reading.FilledAtStop);
        Assert.True(reading.Spoilt?.Late);
        Assert.Equal([1, 2, 3], day.Study.Runs[0].Passages.Select(p => p.Segment));
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData(true, true)]
    public void It_counts_by_the_rule_of_the_plan(bool? isLeftOut, bool isSpoilt)
    {
        ADay day = WithHole(ADay.ShortPlan with { FilledLeftOut = isLeftOut }).Typed("fill 1.2 6365");
        Assert.Equal(
            isSpoilt ? "filled at the stop" : null,
            StudyReadings.Of(day.Study).Levels.Single(level => level.Segment == "Quarry road").Cause
        );
    }

    [Theory]
    [InlineData("fill 1.1 6365", "1.1 was read: 58-60 dB")]
    [InlineData("fill 1.9 6365", "there is no segment 9")]
    [InlineData("fill 4.1 6365", "there is no run 4")]
    [InlineData("correct 1.2 6365", "there is no reading 1.2")]
    [InlineData("correct 1.1 58-60", "1.1 is 58-60 dB already")]
    [InlineData("note 1.9 a word", "there is no segment 9")]
    public void What_cannot_be_filled_or_changes_nothing_is_not_written(string typed, string why) =>
        Assert.Equal(why, WithHole().Refusal(typed).Why);

    [Fact]
    public void The_same_flag_and_the_same_speaker_are_not_written_twice()
    {
        ADay day = WithHole().Typed("flag 1.1 t lorry", "; grit", "d");
        Assert.Contains("already", day.Refusal("flag 1.1 t lorry").Why, StringComparison.Ordinal);
        Assert.Contains("already", day.Refusal("d").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_goes_to_the_place_that_is_named()
    {
        ADay day = WithHole().Typed("note 1.1 ;2", "note 1.2 a queue");
        Assert.Equal([(1, "grit"), (2, "a queue")], day.Study.Notes.Select(note => (note.Segment!.Value, note.Words)));
    }

    [Fact]
    public void Of_two_readings_on_one_segment_each_has_a_place_of_its_own()
    {
        ADay day = new ADay().Ready().Typed("run 417", "7860", "seg 1", "5860", "6365", "714", "confirm 1.1.2", "correct 1.1.1 57-60");
        Assert.Equal(["57-60", "58-60"], day.Study.Runs[0].ReadingsOn(1).Select(r => $"{r.Levels}"));
        Assert.True(day.Study.Runs[0].ReadingsOn(1)[1].Confirmed);
    }

    [Theory]
    [InlineData("shift 1.1 +1", new[] { 2, 3, 5, 6 })]
    [InlineData("shift 1.2-2 +1", new[] { 1, 3, 5, 6 })]
    [InlineData("shift 1.5 -1", new[] { 1, 2, 4, 5 })]
    public void A_stretch_up_to_the_next_gap_is_shifted_and_no_other(string typed, int[] segments)
    {
        ADay day = new ADay(ARoute.Plan).Ready().Typed("run 417", "5355", "6062", "seg 5", "6468", "6166", "end", typed);
        Assert.Equal(segments, day.Study.Runs[0].Readings.Select(r => r.Segment));
    }

    [Fact]
    public void A_missed_segment_is_a_gap_that_a_stretch_is_shifted_into()
    {
        ADay day = new ADay().Ready().Typed("run 417", "6365", "714", "m", "shift 1.1 +1");
        Assert.Equal([2, 3], day.Study.Runs[0].Passages.Select(p => p.Segment));
    }

    [Fact]
    public void Predictions_are_not_locked_while_a_doubt_of_any_run_is_open_unless_a_word_says_so()
    {
        ADay day = new ADay()
            .Ready()
            .Typed(
                "run 417",
                "8486",
                "6365",
                "714",
                "run 862",
                "5961",
                "6466",
                "725",
                "run 417",
                "5860",
                "6365",
                "714",
                "calibration after 94.0"
            );
        Assert.Contains("a doubtful reading is open: 1.1", day.Refusal("predict Ro feature=862 sure=3").Why, StringComparison.Ordinal);
        day.Typed("override doubts nobody remembers", "predict Ro feature=862 sure=3");
        Assert.Equal("doubts", Assert.Single(day.Study.Overrides).Check);
    }
}
