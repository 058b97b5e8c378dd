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
    /// <summary>The brackets, in driven order.</summary>
    public static IReadOnlyList<Bracket> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        List<Bracket> brackets = [];
        List<Run> open = [];
        foreach (Run run in study.Runs.Where(run => !run.IsOn))
        {
            bool isControl = run.Code == study.ReferenceCode;
            if (isControl && open.Count > 1)
            {
                brackets.Add(new Bracket(brackets.Count + 1, [.. open, run]));
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
