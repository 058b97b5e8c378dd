using System.Collections.Immutable;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Revealing;

/// <summary>A step on the way to the opened key.</summary>
internal enum UnlockingStep
{
    /// <summary>Where the key file is.</summary>
    Path,

    /// <summary>The passphrase, hidden.</summary>
    Passphrase,

    /// <summary>The second passphrase of a key that two people hold, hidden.</summary>
    SecondPassphrase,

    /// <summary>The spec behind a code by a paper key, hidden.</summary>
    PaperLine,

    /// <summary>Which spec of a paper key is the control, hidden.</summary>
    PaperControl,

    /// <summary>What is on the tyres of a code.</summary>
    Mark,

    /// <summary>Who read the marks, two people.</summary>
    Reader,

    /// <summary>The last Enter.</summary>
    Confirm,
}

/// <summary>The opening of the key as far as it has come. No passphrase and no spec is ever part of it.</summary>
/// <param name="Path">The key file that is being tried; null: not said yet.</param>
/// <param name="Files">The key files that are open, in the order they were given.</param>
/// <param name="Ring">Their keys, unlocked and not told.</param>
/// <param name="Paper">The codes whose line of a paper key was typed.</param>
/// <param name="IsControlSaid">Whether the control of a paper key was asked for.</param>
/// <param name="Marks">The marks read so far, in the order of the codes.</param>
/// <param name="Readers">Who read them, as far as said.</param>
internal sealed record Unlocking(
    string? Path,
    ImmutableArray<string> Files,
    KeyRing Ring,
    ImmutableArray<SpecCode> Paper,
    bool IsControlSaid,
    ImmutableArray<MarkRead> Marks,
    ImmutableArray<string> Readers
)
{
    private const int ReadersNeeded = 2;

    /// <summary>Whether two people hold the key file that is being tried, and the first passphrase was typed.</summary>
    public bool NeedsSecond { get; init; }

    /// <summary>Whether the key is open and the marks are read again.</summary>
    public bool IsAgain { get; init; }

    /// <summary>Readings of the marks that did not agree, oldest first.</summary>
    public ImmutableList<MarkReading> Earlier { get; init; } = [];

    /// <summary>Nothing said yet.</summary>
    public static Unlocking Begun { get; } = new(null, [], KeyRing.Empty, [], false, [], []);

    /// <summary>The step that is due.</summary>
    public UnlockingStep Step(Study study) =>
        this switch
        {
            { IsAgain: false } when KeyStep(study) is { } step => step,
            _ when CodeDue(study) is not null => UnlockingStep.Mark,
            _ => Readers.Length < ReadersNeeded ? UnlockingStep.Reader : UnlockingStep.Confirm,
        };

    private UnlockingStep? KeyStep(Study study) =>
        this switch
        {
            _ when Ring.KeysLacking(study) > 0 => Path is null ? UnlockingStep.Path
            : NeedsSecond ? UnlockingStep.SecondPassphrase
            : UnlockingStep.Passphrase,
            _ when PaperDue(study) is not null => UnlockingStep.PaperLine,
            { Paper.IsEmpty: false, IsControlSaid: false } => UnlockingStep.PaperControl,
            _ => null,
        };

    /// <summary>The same with the marks and their readers to be read again; the last reading is kept.</summary>
    /// <param name="now">When, UTC.</param>
    public Unlocking ReadAgain(DateTimeOffset now) =>
        this with
        {
            Marks = [],
            Readers = [],
            Earlier = Earlier.Add(new MarkReading(now, [.. Marks])),
        };

    /// <summary>The code whose line of the paper key is due; null: none.</summary>
    public SpecCode? PaperDue(Study study) => Ring.CodesLacking(study).Cast<SpecCode?>().FirstOrDefault();

    /// <summary>The driven codes that no key file was made for.</summary>
    public static IEnumerable<SpecCode> PaperCodes(Study study) =>
        study.DrivenCodes.Except(study.Fittings.Where(fitting => fitting.Commitment is not null).SelectMany(fitting => fitting.Codes));

    /// <summary>The code whose mark is due; null: none.</summary>
    public SpecCode? CodeDue(Study study) => study.DrivenCodes.Cast<SpecCode?>().ElementAtOrDefault(Marks.Length);
}
