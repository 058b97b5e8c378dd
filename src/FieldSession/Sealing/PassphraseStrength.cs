namespace FieldSession.Sealing;

/// <summary>
/// A cautious estimate of how many passphrases somebody would have to try: the alphabet that is used, to the power of the characters
/// that say something. A character that repeats or follows the one before it in the alphabet or among the figures says next to
/// nothing (own method). It can't know a birthday or a line of a song, so it errs on the high side for what a person thinks up.
/// </summary>
public static class PassphraseStrength
{
    /// <summary>
    /// Below so many bits a passphrase is called weak: a thousand tries a second would be through in some days (own calculation).
    /// </summary>
    public const double WeakBits = 30;

    /// <summary>The estimate in bits; words of a list by lot have those of the list.</summary>
    public static double Bits(string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        if (passphrase.Length == 0)
        {
            return 0;
        }

        int telling = 0;
        for (int at = 0; at < passphrase.Length; at++)
        {
            bool follows = at > 0 && Math.Abs(passphrase[at] - passphrase[at - 1]) <= 1;
            telling += follows ? 0 : 1;
        }

        string[] words = [.. passphrase.Split(' ', StringSplitOptions.RemoveEmptyEntries).Distinct()];
        double byCharacter = telling * Math.Log2(Alphabet(passphrase));
        // a word by itself is one of some ten thousand, however long it is
        double byWord = words.Sum(word => word.All(char.IsAsciiLetter) ? 13 : word.Length * Math.Log2(Alphabet(word)));
        return Math.Min(byCharacter, byWord);
    }

    /// <summary>The bits of words drawn by lot from a list.</summary>
    /// <param name="words">How many are drawn.</param>
    /// <param name="listed">How many the list holds.</param>
    public static double BitsOfWords(int words, int listed) => words * Math.Log2(listed);

    private static double Alphabet(string text) =>
        (text.Any(char.IsAsciiDigit) ? 10 : 0)
        + (text.Any(char.IsAsciiLetterLower) ? 26 : 0)
        + (text.Any(char.IsAsciiLetterUpper) ? 26 : 0)
        + (text.Any(c => !char.IsAsciiLetterOrDigit(c)) ? 20 : 0);
}
