using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Planning;

public class AWeakPlanIsDrivenWithWarnings
{
    [Theory]
    [InlineData("R 1 R 1 R", 2)]
    [InlineData("R 1 R 1 R 1 R", 2)]
    [InlineData("r-1-2-r-2-1-r", 3)]
    [InlineData("R,1,2,3,R,3,2,1,R", 4)]
    public void A_bracketed_order_that_cancels_drift_draws_no_warning(string order, int specs)
    {
        PlanReading reading = PlanTexts.WithOrder(order, specs);
        Assert.NotNull(reading.Plan);
        Assert.Empty(reading.Warnings);
    }

    [Theory]
    [InlineData("R 1 R", 2, "spec 1 has 1 bracket ")]
    [InlineData("R 1 1 R", 2, "spec 1 has 1 bracket ")]
    [InlineData("R 1 R 1", 2, "does not begin and end with R|spec 1 has 1 bracket |on average 1 runs later")]
    [InlineData("R 1 R 1 R 1", 2, "does not begin and end with R|on average 1 runs later")]
    [InlineData("1 R R 1", 2, "does not begin and end with R|spec 1 has 0 brackets ")]
    [InlineData("R 1 2 R 1 2 R", 3, "spec 1 is driven on average 0.5 runs earlier|spec 2 is driven on average 0.5 runs later")]
    [InlineData("R 1 R 1 R", 3, "spec 2 is never driven")]
    [InlineData("1 1", 2, "spec R is never driven|does not begin and end with R")]
    public void A_weak_order_draws_a_warning_in_its_line(string order, int specs, string doubts)
    {
        PlanReading reading = PlanTexts.WithOrder(order, specs);
        Assert.NotNull(reading.Plan);
        Assert.Equal(doubts.Split('|').Length, reading.Warnings.Count);
        Assert.All(reading.Warnings.Zip(doubts.Split('|')), pair => Assert.Contains(pair.Second, pair.First.What));
        Assert.All(reading.Warnings, warning => Assert.Equal(("plan.toml", 2), (warning.File, warning.Line)));
    }

    [Fact]
    public void A_short_steady_segment_draws_a_warning_and_a_short_impact_does_not()
    {
        PlanReading reading = PlanTexts.WithRoute(
            "segment,kind,speed_kmh,length_m\nShort,smooth,72,99\nJoint,impact,72,20\nLong,smooth,72,100\n"
        );
        PlanProblem warning = Assert.Single(reading.Warnings);
        Assert.Equal(("route.csv", 2), (warning.File, warning.Line));
        Assert.Contains("'Short' lasts 5.0 s at 72 km/h", warning.What);
        Assert.Contains("100 m", warning.Allowed);
    }

    [Theory]
    [InlineData("", "no run says which one drives it", "cars")]
    [InlineData("car_order = [\"X\", \"Y\", \"X\", \"Y\", \"X\"]\n", "place R is only driven in X", "car_order")]
    public void Two_cars_that_keep_their_tyres_draw_a_warning(string order, string words, string word)
    {
        PlanReading reading = PlanTexts.WithPlan($"cars = [\"X\", \"Y\"]\n{order}");
        Assert.NotNull(reading.Plan);
        PlanProblem warning = Assert.Single(reading.Warnings);
        Assert.Contains(words, warning.What);
        Assert.Equal(word == "cars" ? 4 : 5, warning.Line);
        Assert.Empty(PlanTexts.WithPlan("cars = [\"X\", \"Y\"]\ncar_order = [\"X\", \"X\", \"Y\", \"Y\", \"X\"]\n").Warnings);
    }

    [Fact]
    public void The_weakness_is_told_before_the_first_run_and_in_the_report()
    {
        ADay day = new ADay().Ready();
        using Tui tui = new(day);
        Assert.Contains(
            "weak in the plan: spec 1 has 1 bracket",
            string.Join(' ', tui.Screen.Split((char[])['\n', ' '], StringSplitOptions.RemoveEmptyEntries))
        );
        day.Typed("run 417", "6060", "6565", "700");
        IEnumerable<string> lines = QuestionSection.Of(day.Study).Blocks.OfType<Points>().SelectMany(points => points.Items);
        Assert.Contains(
            lines,
            line => line.StartsWith("Weak in the plan, and driven all the same: spec 1 has 1 bracket", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_bracket_runs_from_one_run_of_the_reference_to_the_next()
    {
        Place[] order = [.. "R12R21R1".Select(letter => new Place(letter == 'R' ? 0 : letter - '0'))];
        Assert.Equal(
            (2, 2, 0),
            (
                OrderDoubts.BracketsOf(order, new Place(1)),
                OrderDoubts.BracketsOf(order, new Place(2)),
                OrderDoubts.BracketsOf(order, new Place(3))
            )
        );
    }
}
