using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Rating;

public sealed class RatingsAtAStopTests
{
    [Theory]
    [InlineData("rate TAM roar 6.25", "Tam", "coarse roar", 6.25)]
    [InlineData("rate tam impact boom 6,5", "Tam", "impact boom", 6.5)]
    [InlineData("rate Ro lane-change settle 10", "Ro", "lane-change settle", 10)]
    [InlineData("rate Ro on-centre 1", "Ro", "on-centre", 1)]
    public void A_rating_belongs_to_the_run_just_driven(string typed, string person, string attribute, double points)
    {
        ADay day = AnEarDay.AtTheStop().Typed(typed);
        SeatRating rating = Assert.Single(day.Study.Ratings);
        Assert.Equal((person, attribute, points, 2), (rating.Person, rating.Attribute, rating.Score.Points, rating.Run));
    }

    [Theory]
    [InlineData("rate TAM roar 6.3", "off the scale")]
    [InlineData("rate TAM roar 0.75", "off the scale")]
    [InlineData("rate TAM roar 10.25", "off the scale")]
    [InlineData("rate TAM roar good", "off the scale")]
    [InlineData("rate TAM impact 6", "more than one")]
    [InlineData("rate TAM comfort 6", "matches no attribute")]
    [InlineData("rate Ilse roar 6", "not in the crew")]
    [InlineData("rate TAM roar 6 code=391", "has not been driven")]
    [InlineData("rate TAM roar 6 code=417", "the last run was on 862")]
    [InlineData("rate TAM roar 6 mood=bad", "not a part of a rating")]
    [InlineData("rate TAM 6", "names the person, the attribute and the score")]
    public void A_rating_that_cannot_be_is_refused_and_says_why(string typed, string why) =>
        Assert.Contains(why, AnEarDay.AtTheStop().Refusal(typed).Why, StringComparison.Ordinal);

    [Fact]
    public void Nobody_rates_twice() =>
        Assert.Contains(
            "already",
            AnEarDay.AtTheStop().Typed("rate Tam roar 6").Refusal("rate TAM coarse roar 7").Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void Nobody_rates_while_the_car_is_on_a_run() =>
        Assert.Contains(
            "ratings at a stop",
            AnEarDay.AtTheStop().Typed("run 417").Refusal("rate Tam roar 6").Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void Nothing_is_rated_before_anything_is_driven() =>
        Assert.Contains("nothing has been driven", new ADay().Ready().Refusal("rate Tam roar 6").Why, StringComparison.Ordinal);

    [Fact]
    public void The_code_that_brackets_the_others_is_7()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714");
        Assert.Contains("417 brackets the others and is 7", day.Refusal("rate Tam roar 6.75").Why, StringComparison.Ordinal);
        day.Typed("rate Tam roar 7");
    }

    [Fact]
    public void Nothing_is_rated_once_the_data_are_frozen() =>
        Assert.Contains(
            "frozen",
            AnEarDay.AtTheStop().Typed("calibration after 94", "predict Ro feature=862 sure=3").Refusal("rate Tam roar 6").Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void The_plan_may_change_what_is_rated()
    {
        ADay day = AnEarDay.AtTheStop("roar", "smell of rubber").Typed("rate Tam smell 6", "rate Tam roar 6");
        Assert.Contains("roar, smell of rubber", day.Refusal("rate Tam slap 6").Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void The_seat_is_the_one_of_the_run_unless_it_is_said()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "end", "run 862 driver=Tam", "end", "rate Tam roar 6", "rate Ro roar 6", "rate Ro slap 6 seat=REAR");
        Assert.Equal(["driver", "co-driver", "rear"], day.Study.Ratings.Select(r => r.Seat));
    }

    [Fact]
    public void What_one_gave_is_covered_until_the_other_has_stored_it_too()
    {
        ADay day = AnEarDay.AtTheStop().Typed("rate Tam roar 6.25", "rate Tam slap 5");
        Assert.Empty(RatingCover.Open(day.Study));
        day.Typed("rate Ro roar 7.5");
        Assert.Equal(["coarse roar", "coarse roar"], RatingCover.Open(day.Study).Select(r => r.Attribute));
        Assert.Equal(1, AnEarDay.Found(day).Covered);
    }

    [Theory]
    [InlineData("ratings closed")]
    [InlineData("run 417")]
    public void Closing_the_ratings_or_driving_on_uncovers_what_was_given(string typed) =>
        Assert.Single(RatingCover.Open(AnEarDay.AtTheStop().Typed("rate Tam roar 6.25", typed).Study));

    [Fact]
    public void Closed_ratings_stay_closed()
    {
        ADay day = AnEarDay.AtTheStop().Typed("ratings closed");
        Assert.Contains("closed", day.Refusal("rate Tam roar 6").Why, StringComparison.Ordinal);
        Assert.Contains("closed already", day.Refusal("ratings closed").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void No_answer_repeats_a_number()
    {
        ADay day = AnEarDay.AtTheStop();
        Assert.Equal("Tam rated coarse roar of 862, run 2; covered until Ro stored it too", day.Answer("rate tam roar 6.25").Words);
        Assert.DoesNotContain("6.25", day.Answer("u").Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_covered_rating_can_be_taken_back_and_an_uncovered_one_cannot()
    {
        ADay day = AnEarDay.AtTheStop().Typed("rate Tam roar 6.25", "u", "rate Tam roar 6.5", "rate Ro roar 7");
        Assert.Equal([6.5, 7], day.Study.Ratings.Select(r => r.Score.Points));
        Assert.Contains("nothing to take back", day.Refusal("u").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_journal_read_back_tells_the_same_ratings_choices_and_extras()
    {
        ADay day = AnEarDay
            .AtTheStop()
            .Typed(
                "extra c=74.2 rec=take12",
                "rate Tam roar 6.25",
                "trials 417 862 n=6 seg=2 side=862 which is louder",
                "slip Ilse",
                "choose Ro first unseen"
            );
        Study again = Logbook.Fold(day.Book.Lines);
        Assert.Equal(day.Study.Ratings, again.Ratings);
        Assert.Equal(day.Study.ChoiceSets[0].Choices, again.ChoiceSets[0].Choices);
        Assert.Equal(ChoiceSight.Unseen, again.ChoiceSets[0].Choices[0].Sight);
        Assert.Equal((true, "Ilse"), (again.ChoiceSets[0].IsSealed, Assert.Single(again.ChoiceSets[0].Runners)));
        Assert.Equal(day.Study.ChoiceSets[0].Terms, again.ChoiceSets[0].Terms);
        Assert.Equal(day.Study.LastRun!.Passages, again.LastRun!.Passages);
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(10, true)]
    [InlineData(6.25, true)]
    [InlineData(6.2, false)]
    [InlineData(0.75, false)]
    [InlineData(double.NaN, false)]
    public void A_score_is_1_to_10_in_quarters(double points, bool isScore)
    {
        Assert.Equal(isScore, Score.IsScore(points));
        if (!isScore)
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Score.FromPoints(points));
        }
    }

    [Fact]
    public void Every_step_of_the_scale_has_words() =>
        Assert.Equal(Enumerable.Range(1, 10).Reverse(), RatingSteps.All.Select(step => step.Points));
}
