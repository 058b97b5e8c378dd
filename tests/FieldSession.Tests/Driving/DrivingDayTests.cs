using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Driving;

public sealed class DrivingDayTests
{
    [Fact]
    public void A_run_walks_the_route_in_order_and_ends_by_itself()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714");
        Assert.Null(day.Study.RunOn);
        Assert.Equal([1, 2, 3], day.Study.Runs[0].Readings.Select(r => r.Segment));
        Assert.Equal("862", day.Study.CodeAsked?.Digits);
    }

    [Theory]
    [InlineData("run 417 driver=John Paul", "John Paul", null)]
    [InlineData("run 417 driver=John Paul car=grey two", "John Paul", "grey two")]
    [InlineData("run 417 car=grey two driver=Ro", "Ro", "grey two")]
    public void Whoever_has_two_first_names_can_take_the_wheel(string typed, string driver, string? car)
    {
        Plan plan = ADay.ShortPlan with
        {
            Crew = [new CrewMember("John Paul", CrewMember.CoDriverSeat), new CrewMember("Ro", CrewMember.DriverSeat)],
            Cars = ["grey one", "grey two"],
        };
        Run run = new ADay(plan).Ready().Typed(typed).Study.Runs[0];
        Assert.Equal((driver, car ?? "grey one"), (run.Driver, run.Car ?? "grey one"));
        Assert.Contains("'nonsense'", new ADay(plan).Ready().Refusal("run 417 driver=John Paul nonsense").ToString());
    }

    [Fact]
    public void The_answer_says_what_was_stored_and_what_is_next()
    {
        ADay day = new ADay().Ready().Typed("run 417");
        Assert.Equal("58-60 dB on 1 Mill lane; next 2 Quarry road", day.Answer("5860").Words);
        Assert.Equal(
            "69-73 dB on 2 Quarry road, spoilt by traffic: two lorries; next 3 Bridge joint",
            day.Answer("69-73 t two lorries").Words
        );
        Assert.Equal("71.4 dB on 3 Bridge joint; run 1 is over", day.Answer("714").Words);
    }

    [Theory]
    [InlineData("6882", "over 8 dB off the plan's 60")]
    [InlineData("25-27", "outside 30..110")]
    [InlineData("56-65", "9 dB wide")]
    [InlineData("601", "one value; this segment needs low and high")]
    public void A_doubtful_reading_is_stored_and_the_doubt_is_said(string typed, string doubt)
    {
        ADay day = new ADay().Ready().Typed("run 417");
        Assert.Contains(doubt, day.Answer(typed).Doubt, StringComparison.Ordinal);
        Assert.Single(day.Study.Runs[0].Readings);
    }

    [Fact]
    public void A_code_out_of_order_is_stored_as_doubtful()
    {
        ADay day = new ADay().Ready();
        Assert.Equal("the order asks for 417 now", day.Answer("run 862").Doubt);
    }

    [Theory]
    [InlineData("run 417", "still on")]
    [InlineData("seg 4", "no segment 4")]
    [InlineData("seg x", "by its number")]
    [InlineData(";7", "no phrase 7")]
    [InlineData(";", "empty")]
    [InlineData("hello", "is not understood")]
    [InlineData("t", "no reading to flag")]
    public void A_line_that_cannot_be_taken_changes_nothing_and_says_why(string typed, string why)
    {
        ADay day = new ADay().Ready().Typed("run 417");
        Assert.Contains(why, day.Refusal(typed).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_without_a_run_is_refused_and_says_how_to_start_one()
    {
        Assert.Contains("run 417", new ADay().Ready().Refusal("5860").Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stranger_code_is_refused_with_the_codes_of_the_study()
    {
        Assert.Contains("417, 862", new ADay().Ready().Refusal("run 999").Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void The_meter_must_be_checked_first_unless_the_crew_overrides_it_with_a_reason()
    {
        ADay day = new();
        Assert.Equal("calibration-before", day.Refusal("run 417").Check);
        day.Typed("override calibration-before calibrator left at home", "run 417");
        Assert.Equal("calibrator left at home", day.Study.Overrides[0].Reason);
    }

    [Fact]
    public void A_wet_road_and_a_strong_wind_stop_the_next_run_until_they_are_over()
    {
        ADay day = new ADay().Typed("calibration before 94", "weather surface=wet wind=9");
        Assert.Equal("surface", day.Refusal("run 417").Check);
        day.Typed("weather surface=dry");
        Assert.Equal("wind", day.Refusal("run 417").Check);
        day.Typed("weather wind=3", "run 417");
    }

    [Fact]
    public void A_flag_can_be_given_and_taken_back_with_one_letter()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "t");
        Assert.Equal(SpoiltCause.Traffic, day.Study.Runs[0].LastReading?.Spoilt?.Cause);
        day.Typed("t");
        Assert.Null(day.Study.Runs[0].LastReading?.Spoilt);
        day.Typed("t", "w");
        Assert.Equal(SpoiltCause.Wind, day.Study.Runs[0].LastReading?.Spoilt?.Cause);
    }

    [Fact]
    public void A_flag_after_the_next_segment_began_is_late_and_does_not_leave_the_reading_out()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365");
        Assert.Contains("late", day.Answer("flag 1.1 t van seen too late").Words, StringComparison.Ordinal);
        Reading flagged = day.Study.Runs[0].Readings.First();
        Assert.True(flagged.Spoilt?.Late);
        Assert.False(flagged.LeftOut);
    }

    [Fact]
    public void Undo_takes_back_one_act_after_another_and_everything_stays_in_the_journal()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "m", "714", "u", "u", "u");
        Assert.Equal(1, day.Study.NextSegment?.Number);
        Assert.Equal(11, day.Book.Lines.Count);
        day.Typed("u");
        Assert.Empty(day.Study.Runs);
    }

    [Fact]
    public void A_missed_segment_moves_on_and_seg_goes_back()
    {
        ADay day = new ADay().Ready().Typed("run 417", "m", "seg 1", "5860");
        Assert.Equal(2, day.Study.NextSegment?.Number);
        Assert.IsType<Missed>(day.Study.Runs[0].Passages[0]);
    }

    [Fact]
    public void A_note_belongs_to_the_last_segment_read()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", ";1", "; van far behind");
        Assert.Equal([("hollow ring", 1, 1), ("van far behind", 1, 1)], day.Study.Notes.Select(n => (n.Words, n.Run ?? 0, n.Segment ?? 0)));
    }

    [Fact]
    public void The_journal_read_back_tells_the_same_study()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "5860 t", "t", "m", "; grit", "u", "714", "run 862", "5961", "end", "calibration after 93.9");
        Study again = Logbook.Fold(day.Book.Lines);
        Assert.Equal(day.Study.Runs.SelectMany(r => r.Passages), again.Runs.SelectMany(r => r.Passages));
        Assert.Equal(day.Study.Notes, again.Notes);
        Assert.Equal(day.Study.Sessions, again.Sessions);
        Assert.Equal(day.Study.Plan!.Route, again.Plan!.Route);
        Assert.Equal(day.Study.Stage, again.Stage);
    }

    [Fact]
    public void A_full_disk_leaves_the_very_same_study_and_the_next_act_goes_on()
    {
        ADay day = new ADay().Ready().Typed("run 417");
        Study before = day.Study;
        day.Journal.DiskIsFull = true;
        Assert.Equal("no space left on the disk", day.Book.Write("5860").NotSavedBecause);
        Assert.Same(before, day.Study);
        day.Journal.DiskIsFull = false;
        day.Typed("5860");
        Assert.Single(day.Study.Runs[0].Readings);
    }

    [Fact]
    public void Predictions_wait_for_every_code_and_for_the_calibration_after_then_freeze_the_data()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714");
        Assert.Contains("862 has not been driven", day.Refusal("predict Ro feature=862 sure=4").Why, StringComparison.Ordinal);
        day.Typed("run 862", "5961", "6466", "725");
        Assert.Equal("calibration-after", day.Refusal("predict Ro feature=862 sure=4").Check);
        day.Typed("calibration after 93.9", "predict Ro feature=862 sure=4 quieter=417 pay=no because=sound grittier");
        Assert.Contains("frozen", day.Refusal("run 417").Why, StringComparison.Ordinal);
        Assert.Contains("already", day.Refusal("predict ro feature=417 sure=1").Why, StringComparison.Ordinal);
        Assert.Contains("not in the crew", day.Refusal("predict Ilse feature=417 sure=1").Why, StringComparison.Ordinal);
        Assert.Equal(Stage.Driving, day.Study.Stage);
        day.Typed("predict Tam feature=862 sure=3");
        Assert.Equal(Stage.Predicted, day.Study.Stage);
    }
}
