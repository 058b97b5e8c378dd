using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>Which runs of a bracket count when it was driven twice; fixed in the plan, so that no result can decide it.</summary>
public enum RerunRule
{
    /// <summary>The re-run counts, once it is driven to its end.</summary>
    Rerun,

    /// <summary>The first drive counts.</summary>
    First,

    /// <summary>Both count.</summary>
    Both,
}

/// <summary>A whole bracket that is driven again.</summary>
/// <param name="Bracket">Number of the bracket.</param>
/// <param name="Runs">Numbers of its runs.</param>
/// <param name="FirstRun">Number of the first run of the re-run.</param>
/// <param name="Reason">Why, in the crew's words.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Rerun(int Bracket, ImmutableList<int> Runs, int FirstRun, string Reason, LineMark Mark)
{
    /// <summary>Turn of its first run among those to be driven, from 0.</summary>
    public required int FirstTurn { get; init; }

    /// <summary>Number of the last run of the re-run, where none of them is aborted.</summary>
    public int LastRun => FirstRun + Runs.Count - 1;

    /// <summary>Whether the re-run is driven to its end.</summary>
    public bool IsDriven(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return RunsAgain(study).Any(run => run is { IsOn: false, Aborted: null } && run.Turn == FirstTurn + Runs.Count - 1);
    }

    private IEnumerable<Run> RunsAgain(Study study) =>
        study.Runs.Skip(FirstRun - 1).Where(run => run.Turn >= FirstTurn && run.Turn < FirstTurn + Runs.Count);

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
            RerunRule.First => [.. driven.SelectMany(rerun => rerun.RunsAgain(study).Select(run => run.Number))],
            _ => [],
        };
        IEnumerable<int> shared = Brackets.Of(study).Where(bracket => bracket.Candidates.Any(run => !all.Contains(run.Number)))
            .SelectMany(bracket => new[] { bracket.Opening.Number, bracket.Closing.Number });
        return all.Except(shared);
    }
}
