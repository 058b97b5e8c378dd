using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Predicting;
using FieldSession.Sealing;
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
    ImmutableList<MarkReading>? EarlierMarks = null
) : Entry
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
    public override Echo EchoIn(Study before, Study after) =>
        new(
            RevealingWords.KeyIsOpen(
                CommitmentHolds switch
                {
                    true => RevealingWords.CommitmentHolds,
                    false => RevealingWords.CommitmentDoesNotHold,
                    null => RevealingWords.ThereWasNoCommitment,
                },
                MarksAgree ? RevealingWords.MarksAgree : string.Join("; ", WithheldWords.Of(Check, null))
            )
        );
}

/// <summary>Whether an opened key gives the commitments that were published at sealing, computed again from what was opened.</summary>
public static class CommitmentProof
{
    /// <summary>True: every commitment is given; false: one is not, or a key is missing for it; null: none was published.</summary>
    /// <remarks>A fitting none of whose codes was driven needs no key.</remarks>
    public static bool? Of(Study study, KeyOpened opened)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(opened);
        HashSet<SpecCode> driven = [.. study.DrivenCodes];
        bool[] given =
        [
            .. study
                .Fittings.Index()
                .Where(one => one.Item.Commitment is not null && one.Item.Codes.Any(driven.Contains))
                .Select(one => Gives(study, one.Item, opened, NonceOf(opened, one.Index))),
        ];
        return given.Length == 0 ? null : given.All(gives => gives);
    }

    private static string? NonceOf(KeyOpened opened, int fitting) =>
        fitting == 0 ? opened.Nonce : opened.LaterNonces?.ElementAtOrDefault(fitting - 1);

    private static bool Gives(Study study, Fitting fitting, KeyOpened opened, string? nonce)
    {
        ImmutableList<CodedSpec> lines = [.. opened.Key.Where(line => fitting.Codes.Contains(line.Code))];
        if (nonce is null || lines.Count != fitting.Codes.Count)
        {
            return false;
        }

        try
        {
            KeySheet sheet = new(
                study.Plan!.StudyName,
                lines.Select(line => new KeyLine(line.Code, line.Spec, line.Mark)),
                lines[0].Spec,
                nonce
            );
            return Commitment.Of(sheet) == fitting.Commitment;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}

/// <summary>When the key may be opened: once, and only after every member of the crew has locked a prediction.</summary>
public static class KeyGate
{
    /// <summary>What rules out opening the key now; null: nothing.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] open = [.. study.StillToPredict.Select(m => m.Name)];
        return EveningGate.ObjectionIn(study, new Objection(RevealingWords.KeyIsOpenAlready, RevealingWords.AskForReport))
            ?? study switch
            {
                { IsAnythingDriven: false } => new Objection(JournalWords.NothingHasBeenDriven, RevealingWords.DriveReviewAndPredictFirst),
                _ when open.Length > 0 => new Objection(
                    RevealingWords.PredictionsAreStillOpen(string.Join(", ", open)),
                    RevealingWords.LockPredictionsFirst
                ),
                _ => null,
            };
    }

    /// <summary>
    /// What rules out opening with keys that name some codes: a code that was driven and that none of them names; null: nothing.
    /// </summary>
    public static Objection? ObjectionToMissing(Study study, IEnumerable<SpecCode> named)
    {
        ArgumentNullException.ThrowIfNull(study);
        SpecCode[] missing = [.. study.DrivenCodes.Except(named)];
        return missing.Length == 0
            ? null
            : new Objection(
                RevealingWords.KeyDoesNotName(string.Join(", ", missing)),
                study.Fittings.Count > 1 ? RevealingWords.GiveKeyOfEveryFitting : RevealingWords.GiveKeyOfThisStudy
            );
    }
}
