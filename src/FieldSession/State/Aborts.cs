using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>Aborted runs: whose place is offered again, which were repeated, and which readings count.</summary>
public static class Aborts
{
    /// <summary>The aborted run whose place in the order is offered again now; null: none.</summary>
    public static Run? OfferedAgain(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.LastOfOrder() is { Aborted: not null } run && study.StepAt(run.Turn) is not null ? run : null;
    }

    /// <summary>Whether a later run took an aborted run's place and was driven to its end.</summary>
    public static bool IsRepeated(Study study, Run aborted)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(aborted);
        return After(study, aborted).Any(run => run.Turn == aborted.Turn && run is { IsOn: false, Aborted: null });
    }

    /// <summary>Whether the crew went on to the next place, so that the aborted run is all that its place has.</summary>
    public static bool IsLeftAsItIs(Study study, Run aborted)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(aborted);
        return After(study, aborted).Any(run => run.Turn > aborted.Turn) && !After(study, aborted).Any(run => run.Turn == aborted.Turn);
    }

    /// <summary>How many runs were aborted.</summary>
    public static int CountIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Runs.Count(run => run.Aborted is not null);
    }

    /// <summary>The aborted runs that do not count, by the plan's rule.</summary>
    public static ImmutableHashSet<int> NotCounted(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return [.. study.Runs.Where(run => run.Aborted is not null && IsOut(study, run)).Select(run => run.Number)];
    }

    private static bool IsOut(Study study, Run run) => study.Plan?.AbortRule switch
    {
        AbortRule.Both => false,
        AbortRule.Neither => true,
        _ => IsRepeated(study, run),
    };

    private static IEnumerable<Run> After(Study study, Run aborted) =>
        study.Runs.Skip(aborted.Number).Where(run => run.Started.Strand == aborted.Started.Strand);
}
