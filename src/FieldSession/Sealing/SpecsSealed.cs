using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>
/// The custodian has drawn the codes of a fitting and keeps the key. The study learns the codes by place and the
/// commitment; it does not learn which spec is which. After a re-fit new codes are drawn, so that nobody carries a memory
/// over; only the keys tie the codes of two fittings together.
/// </summary>
/// <param name="Codes">The codes by place: the first is R, the reference.</param>
/// <param name="Commitment">SHA-256 of the key's canonical line; null: a paper key.</param>
public sealed record SpecsSealed(ImmutableList<SpecCode> Codes, string? Commitment) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => ObjectionNow(study) ?? ObjectionToCodes(study);

    /// <summary>What rules out sealing a fitting now, whatever its codes are; null: nothing.</summary>
    public static Objection? ObjectionNow(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? study switch
            {
                { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), SealingWords.SealNewFittingAtNextStop),
                { Fitting: { } fitting } when !study.DrivenCodes.Any(fitting.Codes.Contains) => new Objection(
                    SealingWords.SealedCodesAreNotDriven,
                    SealingWords.DriveSealedCodes
                ),
                { Fittings.Count: 0, Runs.Count: > 0 } => new Objection(
                    SealingWords.DrivenWithoutSealedCodes,
                    SealingWords.StartNewStudyToDriveBlind
                ),
                _ => null,
            };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { Fittings = study.Fittings.Add(new Fitting(Codes, Commitment, mark)), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string codes = string.Join(", ", Codes.OrderBy(c => c.Digits, StringComparer.Ordinal));
        return new Echo(
            after.Fittings.Count == 1 ? $"sealed: codes {codes}" : SealingWords.FittingSealed(after.Fittings.Count, codes, after.CodeAsked)
        );
    }

    private Objection? ObjectionToCodes(Study study)
    {
        if (Codes.Count != study.Plan!.SpecCount)
        {
            return new Objection(
                SealingWords.WrongNumberOfCodesDrawn(Codes.Count, study.Plan.SpecCount),
                SealingWords.DrawOneCodeForEachSpec
            );
        }

        SpecCode[] earlier = [.. study.Codes];
        return Codes.Any(code => earlier.Any(other => !CodeLot.Differ(code, other)))
            ? new Objection(SealingWords.CodeIsLikeEarlierOne, SealingWords.DrawCodesUnlikeEarlierOnes)
            : null;
    }
}
