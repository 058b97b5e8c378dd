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

    /// <summary>What stands on the tyres of a code.</summary>
    Mark,

    /// <summary>Who read the marks, two people.</summary>
    Reader,

    /// <summary>The last Enter.</summary>
    Confirm,
}

/// <summary>The opening of the key as far as it has come. The passphrase is never part of it.</summary>
/// <param name="Path">The key file; null: not said yet.</param>
/// <param name="Key">The key, unlocked and not told; null: locked.</param>
/// <param name="Marks">The marks read so far, in the order of the codes.</param>
/// <param name="Readers">Who read them, as far as said.</param>
internal sealed record Unlocking(string? Path, KeyInHand? Key, ImmutableArray<MarkRead> Marks, ImmutableArray<string> Readers)
{
    private const int ReadersNeeded = 2;

    /// <summary>Nothing said yet.</summary>
    public static Unlocking Begun { get; } = new(null, null, [], []);

    /// <summary>The step that is due.</summary>
    public UnlockingStep Step(Study study) => this switch
    {
        { Path: null } => UnlockingStep.Path,
        { Key: null } => UnlockingStep.Passphrase,
        _ when CodeDue(study) is not null => UnlockingStep.Mark,
        _ => Readers.Length < ReadersNeeded ? UnlockingStep.Reader : UnlockingStep.Confirm,
    };

    /// <summary>The code whose mark is due; null: none.</summary>
    public SpecCode? CodeDue(Study study)
    {
        SpecCode[] codes = [.. study.Codes];
        return Marks.Length < codes.Length ? codes[Marks.Length] : null;
    }
}
