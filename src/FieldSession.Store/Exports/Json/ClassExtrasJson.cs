using System.Text.Json;
using FieldSession.Comparing;

namespace FieldSession.Store.Exports;

/// <summary>What is beside the verdict of a class: the end of a class object in <see cref="ComparisonJson"/>.</summary>
internal static class ClassExtrasJson
{
    /// <summary>Writes the fields into an open object.</summary>
    public static void Write(Utf8JsonWriter json, ClassComparison one)
    {
        json.Part("more_runs", one.MoreRuns, more => MoreRuns(json, more));
        json.Figure("verdict_adjusted_p", one.Basis is { Comparisons: > 1 } basis ? basis.PDifference : null);
        json.Part("verdict_basis", one.Basis, found => Basis(json, found));
        json.Part("could_show", one.CouldShow, shown => CouldShow(json, shown));
        json.Part("assumed", one.Assumed, assumed => ClassJson.Estimate(json, assumed));
        json.Part("order_test", one.OrderTest, test => OrderTest(json, test));
        json.Part("route_energy", one.RouteEnergy, energy => Energy(json, energy));
        json.Part("sensitivity", one.Sensitivity, sensitivity => Sensitivity(json, sensitivity));
    }

    private static void OrderTest(Utf8JsonWriter json, OrderTest test)
    {
        json.Figure("p", test.P);
        json.WriteNumber("orders", test.Orders);
    }

    private static void Basis(Utf8JsonWriter json, WordBasis basis)
    {
        json.WriteString("rule", FormatWords.Rule(basis.Rule));
        json.WriteNumber("comparisons", basis.Comparisons);
        json.Figure("p", basis.PDifference);
        json.Figure("p_tost", basis.PEquivalence);
        json.Figure("alpha", basis.Asked.Difference);
        json.Figure("alpha_tost", basis.Asked.Equivalence);
        json.Figure("lo", basis.LowDb);
        json.Figure("hi", basis.HighDb);
        json.Figure("lo_tost", basis.LowEquivalenceDb);
        json.Figure("hi_tost", basis.HighEquivalenceDb);
        json.WriteNumber("looks", basis.Lengthened);
    }

    private static void CouldShow(Utf8JsonWriter json, CouldShow shown)
    {
        json.Figure("d", shown.Db);
        json.Figure("lo95", shown.LowDb);
        json.Figure("hi95", shown.HighDb);
        json.Figure("df", shown.Df);
    }

    private static void MoreRuns(Utf8JsonWriter json, MoreRuns more)
    {
        json.Count("as_seen", more.AsSeen);
        json.Count("cautious", more.Cautious);
        json.Figure("chance", more.Chance);
    }

    private static void Energy(Utf8JsonWriter json, RouteEnergy energy)
    {
        ClassJson.Estimate(json, energy.Overall);
        json.WriteBoolean("by_time", energy.ByTime);
        json.Parts(
            "runs",
            energy.Runs,
            run =>
            {
                json.WriteNumber("run", run.Run);
                json.WriteString("code", run.Code);
                json.Figure("level", run.LevelDb);
            }
        );
    }

    private static void Sensitivity(Utf8JsonWriter json, Sensitivity sensitivity)
    {
        json.Figure("lowest_d", sensitivity.LowestDb);
        json.Figure("highest_d", sensitivity.HighestDb);
        json.WriteBoolean("verdict_changes", sensitivity.VerdictChanges);
        json.Parts("lines", sensitivity.Lines, line => Line(json, line));
        json.Part("least", sensitivity.Least, least => Least(json, least));
    }

    private static void Least(Utf8JsonWriter json, LeastChange least)
    {
        json.WriteString("size", Word(least.Size));
        json.Parts(
            "places",
            least.Places,
            place =>
            {
                if (place.Run is { } run)
                {
                    json.WriteNumber("run", run);
                }
                else
                {
                    json.WriteNull("run");
                }

                json.WriteString("segment", place.Segment);
                json.WriteBoolean("put_back", place.PutBack);
            }
        );
        json.WriteString("verdict", least.Verdict);
        json.Figure("share_by_chance", least.ShareByChance);
    }

    private static string Word(ChangeSize size) =>
        size switch
        {
            ChangeSize.Readings => FormatWords.Readings,
            ChangeSize.Run => FormatWords.Run,
            _ => FormatWords.Segment,
        };

    private static void Line(Utf8JsonWriter json, SensitivityLine line)
    {
        json.WriteString("change", Word(line.Change));
        json.WriteString("name", line.Name);
        ClassJson.Estimate(json, line.Overall);
        json.WriteString("verdict", line.Verdict);
        json.WriteBoolean("has_verdict", line.HasVerdict);
    }

    private static string Word(SensitivityChange change) =>
        change switch
        {
            SensitivityChange.SpoiltPutBack => FormatWords.SpoiltPutBack,
            SensitivityChange.RunLeftOut => FormatWords.RunLeftOut,
            SensitivityChange.SegmentLeftOut => FormatWords.SegmentLeftOut,
            _ => FormatWords.DriftSwitched,
        };
}
