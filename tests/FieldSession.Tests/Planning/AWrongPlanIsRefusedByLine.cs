using FieldSession.Store.Planning;

namespace FieldSession.Tests.Planning;

public class AWrongPlanIsRefusedByLine
{
    [Theory]
    [InlineData("margin_db = \"1.0\"", "'margin_db' is text")]
    [InlineData("margin_db = 0", "'margin_db' is 0")]
    [InlineData("impact_margin_db = -2.0", "'impact_margin_db' is -2")]
    [InlineData("margin_db = nan", "'margin_db' is NaN")]
    [InlineData("margin_db = inf", "'margin_db' is")]
    [InlineData("units = \"stones\"", "'stones'")]
    [InlineData("crew = \"Ro\"", "'crew' is text")]
    [InlineData("crew = [\"Ro\", \"ro\"]", "'ro' twice")]
    [InlineData("crew = [{seat = \"driver\"}]", "no name")]
    [InlineData("crew = [\"Ana, Bo\"]", "the one name 'Ana, Bo'")]
    [InlineData("crew = [1]", "a number")]
    [InlineData("custodian = \"\"", "empty")]
    [InlineData("question = \"a\\u001b[31mb\"", "invisible")]
    [InlineData("phrases = [\"1\",\"2\",\"3\",\"4\",\"5\",\"6\",\"7\",\"8\",\"9\",\"10\"]", "list of 10")]
    [InlineData("attributes = [\"roar\", \"Roar\"]", "twice")]
    [InlineData("covered_until_evening = \"yes\"", "is text")]
    [InlineData("limits.wind_block_m_s = 900", "is 900")]
    [InlineData("set_life_km = 0", "is 0")]
    [InlineData("margn_db = 1.0", "'margn_db' is not a word")]
    [InlineData("limits.wind_warn_ms = 5", "not a word")]
    [InlineData("crew = [{name = \"Ro\", saet = \"driver\"}]", "'crew.saet'")]
    [InlineData("specs = 3", "already defined")]
    [InlineData("question = \"open", "")]
    [InlineData("question = \"open\\", "ends inside a text")]
    public void A_wrong_word_is_refused_in_its_line(string line, string what)
    {
        PlanReading reading = PlanTexts.WithPlan(line);
        Assert.Null(reading.Plan);
        Assert.All(reading.Problems, problem => Assert.Equal(("plan.toml", 4), (problem.File, problem.Line)));
        Assert.Contains(what, reading.Problems[0].What);
        Assert.All(reading.Problems, problem => Assert.NotEmpty(problem.Allowed));
    }

    [Fact]
    public void A_custodian_who_rides_is_refused() =>
        Assert.Contains(
            "custodian 'ro' is in the crew",
            PlanTexts.OnlyProblem(PlanTexts.WithPlan("crew = [\"Ro\"]\ncustodian = \"ro\"")).What
        );

    [Fact]
    public void The_sentence_names_file_line_column_and_what_is_allowed() =>
        Assert.Equal(
            "plan.toml, line 4, column 13: 'margin_db' is -1; 'margin_db' is a number above 0, at most 20, with a point, without quotes",
            $"{PlanTexts.OnlyProblem(PlanTexts.WithPlan("margin_db = -1"))}"
        );

    [Fact]
    public void A_slip_of_the_finger_gets_the_word_that_was_meant() =>
        Assert.Equal("did you mean 'impact_margin_db'?", PlanTexts.OnlyProblem(PlanTexts.WithPlan("imapct_margin_db = 2")).Allowed);

    [Fact]
    public void A_word_that_nobody_knows_is_passed_over_with_a_warning()
    {
        PlanReading reading = PlanTexts.WithPlan("weather_station = \"hill\"\n[lodging]\nbeds = 3\n[[limits]]\n");
        Assert.NotNull(reading.Plan);
        Assert.Equal([4, 6, 7], reading.Warnings.Select(warning => warning.Line!.Value));
        Assert.Contains("'weather_station'", reading.Warnings[0].What);
    }

    [Theory]
    [InlineData("order = \"R 1 R\"", "'specs' is missing")]
    [InlineData("specs = 2", "'order' is missing")]
    [InlineData("specs = 1\norder = \"R 1 R\"", "'specs' is 1")]
    [InlineData("specs = 10\norder = \"R 1 R\"", "'specs' is 10")]
    [InlineData("specs = 2.5\norder = \"R 1 R\"", "not a whole number")]
    [InlineData("specs = [\"A\", \"B\"]\norder = \"R 1 R\"", "'specs' is a list")]
    [InlineData("specs = 2\norder = \"R 2 R\"", "unknown place '2'")]
    [InlineData("specs = 2\norder = \"R 0 R\"", "unknown place '0'")]
    [InlineData("specs = 2\norder = \"A B A\"", "unknown place 'A'")]
    [InlineData("specs = 2\norder = \" \"", "empty")]
    [InlineData("specs = 2\norder = \",\"", "names 0 runs")]
    [InlineData("specs = 2\norder = \"R 1 R\"\nstudy = \"a|b\"", "'|'")]
    public void A_plan_without_its_bones_is_refused(string plan, string what) =>
        Assert.Contains(what, PlanTexts.OnlyProblem(PlanTexts.WithPlanOf(plan)).What);

    [Fact]
    public void All_problems_of_both_files_are_told_at_once_up_to_twenty()
    {
        PlanReading reading = PlanFolder.Parse(
            "specs = 1\norder = \"R 1 R\"\nmargin_db = 0\n",
            "segment,kind,speed_kmh,length_m\nA,smooth,,900\nB,smooth,80,-1\n",
            "folder"
        );
        Assert.Equal(["plan.toml", "plan.toml", "route.csv", "route.csv"], reading.Problems.Select(problem => problem.File).Order());
        string hopeless = "segment,kind,speed_kmh,length_m\n" + string.Concat(Enumerable.Repeat("A,smooth,x,y\n", 100));
        Assert.Equal(20, PlanTexts.WithRoute(hopeless).Problems.Count);
    }

    [Fact]
    public void A_plan_nested_without_end_is_refused_not_crashed() =>
        Assert.Equal(
            "lists or tables are nested too deep",
            PlanTexts.OnlyProblem(PlanTexts.WithPlan("a = " + new string('[', 50_000))).What
        );
}
