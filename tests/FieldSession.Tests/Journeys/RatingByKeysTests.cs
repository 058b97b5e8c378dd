using FieldSession.State;
using FieldSession.Tests.Making;
using FieldSession.Tests.Rating;

namespace FieldSession.Tests.Journeys;

/// <summary>Two raters, one keyboard, neither sees the other's numbers.</summary>
public sealed class RatingByKeysTests
{
    private static readonly string[] OfRo = ["6.25", "8.5"];
    private static readonly string[] OfTam = ["3.75", "9.5"];

    [Fact]
    public void Two_raters_store_their_numbers_and_neither_sees_the_others()
    {
        ADay day = AnEarDay.AtTheStop("roar", "on-centre");
        using Tui tui = new(day, 120, 40, "rate");
        List<string> seen = [];
        void Press(string keys)
        {
            tui.Keys(keys);
            seen.Add(tui.Screen);
        }

        Press("parked<Enter>1<Enter>");
        Press("6.25<Enter>");
        Press("8,5<Enter>");
        Press("<Enter>");
        Press("Tam<Enter>");
        Press("3.75<Enter>");
        Press("<F2>");
        Press("<F3>2<Enter>");
        Assert.All(seen, screen => Assert.DoesNotContain(OfRo.Concat(OfTam), number => screen.Contains(number, StringComparison.Ordinal)));
        Press("9.5<Enter>");
        Assert.Equal(
            [("Ro", 6.25, "driver"), ("Ro", 8.5, "driver"), ("Tam", 3.75, "co-driver"), ("Tam", 9.5, "co-driver")],
            day.Study.Ratings.Select(r => (r.Person, r.Score.Points, r.Seat))
        );
    }

    [Fact]
    public void The_word_typed_again_leaves_the_keyboard_with_who_has_it()
    {
        using Tui tui = new(AnEarDay.AtTheStop("roar"), screen: "rate");
        tui.Keys("parked<Enter>1<Enter>parked<Enter>");
        Assert.Contains("Ro, alone:", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("the car is parked; this is the rate screen", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_alone_skips_an_attribute_and_the_crews_page_says_what_is_open()
    {
        ADay day = AnEarDay.AtTheStop("roar", "slap");
        using Tui tui = new(day, screen: "rate");
        tui.Keys("parked<Enter>1<Enter><Enter>7.25<Enter><Enter>");
        Assert.Equal("slap", Assert.Single(day.Study.Ratings).Attribute);
        Assert.Contains("Ro: 1 of 2 stored", tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1<Enter>6.3<Enter>", "off the scale")]
    [InlineData("3<Enter>", "not in the crew: 1 Ro, 2 Tam")]
    [InlineData("choose Ro 862<Enter>", "no trials are planned")]
    public void What_cannot_be_taken_is_said_and_the_number_is_gone_from_the_box(string keys, string why)
    {
        ADay day = AnEarDay.AtTheStop();
        using Tui tui = new(day, 120, 40, "rate");
        tui.Keys("parked<Enter>" + keys);
        Assert.Contains(why, tui.Screen, StringComparison.Ordinal);
        Assert.Equal("", tui.Box);
        Assert.Empty(day.Study.Ratings);
    }

    [Fact]
    public void Esc_gives_the_keyboard_to_the_next_person()
    {
        using Tui tui = new(AnEarDay.AtTheStop(), screen: "rate");
        tui.Keys("parked<Enter>1<Enter>8");
        Assert.Contains("Ro, alone", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Esc>");
        Assert.Equal("", tui.Box);
        tui.Keys("<Esc>");
        Assert.Contains("who rates?", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_rated_before_somebody_says_that_the_car_is_parked()
    {
        ADay day = AnEarDay.AtTheStop();
        using Tui tui = new(day, screen: "rate");
        Assert.Contains("'1' is not 'parked'", tui.Keys("1<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("who rates?", tui.Keys("parked<Enter>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_is_typed_as_a_line()
    {
        ADay day = AnEarDay.AtTheStop().Typed("trials 862 417 n=6 x");
        using Tui tui = new(day, screen: "rate");
        tui.Keys("parked<Enter>choose Ro second<Enter>");
        Assert.Equal(2, Assert.Single(day.Study.ChoiceSets[0].Choices).Place);
        Assert.Contains("trial 2 of 6", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_of_trials_is_shown_to_who_runs_them_until_a_key_covers_it()
    {
        ADay day = AnEarDay.AtTheStop().Typed("trials 862 417 n=6 x");
        using Tui tui = new(day, screen: "rate");
        string order = $"  1  {day.Study.ChoiceSets[0].CodeAt(1, 1)} {day.Study.ChoiceSets[0].CodeAt(1, 2)}";
        Assert.DoesNotContain(order, tui.Keys("parked<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains(order, tui.Keys("slip Tam<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("Enter or Esc covers it", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain(order, tui.Keys("<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("who rates?", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("Tam was shown the order", tui.Keys("choose Tam first<Enter>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_is_on_the_drive_screen_tells_a_covered_number()
    {
        ADay day = AnEarDay.AtTheStop("roar").Typed("rate Ro roar 6.25");
        using Tui tui = new(day, 120, 40);
        Assert.Contains("Ro rated roar", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("6.25", tui.Screen, StringComparison.Ordinal);
        Assert.False(RatingCover.IsOpen(day.Study, day.Study.Ratings[0]));
    }
}
