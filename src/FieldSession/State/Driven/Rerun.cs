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
}
