namespace FieldSession.State;

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
    /// <summary>The brackets, in the order in which they were closed. Cars with laptops of their own each have brackets of their own.</summary>
    public static IReadOnlyList<Bracket> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        bool isShared = study.Runs.Select(run => run.Started.Strand).Distinct().Count() > 1;
        return
        [
            .. study.Runs.Where(run => !run.IsOn && (run.Aborted is null || Aborts.IsLeftAsItIs(study, run)))
                .GroupBy(run => isShared ? run.Car?.ToUpperInvariant() ?? "" : "")
                .SelectMany(runs => Driven(runs, study.ReferenceCode))
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
