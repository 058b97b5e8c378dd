using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>
/// A laptop that writes into the study, by its strand, and what it knew of the other laptops' lines. Runs, sessions and undo go by
/// hand: what one car does changes nothing in what the other one is doing.
/// </summary>
/// <param name="Strand">Its strand; null: the study's first one.</param>
public sealed record Hand(string? Strand)
{
    /// <summary>The laptop that made the study.</summary>
    public static Hand First { get; } = new((string?)null);

    /// <summary>Of each other strand ("": the first) the last line it knew when it wrote its own first one.</summary>
    public ImmutableDictionary<string, int> Began { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Of each other strand the last line it knows now.</summary>
    public ImmutableDictionary<string, int> Known { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Whether it has written a line of its own or joined with one.</summary>
    public bool HasBegun { get; init; }

    /// <summary>When the last fact of the day happened that it wrote; null: none yet.</summary>
    public DateTimeOffset? LastOfDay { get; init; }

    /// <summary>What it can take back.</summary>
    public ImmutableList<Undoable> Undoables { get; init; } = [];

    /// <summary>Whether a line is its own.</summary>
    public bool Wrote(LineMark mark) => mark.Strand == Strand;

    /// <summary>Whether it wrote a line or knows it.</summary>
    public bool Knows(LineMark mark) => Wrote(mark) || IsIn(Known, mark);

    /// <summary>Whether it wrote a line or took it over when it began.</summary>
    public bool TookOver(LineMark mark) => Wrote(mark) || IsIn(Began, mark);

    private static bool IsIn(ImmutableDictionary<string, int> lines, LineMark mark) =>
        lines.TryGetValue(mark.Strand ?? "", out int last) && mark.Number <= last;
}
