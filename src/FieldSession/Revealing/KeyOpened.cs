using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// The key was opened after every prediction was locked. From here on who is who stands in the journal; the study
/// itself learns only how the checks came out.
/// </summary>
/// <param name="Key">Which spec each code stood for.</param>
/// <param name="Control">The control spec; null: not told.</param>
/// <param name="Nonce">The nonce of the first fitting's commitment; null: a paper key.</param>
/// <param name="CommitmentHolds">Whether the keys gave all published commitments; null: there was none.</param>
/// <param name="Marks">What was read on the tyres.</param>
/// <param name="Readers">The two people who read it.</param>
/// <param name="LaterNonces">The nonces of the later fittings, in order; null: there was one fitting.</param>
public sealed record KeyOpened(
    ImmutableList<CodedSpec> Key,
    string? Control,
    string? Nonce,
    bool? CommitmentHolds,
    ImmutableList<MarkRead> Marks,
    ImmutableList<string> Readers,
    ImmutableList<string?>? LaterNonces = null) : Entry
{
    /// <summary>Whether every code's mark was read by two different people and agrees with the key.</summary>
    public bool MarksAgree =>
        Readers.Select(r => r.Trim().ToUpperInvariant()).Distinct().Count() >= 2 &&
        Key.All(k => Marks.Any(m => m.Code == k.Code) &&
            Marks.Where(m => m.Code == k.Code).All(m => Study.SamePerson(m.Spec, k.Spec)));

    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        KeyGate.ObjectionIn(study) ?? KeyGate.ObjectionToMissing(study, Key.Select(line => line.Code));

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { Opening = new Opening(CommitmentHolds, MarksAgree, Readers, mark), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(
        RevealingWords.KeyIsOpen(CommitmentHolds == false ? RevealingWords.CommitmentDoesNotHold : CommitmentHolds is null ? RevealingWords.ThereWasNoCommitment : RevealingWords.CommitmentHolds, MarksAgree ? "agree" : RevealingWords.MarksDoNotAgree));
}
