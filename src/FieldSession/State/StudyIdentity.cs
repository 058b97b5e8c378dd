namespace FieldSession.State;

/// <summary>
/// Which study it is, whatever its file and the study itself are called: the hash of its first line, which is drawn from the plan, the time
/// and the laptop and never changes. Copies and earlier states of a study have the same one; two studies of one name have two.
/// </summary>
public readonly record struct StudyIdentity
{
    private const int Digits = 64;
    private const int ShortDigits = 8;

    private StudyIdentity(string hash) => Hash = hash;

    /// <summary>Hash of the first line, 64 hex digits.</summary>
    public string Hash { get; }

    /// <summary>Its first 8 digits, enough to tell studies apart on a screen.</summary>
    public string ShortHash => Hash[..ShortDigits];

    /// <summary>The identity with a hash; null: it is no hash of a line, which has 64 lower-case hex digits.</summary>
    public static StudyIdentity? WithHash(string? hash) =>
        hash is { Length: Digits } && hash.All(char.IsAsciiHexDigitLower) ? new StudyIdentity(hash) : null;

    /// <inheritdoc/>
    public override string ToString() => Hash;
}

/// <summary>The blind name of a spec: a random three-digit number. A code is never called by anything else before the reveal.</summary>
/// <param name="Digits">Three digits.</param>
public readonly record struct SpecCode(string Digits)
{
    /// <summary>Reads a code; null where the text is no three-digit number.</summary>
    public static SpecCode? Parse(string text) => text is { Length: 3 } && text.All(char.IsAsciiDigit) ? new SpecCode(text) : null;

    /// <inheritdoc/>
    public override string ToString() => Digits;
}
