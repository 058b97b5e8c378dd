using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Store.Exports;
using FieldSession.Tests.Readings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Exports;

public class ComparisonJsonTests
{
    [Fact]
    public void The_fixed_names_are_first_and_in_order()
    {
        using JsonDocument json = Json(CaseDay.Of(ReferenceCase.Open("22-quillmere")), "417");
        JsonElement pair = json.RootElement.GetProperty("comparisons")[0];
        JsonElement steady = pair.GetProperty("classes").GetProperty("steady");

        StartsWith(json.RootElement, "reference margin_db impact_margin_db readings comparisons");
        StartsWith(json.RootElement.GetProperty("readings"), "total spoilt missed by_cause");
        StartsWith(pair, "code reference classes with_spoilt");
        StartsWith(pair.GetProperty("classes"), "all steady impact");
        StartsWith(pair.GetProperty("with_spoilt"), "all steady impact");
        StartsWith(
            steady,
            "runs_counted segments_compared drift_in_model s_run nu_run s_e nu_e kbar sigma_run_effect floor_applied prior_used s_run_used "
                + "overall mdd80 more_runs_as_seen more_runs_cautious drift_per_hour interaction kinds segments verdict"
        );
        StartsWith(steady.GetProperty("overall"), "d se df lo95 hi95 p lo90 hi90 p_tost");
        StartsWith(steady.GetProperty("kinds").GetProperty("coarse"), "d se df lo95 hi95 p lo90 hi90 p_tost");
        StartsWith(steady.GetProperty("segments").GetProperty("S01"), "d se df lo95 hi95 p p_holm");
        StartsWith(steady.GetProperty("drift_per_hour"), "b se df");
        StartsWith(steady.GetProperty("interaction"), "F df1 df2 p");
    }

    [Fact]
    public void Numbers_are_unrounded()
    {
        MeasuredDay day = CaseDay.Of(ReferenceCase.Open("22-quillmere"));
        ClassComparison steady = BlindComparison.Of(day, new ComparisonTerms("417")).Comparisons[0].Classes.Steady!;

        using JsonDocument json = Json(day, "417");
        JsonElement written = json.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady");

        Assert.Equal(steady.Overall!.DifferenceDb, written.GetProperty("overall").GetProperty("d").GetDouble());
        Assert.Equal(steady.SRunDb, written.GetProperty("s_run").GetDouble());
        Assert.Equal(steady.Segments[0].PHolm, written.GetProperty("segments").GetProperty("S01").GetProperty("p_holm").GetDouble());
    }

    [Fact]
    public void Unknown_is_null_and_a_class_without_segments_is_null()
    {
        using JsonDocument json = Json(CsvText.Day(CsvText.Header, "1,417,A,smooth,58,60,", "2,862,A,smooth,59,61,t"), "417");
        JsonElement classes = json.RootElement.GetProperty("comparisons")[0].GetProperty("with_spoilt");

        Assert.Equal(JsonValueKind.Null, classes.GetProperty("impact").ValueKind);
        Assert.Equal(JsonValueKind.Null, classes.GetProperty("steady").GetProperty("overall").GetProperty("se").ValueKind);
        Assert.Equal(1, classes.GetProperty("steady").GetProperty("overall").GetProperty("d").GetDouble());
        Assert.Equal(1, json.RootElement.GetProperty("readings").GetProperty("by_cause").GetProperty("traffic").GetInt32());
    }

    [Fact]
    public void A_number_that_is_none_is_null_never_text()
    {
        Comparison comparison = BlindComparison.Of(CaseDay.Of(ReferenceCase.Open("22-quillmere")), new ComparisonTerms("417"));
        CodeComparison pair = comparison.Comparisons[0];
        ClassComparison broken = pair.Classes.Steady! with
        {
            Overall = new Estimate(double.NaN, double.PositiveInfinity, double.NegativeInfinity),
            Mdd80Db = double.NaN,
            NuE = double.NaN,
        };

        using JsonDocument json = JsonDocument.Parse(
            ComparisonJson.Of(comparison with { Comparisons = [pair with { Classes = pair.Classes with { Steady = broken } }] })
        );

        JsonElement steady = json.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("steady");
        Assert.All(["d", "se", "df"], name => Assert.Equal(JsonValueKind.Null, steady.GetProperty("overall").GetProperty(name).ValueKind));
        Assert.All(["mdd80", "nu_e"], name => Assert.Equal(JsonValueKind.Null, steady.GetProperty(name).ValueKind));
    }

    [Fact]
    public void What_is_beside_the_verdict_comes_last()
    {
        MeasuredDay day = CaseDay.Of(ReferenceCase.Open("22-quillmere"));
        ComparisonTerms terms = new("417");
        using JsonDocument json = JsonDocument.Parse(ComparisonJson.Of(BlindComparison.InFull(day, terms)));
        JsonElement classes = json.RootElement.GetProperty("comparisons")[0].GetProperty("classes");
        JsonElement steady = classes.GetProperty("steady");

        Assert.Equal(
            ["assumed", "order_test", "route_energy", "sensitivity"],
            steady.EnumerateObject().Select(property => property.Name).TakeLast(4)
        );
        StartsWith(steady.GetProperty("sensitivity"), "lowest_d highest_d verdict_changes lines");
        StartsWith(
            steady.GetProperty("sensitivity").GetProperty("lines")[1],
            "change name d se df lo95 hi95 p lo90 hi90 p_tost verdict has_verdict"
        );
        Assert.Equal(JsonValueKind.Null, classes.GetProperty("all").GetProperty("route_energy").ValueKind);
        JsonElement run = steady.GetProperty("route_energy").GetProperty("runs")[0];
        Assert.Equal(1, run.GetProperty("run").GetInt32());
        Assert.InRange(run.GetProperty("level").GetDouble(), 40, 90);
    }

    private static JsonDocument Json(MeasuredDay day, string reference) =>
        JsonDocument.Parse(ComparisonJson.Of(BlindComparison.Of(day, new ComparisonTerms(reference))));

    private static void StartsWith(JsonElement element, string names)
    {
        string[] expected = names.Split(' ');
        Assert.Equal(expected, element.EnumerateObject().Select(property => property.Name).Take(expected.Length));
    }
}
