using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>Brackets driven again: which are driven to their end, and which runs then do not count.</summary>
public static class Reruns
{
    /// <summary>Whether the re-run is driven to its end.</summary>
    public static bool IsDriven(this Rerun rerun, Study study)
    {
        ArgumentNullException.ThrowIfNull(rerun);
        ArgumentNullException.ThrowIfNull(study);
        return RunsAgain(rerun, study).Any(run => run is { IsOn: false, Aborted: null } && run.Turn == rerun.FirstTurn + rerun.Runs.Count - 1);
    }

    private static IEnumerable<Run> RunsAgain(Rerun rerun, Study study) =>
        study.Runs.Skip(rerun.FirstRun - 1).Where(run => run.Turn >= rerun.FirstTurn && run.Turn < rerun.FirstTurn + rerun.Runs.Count);

    /// <summary>
    /// The runs that do not count, by the plan's rule. A run of the control that is also in a neighbouring bracket
    /// goes on counting.
    /// </summary>
    public static ImmutableHashSet<int> NotCounted(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        RerunRule rule = study.Plan?.RerunRule ?? RerunRule.Rerun;
        Rerun[] driven = [.. study.Reruns.Where(rerun => rerun.IsDriven(study))];
        ImmutableHashSet<int> all = rule switch
        {
            RerunRule.Rerun => [.. driven.SelectMany(rerun => rerun.Runs)],
            RerunRule.First => [.. driven.SelectMany(rerun => RunsAgain(rerun, study).Select(run => run.Number))],
            _ => [],
        };
        IEnumerable<int> shared = Brackets.Of(study).Where(bracket => bracket.Candidates.Any(run => !all.Contains(run.Number)))
            .SelectMany(bracket => new[] { bracket.Opening.Number, bracket.Closing.Number });
        return all.Except(shared);
    }
}
