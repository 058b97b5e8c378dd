using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// The key was opened after every prediction was locked. From here on who is who is in the journal; the study
/// itself learns only how the checks came out.
/// </summary>
/// <param name="Key">Which spec each code meant.</param>
/// <param name="Control">The control spec; null: not told.</param>
/// <param name="Nonce">The nonce of the first fitting's commitment; null: a paper key.</param>
/// <param name="CommitmentHolds">Whether the keys gave all published commitments; null: there was none.</param>
/// <param name="Marks">What was read on the tyres.</param>
/// <param name="Readers">The two people who read it.</param>
/// <param name="LaterNonces">The nonces of the later fittings, in order; null: there was one fitting.</param>
/// <param name="NotDriven">Codes of the key that were never driven, whose marks nobody has to read; null: none.</param>
/// <param name="EarlierMarks">Readings of the marks that did not agree and were made again before the key was opened; null: none.</param>
public sealed record KeyOpened(
    ImmutableList<CodedSpec> Key,
    string? Control,
    string? Nonce,
    bool? CommitmentHolds,
    ImmutableList<MarkRead> Marks,
    ImmutableList<string> Readers,
    ImmutableList<string?>? LaterNonces = null,
    ImmutableList<SpecCode>? NotDriven = null,
    ImmutableList<MarkReading>? EarlierMarks = null) : Entry
{
    /// <summary>How the marks compare with the key.</summary>
    public MarkCheck Check => MarkProof.Of(DrivenKey, Marks, Readers);

    /// <summary>Whether every code's mark was read by two different people and agrees with the key.</summary>
    public bool MarksAgree => Check.Holds;

    /// <summary>The key's lines for the codes that were driven.</summary>
    public IEnumerable<CodedSpec> DrivenKey => Key.Where(line => NotDriven?.Contains(line.Code) != true);

    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override bool MayBeKeptElsewhere => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        KeyGate.ObjectionIn(study) ?? KeyGate.ObjectionToMissing(study, Key.Select(line => line.Code));

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { Opening = new Opening(CommitmentHolds, Check, Readers, mark), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(RevealingWords.KeyIsOpen(
        CommitmentHolds switch { true => RevealingWords.CommitmentHolds, false => RevealingWords.CommitmentDoesNotHold, null => RevealingWords.ThereWasNoCommitment },
        MarksAgree ? RevealingWords.MarksAgree : string.Join("; ", WithheldWords.Of(Check, null))));
}
