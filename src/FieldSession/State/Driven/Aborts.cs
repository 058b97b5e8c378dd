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

    private static bool IsOut(Study study, Run run) =>
        study.Plan?.AbortRule switch
        {
            AbortRule.Both => false,
            AbortRule.Neither => true,
            _ => IsRepeated(study, run),
        };

    private static IEnumerable<Run> After(Study study, Run aborted) =>
        study.Runs.Skip(aborted.Number).Where(run => run.Started.Strand == aborted.Started.Strand);
}

/// <summary>A group of driven runs: the control, one or more candidates, the control.</summary>
/// <param name="Number">Its number among the brackets driven, from 1.</param>
/// <param name="Runs">Its runs in driven order, both runs of the control among them.</param>
public sealed record Bracket(int Number, IReadOnlyList<Run> Runs)
{
    /// <summary>The run of the control that opens it.</summary>
    public Run Opening => Runs[0];

    /// <summary>The run of the control that closes it.</summary>
    public Run Closing => Runs[^1];

    /// <summary>The runs of candidates in it.</summary>
    public IEnumerable<Run> Candidates => Runs.Skip(1).SkipLast(1);
}

/// <summary>Finds the brackets that were driven to their end.</summary>
public static class Brackets
{
    /// <summary>
    /// The brackets, in the order in which they were closed. Cars with laptops of their own each have brackets of their own, and so has
    /// each fitting of the tyres, from its own reference code to it.
    /// </summary>
    public static IReadOnlyList<Bracket> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        bool isShared = study.Runs.Select(run => run.Started.Strand).Distinct().Count() > 1;
        return
        [
            .. study
                .Runs.Where(run => !run.IsOn && (run.Aborted is null || Aborts.IsLeftAsItIs(study, run)))
                .GroupBy(run => (isShared ? run.Car?.ToUpperInvariant() ?? "" : "", Reference: study.ReferenceCodeOf(run.Code)))
                .SelectMany(runs => Driven(runs, runs.Key.Reference))
                .OrderBy(bracket => bracket[^1].Number)
                .Select((runs, place) => new Bracket(place + 1, runs)),
        ];
    }

    private static List<IReadOnlyList<Run>> Driven(IEnumerable<Run> runs, SpecCode? reference)
    {
        List<IReadOnlyList<Run>> brackets = [];
        List<Run> open = [];
        foreach (Run run in runs)
        {
            bool isControl = run.Code == reference;
            if (isControl && open.Count > 1)
            {
                brackets.Add([.. open, run]);
            }

            if (isControl)
            {
                open = [run];
            }
            else if (open.Count > 0)
            {
                open.Add(run);
            }
        }

        return brackets;
    }
}

/// <summary>Brackets driven again: which are driven to their end, and which runs then do not count.</summary>
public static class Reruns
{
    /// <summary>Whether the re-run is driven to its end.</summary>
    public static bool IsDriven(this Rerun rerun, Study study)
    {
        ArgumentNullException.ThrowIfNull(rerun);
        ArgumentNullException.ThrowIfNull(study);
        return RunsAgain(rerun, study)
            .Any(run => run is { IsOn: false, Aborted: null } && run.Turn == rerun.FirstTurn + rerun.Runs.Count - 1);
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
        IEnumerable<int> shared = Brackets
            .Of(study)
            .Where(bracket => bracket.Candidates.Any(run => !all.Contains(run.Number)))
            .SelectMany(bracket => new[] { bracket.Opening.Number, bracket.Closing.Number });
        return all.Except(shared);
    }
}
