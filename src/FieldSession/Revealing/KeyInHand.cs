using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>
/// The custodian's key, unlocked but not told yet: whoever holds it can make the fact of the reveal with it once the
/// marks are read, and can't look into it before.
/// </summary>
/// <param name="key">The key.</param>
public sealed class KeyInHand(KeySheet key)
{
    /// <summary>The fact of the reveal.</summary>
    /// <param name="study">The study, all predictions locked.</param>
    /// <param name="marks">What was read on the tyres, code by code.</param>
    /// <param name="readers">Who read it.</param>
    public KeyOpened With(Study study, IEnumerable<MarkRead> marks, IEnumerable<string> readers) => Opener.Fact(study, key, marks, readers);
}

/// <summary>What came of trying a key file: the key in hand, or why not.</summary>
/// <param name="Key">The key; null where the file did not open.</param>
/// <param name="Words">Why it did not open and what to do; empty where it did.</param>
/// <param name="AskAgain">Whether the passphrase should be asked for again; else it is the file that is wrong.</param>
public sealed record KeyTried(KeyInHand? Key, string Words, bool AskAgain);
