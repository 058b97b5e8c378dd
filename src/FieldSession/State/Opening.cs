using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>That the key was opened, and how its checks came out. Who is who is not here.</summary>
/// <param name="CommitmentHolds">Whether the key gave the published commitment; null: there was none.</param>
/// <param name="Marks">How the marks that were read last compare with the key.</param>
/// <param name="Readers">The people who read them.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Opening(bool? CommitmentHolds, MarkCheck Marks, IReadOnlyList<string> Readers, LineMark Mark)
{
    /// <summary>Where it is in the journal that the marks were read again, in order.</summary>
    public ImmutableList<LineMark> ReadAgain { get; init; } = [];

    /// <summary>Whether the marks that two people read on the tyres agree with the key.</summary>
    public bool MarksAgree => Marks.Holds;
}
