namespace FieldSession.State;

/// <summary>That the key was opened, and how its checks came out. Who is who does not stand here.</summary>
/// <param name="CommitmentHolds">Whether the key gave the published commitment; null: there was none.</param>
/// <param name="MarksAgree">Whether the marks that two people read on the tyres agree with the key.</param>
/// <param name="Readers">The people who read the marks.</param>
/// <param name="Mark">Where it stands in the journal.</param>
public sealed record Opening(bool? CommitmentHolds, bool MarksAgree, IReadOnlyList<string> Readers, LineMark Mark);
