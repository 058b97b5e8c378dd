using System.Globalization;
using System.Text;

namespace FieldSession.Sealing;

/// <summary>
/// Which words may be in the key's canonical line. The line is cut at '|' and '=', so a word that holds one could make
/// two different keys give one commitment; and what the eye can't see, nobody can compare.
/// </summary>
public static class SealableText
{
    /// <summary>Most characters a word may have.</summary>
    public const int Longest = 60;

    /// <summary>What is allowed, in words for the custodian and the crew.</summary>
    public const string Allowed = SealingWords.SealableCharacters;

    /// <summary>What rules out a word, without repeating it; null: nothing.</summary>
    public static string? FaultIn(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        if (string.IsNullOrWhiteSpace(word))
        {
            return SealingWords.WordIsEmpty;
        }

        if (word.EnumerateRunes().Count() > Longest)
        {
            return SealingWords.WordIsTooLong;
        }

        return word.AsSpan().ContainsAny('|', '=')
            ? SealingWords.WordHoldsSeparator
            : IsVisible(word) ? null : SealingWords.WordHoldsUnseenCharacter;
    }

    /// <summary>Whether every character of a text can be seen: no control character, line break, or broken character.</summary>
    public static bool IsVisible(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return !text.EnumerateRunes().Any(IsUnseen);
    }

    private static bool IsUnseen(Rune rune) => rune == Rune.ReplacementChar || Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or
        UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned;
}
