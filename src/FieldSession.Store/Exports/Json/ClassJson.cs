using System.Text.Json;
using FieldSession.Comparing;

namespace FieldSession.Store.Exports;

/// <summary>One class of one pair as JSON: the middle of <see cref="ComparisonJson"/>.</summary>
internal static class ClassJson
{
    /// <summary>Writes the fields into an open object.</summary>
    public static void Write(Utf8JsonWriter json, ClassComparison one)
    {
        json.WriteNumber("runs_counted", one.RunsCounted);
        json.WriteNumber("segments_compared", one.SegmentsCompared);
        json.WriteBoolean("drift_in_model", one.DriftInModel);
        Scatter(json, one);
        json.Part("overall", one.Overall, overall => Estimate(json, overall));
        json.Figure("mdd80", one.Mdd80Db);
        json.Count("more_runs_as_seen", one.MoreRunsAsSeen);
        json.Count("more_runs_cautious", one.MoreRunsCautious);
        json.Part("drift_per_hour", one.Drift, drift => Drift(json, drift));
        json.Part("interaction", one.Interaction, interaction => Interaction(json, interaction));
        Kinds(json, one.Kinds);
        Segments(json, one.Segments);
        json.WriteString("verdict", one.Verdict);
        json.Figure("order_lever_hours", one.OrderLeverHours);
        json.Part("prior", one.Prior, prior => Prior(json, prior));
        NotCounted(json, one);
        json.Texts("remarks", one.Remarks);
        ClassExtrasJson.Write(json, one);
    }

    /// <summary>Writes a difference and its errors into an open object.</summary>
    public static void Estimate(Utf8JsonWriter json, Estimate estimate)
    {
        OneByOne(json, estimate);
        json.Figure("lo90", estimate.Lo90Db);
        json.Figure("hi90", estimate.Hi90Db);
        json.Figure("p_tost", estimate.PTost);
    }

    private static void OneByOne(Utf8JsonWriter json, Estimate estimate)
    {
        json.Figure("d", estimate.DifferenceDb);
        json.Figure("se", estimate.StandardErrorDb);
        json.Figure("df", estimate.Df);
        json.Figure("lo95", estimate.Lo95Db);
        json.Figure("hi95", estimate.Hi95Db);
        json.Figure("p", estimate.P);
    }

    private static void Scatter(Utf8JsonWriter json, ClassComparison one)
    {
        json.Figure("s_run", one.SRunDb);
        json.Figure("nu_run", one.NuRun);
        json.Figure("s_e", one.SEDb);
        json.Figure("nu_e", one.NuE);
        json.Figure("kbar", one.Kbar);
        json.Figure("sigma_run_effect", one.SigmaRunEffectDb);
        json.WriteBoolean("floor_applied", one.FloorApplied);
        json.WriteBoolean("prior_used", one.PriorUsed);
        json.Figure("s_run_used", one.SRunUsedDb);
    }

    private static void Drift(Utf8JsonWriter json, DriftPerHour drift)
    {
        json.Figure("b", drift.BDbPerHour);
        json.Figure("se", drift.StandardErrorDbPerHour);
        json.Figure("df", drift.Df);
    }

    private static void Interaction(Utf8JsonWriter json, Interaction interaction)
    {
        json.Figure("F", interaction.F);
        json.Figure("df1", interaction.Df1);
        json.Figure("df2", interaction.Df2);
        json.Figure("p", interaction.P);
    }

    private static void Kinds(Utf8JsonWriter json, IReadOnlyList<KindEstimate> kinds)
    {
        json.WriteStartObject("kinds");
        foreach (KindEstimate kind in kinds)
        {
            json.WriteStartObject(kind.Kind);
            Estimate(json, kind.Estimate);
            json.WriteNumber("segments", kind.Segments);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Segments(Utf8JsonWriter json, IReadOnlyList<SegmentEstimate> segments)
    {
        json.WriteStartObject("segments");
        foreach (SegmentEstimate segment in segments)
        {
            json.WriteStartObject(segment.Segment);
            OneByOne(json, segment.Estimate);
            json.Figure("p_holm", segment.PHolm);
            json.WriteString("kind", segment.Kind);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Prior(Utf8JsonWriter json, ArchivePrior prior)
    {
        json.Figure("s0_squared", prior.S0SquaredDb2);
        json.Figure("nu_archive", prior.NuArchive);
        json.Figure("nu0", prior.Nu0);
        json.WriteNumber("days", prior.Days);
    }

    private static void NotCounted(Utf8JsonWriter json, ClassComparison one)
    {
        json.WriteStartArray("runs_not_counted");
        foreach (int run in one.RunsNotCounted)
        {
            json.WriteNumberValue(run);
        }

        json.WriteEndArray();
        json.Texts("segments_not_compared", one.SegmentsNotCompared);
    }
}
