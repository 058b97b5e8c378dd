namespace FieldSession.State;

/// <summary>Two laptops, unaware of each other, stored things that contradict each other.</summary>
public enum ConflictKind
{
    /// <summary>Both started the same run of the order.</summary>
    SameRun,

    /// <summary>Both typed a reading of one segment of one run.</summary>
    SameReading,

    /// <summary>Both changed the same part of the plan.</summary>
    SamePlanPart,

    /// <summary>Both locked a prediction of one person.</summary>
    SamePrediction,

    /// <summary>One froze the data, the other went on writing data.</summary>
    AfterFreeze,

    /// <summary>Both shifted readings of one run.</summary>
    SameShift,
}

/// <summary>Which side of a conflict counts.</summary>
public enum ConflictSide
{
    /// <summary>The one told first.</summary>
    First,

    /// <summary>The other one.</summary>
    Second,

    /// <summary>Both.</summary>
    Both,
}

/// <summary>A conflict between two lines of different strands. Both stay in the journal, whatever is decided.</summary>
/// <param name="Kind">What kind it is.</param>
/// <param name="First">The line told first.</param>
/// <param name="Second">The other line.</param>
/// <param name="Words">What happened, in words; no level is in it.</param>
public sealed record Conflict(ConflictKind Kind, LineMark First, LineMark Second, string Words)
{
    /// <summary>The decision; null: nobody has settled it.</summary>
    public Settlement? Settlement { get; init; }

    /// <summary>Whether it is a conflict about these two lines.</summary>
    public bool IsAbout(ConflictKind kind, LineName first, LineName second) => Kind == kind && First.Name == first && Second.Name == second;

    /// <summary>The line that was decided not to count; null: both count, or it is not settled.</summary>
    public LineMark? LeftOut =>
        Settlement?.Counts switch
        {
            ConflictSide.First => Second,
            ConflictSide.Second => First,
            _ => null,
        };
}

/// <summary>How a conflict was settled.</summary>
/// <param name="Counts">Which side counts.</param>
/// <param name="Reason">Why, in the crew's words.</param>
/// <param name="Mark">Where the decision is in the journal.</param>
public sealed record Settlement(ConflictSide Counts, string Reason, LineMark Mark);
