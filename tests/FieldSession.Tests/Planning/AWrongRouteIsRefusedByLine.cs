using FieldSession.Store.Planning;

namespace FieldSession.Tests.Planning;

public class AWrongRouteIsRefusedByLine
{
    private const string Header = "segment,kind,speed_kmh,speed_mph,length_m,limit_kmh,nominal_db,class\n";

    [Theory]
    [InlineData("A,smooth,,,900,,,", "speed_kmh", "no speed")]
    [InlineData("A,smooth,80,50,900,,,", "speed_mph", "two values of speed")]
    [InlineData("A,smooth,0,,900,,,", "speed_kmh", "'0' can't be")]
    [InlineData("A,smooth,-80,,900,,,", "speed_kmh", "'-80' can't be")]
    [InlineData("A,smooth,301,,900,,,", "speed_kmh", "'301' can't be")]
    [InlineData("A,smooth,,187,900,,,", "speed_mph", "'187' can't be")]
    [InlineData("A,smooth,NaN,,900,,,", "speed_kmh", "'NaN' is not a number")]
    [InlineData("A,smooth,Infinity,,900,,,", "speed_kmh", "not a number")]
    [InlineData("A,smooth,80,,,,,", "length_m", "no length")]
    [InlineData("A,smooth,80,,1e9,,,", "length_m", "'1e9' is not a number")]
    [InlineData("A,smooth,80,,1000001,,,", "length_m", "can't be")]
    [InlineData("A,smooth,\"80,5\",,900,,,", "speed_kmh", "'80,5' is not a number")]
    [InlineData("A,smooth,80,,900,70,,", null, "above the posted limit")]
    [InlineData("A,smooth,,50,900,80,,", null, "above the posted limit")]
    [InlineData("A,smooth,80,,900,,150,", "nominal_db", "can't be")]
    [InlineData("A,smooth,80,,900,,,loud", "class", "'loud'")]
    [InlineData("A,impact,80,,900,,,steady", "class", "read as a peak")]
    [InlineData(",smooth,80,,900,,,", "segment", "no name")]
    [InlineData("A,,80,,900,,,", "kind", "no kind")]
    [InlineData("A\u001b[2J,smooth,80,,900,,,", "segment", "invisible")]
    [InlineData("first,smooth,80,,900,,,", "segment", "line 2 already")]
    [InlineData("A, and B,smooth,80,,900,,,", null, "9 fields")]
    [InlineData("\"A,smooth,80,,900,,,", null, "quotes")]
    public void A_wrong_row_is_refused_in_its_line(string row, string? column, string what)
    {
        PlanProblem problem = PlanTexts.OnlyProblem(PlanTexts.WithRoute($"{Header}First,smooth,80,,900,,,\n{row}\n"));
        Assert.Equal(("route.csv", 3, column), (problem.File, problem.Line, problem.Column));
        Assert.Contains(what, problem.What);
        Assert.DoesNotContain('\u001b', $"{problem}");
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("segment,kind,speed_kmh,length_m\n", "no segment")]
    [InlineData("segment,kind,speed_kmh,length_m\n,,,\n", "no segment")]
    [InlineData("segment,kind,length_m\nA,smooth,900\n", "no column speed_kmh or speed_mph")]
    [InlineData("segment,kind,speed_kmh\nA,smooth,80\n", "no column length_m or length_mi")]
    [InlineData("segment,kind,kind,speed_kmh,length_m\nA,smooth,smooth,80,900\n", "twice")]
    public void A_route_without_its_bones_is_refused(string route, string what) =>
        Assert.Contains(what, PlanTexts.OnlyProblem(PlanTexts.WithRoute(route)).What);

    [Fact]
    public void Columns_cut_by_semicolons_get_the_advice_to_take_commas()
    {
        PlanReading reading = PlanTexts.WithRoute("segment;kind;speed_kmh;length_m\nA;smooth;80;900\n");
        Assert.All(reading.Problems, problem => Assert.Contains("cut by commas", problem.Allowed));
        Assert.Equal(4, reading.Problems.Count);
    }

    [Fact]
    public void A_column_that_is_nearly_known_draws_a_warning()
    {
        PlanProblem warning = Assert.Single(
            PlanTexts.WithRoute("segment,kind,speed_kmh,length_m,limit_khm,colour\nA,smooth,80,900,70,red\n").Warnings
        );
        Assert.Contains("'limit_khm'", warning.What);
        Assert.Contains("'limit_kmh'", warning.Allowed);
    }
}
