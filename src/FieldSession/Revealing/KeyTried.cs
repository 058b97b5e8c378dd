namespace FieldSession.Revealing;

/// <summary>What came of trying a key file: the ring with its key, or why not.</summary>
/// <param name="Ring">The ring with one more key; null where the file did not open.</param>
/// <param name="Words">Why it did not open and what to do; empty where it did.</param>
/// <param name="AskAgain">Whether the passphrase should be asked for again; else it is the file that is wrong.</param>
/// <param name="NeedsSecond">Whether two people hold the key, and the second passphrase is to be asked for.</param>
public sealed record KeyTried(KeyRing? Ring, string Words, bool AskAgain, bool NeedsSecond = false);
