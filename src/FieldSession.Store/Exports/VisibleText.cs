using System.Globalization;
using System.Text;

namespace FieldSession.Store.Exports;

/// <summary>
/// The crew's words as a report can bear them: nothing that stays invisible and yet changes how a reader sees what follows. Line breaks and tabs
/// become blanks; other control characters, what overrides or isolates the direction of writing (Unicode Standard Annex 9, U+202A to U+202E and U+2066 to
/// U+2069), halves of pairs and characters that are none become visible marks such as [U+202E].
/// </summary>
public static class VisibleText
{
    /// <summary>The words with marks in place of what can't be seen.</summary>
    public static string Of(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        StringBuilder visible = new(words.Length);
        foreach (Rune rune in words.EnumerateRunes())
        {
            Append(visible, rune);
        }

        return visible.ToString();
    }

    // A half of a pair comes here as U+FFFD, the sign for what could not be read.
    private static void Append(StringBuilder visible, Rune rune)
    {
        if (rune.Value is '\n' or '\r' or '\t' or 0x2028 or 0x2029)
        {
            visible.Append(' ');
        }
        else if (IsHidden(rune))
        {
            visible.Append(CultureInfo.InvariantCulture, $"[U+{rune.Value:X4}]");
        }
        else
        {
            visible.Append(rune.ToString());
        }
    }

    private static bool IsHidden(Rune rune) =>
        Rune.IsControl(rune) || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) || (rune.Value & 0xFFFE) == 0xFFFE;
}
