using FieldSession.Comparing;

namespace FieldSession.Tests.References;

/// <summary>Puts the numbers of a comparison under the names that the reference cases use.</summary>
internal static class FoundNumbers
{
    public static Dictionary<string, object?> Of(ClassComparisons classes)
    {
        Dictionary<string, object?> found = [];
        foreach (
            (string name, ClassComparison? comparison) in new[]
            {
                ("all", classes.All),
                ("steady", classes.Steady),
                ("impact", classes.Impact),
            }
        )
        {
            if (comparison is not null)
            {
                Add(found, name, comparison);
            }
        }

        return found;
    }

    public static void Add(Dictionary<string, object?> found, string name, ClassComparison c)
    {
        found[$"{name}.runs_counted"] = c.RunsCounted;
        found[$"{name}.segments_compared"] = c.SegmentsCompared;
        found[$"{name}.drift_in_model"] = c.DriftInModel ? 1 : 0;
        found[$"{name}.s_run"] = c.SRunDb;
        found[$"{name}.nu_run"] = c.NuRun;
        found[$"{name}.s_e"] = c.SEDb;
        found[$"{name}.nu_e"] = c.NuE;
        found[$"{name}.kbar"] = c.Kbar;
        found[$"{name}.sigma_run_effect"] = c.SigmaRunEffectDb;
        found[$"{name}.floor_applied"] = c.FloorApplied ? 1 : 0;
        found[$"{name}.prior_used"] = c.PriorUsed ? 1 : 0;
        found[$"{name}.s_run_used"] = c.SRunUsedDb;
        found[$"{name}.mdd80"] = c.Mdd80Db;
        found[$"{name}.more_runs_per_code_as_seen"] = c.MoreRunsAsSeen ?? -1;
        found[$"{name}.more_runs_per_code_cautious"] = c.MoreRunsCautious ?? -1;
        found[$"{name}.drift_per_hour.b"] = c.Drift?.BDbPerHour;
        found[$"{name}.drift_per_hour.se"] = c.Drift?.StandardErrorDbPerHour;
        found[$"{name}.drift_per_hour.df"] = c.Drift?.Df;
        found[$"{name}.interaction.F"] = c.Interaction?.F;
        found[$"{name}.interaction.df1"] = c.Interaction?.Df1;
        found[$"{name}.interaction.df2"] = c.Interaction?.Df2;
        found[$"{name}.interaction.p"] = c.Interaction?.P;
        Add(found, $"{name}.overall", c.Overall);
        found[$"{name}.overall.KR.se"] = c.Overall?.StandardErrorDb;
        found[$"{name}.overall.KR.df"] = c.Overall?.Df;
        foreach (KindEstimate kind in c.Kinds)
        {
            Add(found, $"{name}.kind.{kind.Kind}", kind.Estimate);
        }

        foreach (SegmentEstimate segment in c.Segments)
        {
            Add(found, $"seg.{segment.Segment}", segment.Estimate);
            found[$"seg.{segment.Segment}.p_holm"] = segment.PHolm;
            found[$"seg.{segment.Segment}.KR.se"] = segment.Estimate.StandardErrorDb;
            found[$"seg.{segment.Segment}.KR.df"] = segment.Estimate.Df;
        }
    }

    public static void Add(Dictionary<string, object?> found, string name, Estimate? estimate)
    {
        found[$"{name}.d"] = estimate?.DifferenceDb;
        found[$"{name}.se"] = estimate?.StandardErrorDb;
        found[$"{name}.df"] = estimate?.Df;
        found[$"{name}.lo95"] = estimate?.Lo95Db;
        found[$"{name}.hi95"] = estimate?.Hi95Db;
        found[$"{name}.p"] = estimate?.P;
        found[$"{name}.lo90"] = estimate?.Lo90Db;
        found[$"{name}.hi90"] = estimate?.Hi90Db;
        found[$"{name}.p_tost"] = estimate?.PTost;
    }
}
