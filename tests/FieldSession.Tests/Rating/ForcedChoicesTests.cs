using FieldSession.Rating;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Rating;

public sealed class ForcedChoicesTests
{
    private const string Ten = "trials 862 417 n=10 seg=2 which is louder";

    [Fact]
    public void A_set_tells_what_was_fixed_and_what_it_cannot_show_and_never_its_order()
    {
        ADay day = AnEarDay.AtTheStop();
        string answer = day.Answer(Ten).Words;
        Assert.Equal(
            "set 1: 10 trials, 862 or 417, 'which is louder' on 2 Quarry road, two-sided; trial 1 of 10 is next"
                + "; NOT HEARD is out of reach: 75 % right would be found with a chance of 24 % only, 35 trials make it 80 %",
            answer
        );
        Assert.DoesNotContain("out of reach", AnEarDay.AtTheStop().Answer("trials 862 417 n=40 x").Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_is_for_whoever_runs_the_trials_and_they_choose_in_none()
    {
        ADay day = AnEarDay.AtTheStop().Typed(Ten);
        Assert.DoesNotContain("862 417", day.Answer("slip Tam").Words, StringComparison.Ordinal);
        Assert.Equal(["Tam"], day.Study.ChoiceSets[0].Runners);
        Assert.Contains("Tam was shown the order", day.Refusal("choose Tam first").Why, StringComparison.Ordinal);
        day.Typed("choose Ro first unseen");
        Assert.Contains("Ro has chosen in set 1", day.Refusal("slip Ro").Why, StringComparison.Ordinal);
        Assert.Contains("nothing to take back", AnEarDay.AtTheStop().Typed(Ten, "slip Tam").Refusal("u").Why, StringComparison.Ordinal);
        string[] slip = [.. OrderSlip.Rows(day.Study.ChoiceSets[0], 1)];
        Assert.Contains(
            string.Join(
                "   ",
                Enumerable.Range(1, 5).Select(t => $"{t, 3}  {day.Study.ChoiceSets[0].CodeAt(t, 1)} {day.Study.ChoiceSets[0].CodeAt(t, 2)}")
            ),
            slip
        );
    }

    [Fact]
    public void Whoever_sat_at_the_meter_cannot_say_that_they_saw_nothing_and_before_it_nobody_knows_anything()
    {
        ADay day = AnEarDay.AtTheStop().Typed(Ten);
        Assert.Contains("Tam sat at the meter", day.Refusal("choose Tam first unseen").Why, StringComparison.Ordinal);
        Assert.Contains("counted apart: with the meter seen", day.Answer("choose Tam first").Words, StringComparison.Ordinal);
        Assert.Contains("counted apart: with the meter seen", day.Answer("choose Ro first").Words, StringComparison.Ordinal);
        day.Typed("choose Ro first unseen");
        Assert.Equal(
            [ChoiceSight.MeterSeen, ChoiceSight.MeterSeen, ChoiceSight.Unseen],
            day.Study.ChoiceSets[0].Choices.Select(choice => choice.Sight)
        );
        ADay before = new ADay().Ready().Typed("run 417", "5860", "6365", "714", Ten, "choose Tam first");
        Assert.Equal(ChoiceSight.Unseen, before.Study.ChoiceSets[0].Choices[0].Sight);
    }

    [Fact]
    public void A_set_of_an_older_program_still_goes_by_its_codes_and_its_choices_are_counted_apart()
    {
        ADay day = AnEarDay.AtTheStop();
        ChoiceTerms terms = new(ChoiceKind.Paired, new SpecCode("862"), new SpecCode("417"), "x", null, null, 0.75);
        Assert.True(day.Book.Write(new ChoiceTrialsPlanned(terms, ["AB", "BA", "BA", "AB", "AB", "BA"])).IsWritten);
        Assert.EndsWith("trial 2 of 6: first 417, then 862", day.Answer("choose Ro 862").Words, StringComparison.Ordinal);
        Assert.Equal(ChoiceSight.MeterSeen, day.Study.ChoiceSets[0].Choices[0].Sight);
    }

    [Theory]
    [InlineData("trials 862 417 n=10 x", 2)]
    [InlineData("trials 862 417 n=60 kind=triangle x", 6)]
    public void Every_order_is_presented_equally_often(string typed, int orders)
    {
        ChoiceSet set = AnEarDay.AtTheStop().Typed(typed).Study.ChoiceSets[0];
        Assert.Equal(orders, set.Presentations.Distinct().Count());
        Assert.Single(set.Presentations.CountBy(order => order).Select(order => order.Value).Distinct());
    }

    [Fact]
    public void The_order_is_the_same_wherever_it_is_planned_and_another_in_another_set()
    {
        string Order(params string[] lines) => string.Join(' ', AnEarDay.AtTheStop().Typed([.. lines]).Study.ChoiceSets[^1].Presentations);
        Assert.Equal(Order("trials 862 417 n=20 x"), Order("trials 862 417 n=20 x"));
        Assert.NotEqual(Order("trials 862 417 n=20 x"), Order("trials 862 417 n=20 x", "trials 862 417 n=20 y"));
    }

    [Theory]
    [InlineData("first", 1)]
    [InlineData("second", 2)]
    [InlineData("2", 2)]
    public void Choices_go_by_place(string typed, int place) =>
        Assert.Equal(place, AnEarDay.AtTheStop().Typed(Ten, $"choose Tam {typed}").Study.ChoiceSets[0].Choices[0].Place);

    [Fact]
    public void Nobody_answers_by_code() =>
        Assert.Contains("does not know the codes", AnEarDay.AtTheStop().Typed(Ten).Refusal("choose Tam 862").Why, StringComparison.Ordinal);

    [Theory]
    [InlineData("choose Ilse first", "not in the crew")]
    [InlineData("choose Tam 391", "no planned trials are about 391")]
    [InlineData("choose Tam third", "no place 3")]
    [InlineData("choose Tam loud", "is not a place")]
    [InlineData("choose Tam first set=2", "there is no set 2")]
    [InlineData("choose Tam 862 please", "not a part of a choice")]
    [InlineData("trials 862 417 n=10 seg=2 Which is louder?", "asks this already")]
    public void A_choice_that_cannot_be_is_refused_and_says_why(string typed, string why) =>
        Assert.Contains(why, AnEarDay.AtTheStop().Typed(Ten).Refusal(typed).Why, StringComparison.Ordinal);

    [Theory]
    [InlineData("trials 862 391 n=10 x", "391 is not a code")]
    [InlineData("trials 862 862 n=10 x", "needs two codes")]
    [InlineData("trials 862 417 n=10 seg=9 x", "no segment 9")]
    [InlineData("trials 862 417 n=10 side=391 x", "not one of the pair")]
    [InlineData("trials 862 417 n=5 x", "can never reach 5 %")]
    [InlineData("trials 862 417 n=4 side=862 x", "can never reach 5 %")]
    [InlineData("trials 862 417 n=2 kind=triangle x", "can never reach 5 %")]
    [InlineData("trials 862 417 n=201 x", "not a part of trials")]
    [InlineData("trials 862 417 n=12 detect=60 x", "not a part of trials")]
    [InlineData("trials 862 417 which is louder", "the number of trials is missing")]
    [InlineData("trials 862 n=10", "name the pair")]
    [InlineData("choose Tam 862", "no trials are planned")]
    public void Trials_that_can_never_say_anything_are_not_planned(string typed, string why) =>
        Assert.Contains(why, AnEarDay.AtTheStop().Refusal(typed).Why, StringComparison.Ordinal);

    [Fact]
    public void Nobody_chooses_while_the_car_is_on_a_run() =>
        Assert.Contains(
            "choices at a stop",
            AnEarDay.AtTheStop().Typed(Ten, "run 417").Refusal("choose Tam first").Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void In_a_triangle_the_odd_one_is_chosen_by_its_place() =>
        Assert.Contains(
            "by its place",
            AnEarDay.AtTheStop().Typed("trials 862 417 n=12 kind=triangle odd one").Refusal("choose Tam 862").Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_set_ends_by_its_plan_alone_and_its_last_choice_stands()
    {
        ADay day = AnEarDay.Chosen("trials 862 417 n=6 x", 6, 6);
        Assert.Contains("all 6 planned trials", day.Refusal("choose Ro first").Why, StringComparison.Ordinal);
        Assert.Contains("nothing to take back", day.Refusal("u").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_of_the_counts_is_told_before_the_planned_end()
    {
        ADay day = AnEarDay.Chosen(Ten, 9, 9);
        Assert.Null(AnEarDay.Found(day).Choices[0].Counts);
        Assert.DoesNotContain("862", day.Answer("u").Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("extra c=74.2 l200=60.1 l250=58 rec=take12")]
    [InlineData("extra c=74,2")]
    public void Levels_beside_dBA_go_to_the_last_reading(string typed)
    {
        ADay day = AnEarDay.AtTheStop().Typed(typed);
        Assert.Equal(74.2, day.Study.LastRun!.LastReading!.Extras!.CDb);
    }

    [Theory]
    [InlineData("extra", "says nothing")]
    [InlineData("extra c=150", "not a part such as")]
    [InlineData("extra l500=40", "not a part such as")]
    [InlineData("extra c=75", "noted for this reading already")]
    public void A_wrong_extra_reading_is_refused(string typed, string why) =>
        Assert.Contains(why, AnEarDay.AtTheStop().Typed("extra c=74.2").Refusal(typed).Why, StringComparison.Ordinal);
}
