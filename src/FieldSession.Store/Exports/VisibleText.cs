using System.Globalization;
using System.Text;

namespace FieldSession.Store.Exports;

/// <summary>
/// The crew's words as a report can take them: nothing that stays invisible and yet changes how a reader sees what follows. Line breaks and
/// tabs become blanks; other control characters, what overrides or isolates the direction of writing (Unicode Standard Annex 9, U+202A to
/// U+202E and U+2066 to U+2069), halves of pairs and characters that are none become visible marks such as [U+202E].
/// </summary>
public static class VisibleText
{
    /// <summary>The words with marks in place of what can't be seen.</summary>
    public static string Of(string words) => Written(words, rune => rune.Value is '\n' or '\r' or '\t' or 0x2028 or 0x2029 ? " " : null);

    /// <summary>
    /// The same for a text of several lines, as a terminal shows it: line breaks and tabs stay, and a carriage return stays before a
    /// line feed. Nothing in it can move the cursor, change a colour or set a title (ECMA-48: every control sequence begins with a control
    /// character).
    /// </summary>
    public static string OfLines(string text) => WithLayout(text, IsHidden);

    /// <summary>
    /// The same for a cell of a table, in which every letter stays as it was written and only control characters become marks.
    /// </summary>
    public static string OfCell(string text) => WithLayout(text, Rune.IsControl);

    private static string WithLayout(string text, Func<Rune, bool> isMarked)
    {
        ArgumentNullException.ThrowIfNull(text);
        string lines = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        return lines.EnumerateRunes().Any(rune => isMarked(rune) && !IsLayout(rune))
            ? Written(lines, rune => IsLayout(rune) || !isMarked(rune) ? rune.ToString() : null)
            : text;
    }

    private static string Written(string words, Func<Rune, string?> kept)
    {
        ArgumentNullException.ThrowIfNull(words);
        StringBuilder visible = new(words.Length);
        foreach (Rune rune in words.EnumerateRunes())
        {
            Append(visible, rune, kept(rune));
        }

        return visible.ToString();
    }

    // A half of a pair comes here as U+FFFD, the sign for what could not be read.
    private static void Append(StringBuilder visible, Rune rune, string? kept)
    {
        if (kept is not null)
        {
            visible.Append(kept);
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

    private static bool IsLayout(Rune rune) => rune.Value is '\n' or '\t';

    private static bool IsHidden(Rune rune) =>
        Rune.IsControl(rune) || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) || (rune.Value & 0xFFFE) == 0xFFFE;
}

/// <summary>Names short enough to be in a plot; the table beside it has all of them.</summary>
internal static class ShortText
{
    /// <summary>The name as it can be seen, cut between letters and not inside one.</summary>
    /// <param name="name">The name.</param>
    /// <param name="letters">The most letters that are left, 2 or more.</param>
    public static string Of(string name, int letters)
    {
        string visible = VisibleText.Of(name);
        int[] starts = StringInfo.ParseCombiningCharacters(visible);
        return starts.Length <= letters ? visible : visible[..starts[letters - 1]].TrimEnd() + "\u2026";
    }
}
