using System.Globalization;
using System.Text;
using Wcwidth;

namespace FieldSession.Reviewing;

/// <summary>Text in terminal columns: a wide character takes two, a combining one none, so lengths in characters do not align.</summary>
public static class Columns
{
    // A letter of several characters, such as a flag of two, is drawn in one cell or in two, never in more.
    private const int MostOfALetter = 2;
    private const string CutMark = "\u2026";

    /// <summary>How many columns a text takes.</summary>
    public static int Of(string text) => Letters(text).Sum(Width);

    /// <summary>The text, cut with a mark at its end where it takes more columns than there are.</summary>
    public static string Cut(string text, int columns, string mark = CutMark)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(mark);
        if (columns <= 0)
        {
            return "";
        }

        return Of(text) <= columns ? text : Start(text, columns - mark.Length) + mark;
    }

    /// <summary>As much of the start of a text as fits into so many columns.</summary>
    public static string Start(string text, int columns)
    {
        StringBuilder kept = new();
        int used = 0;
        foreach (string letter in Letters(text))
        {
            used += Width(letter);
            if (used > columns)
            {
                break;
            }

            kept.Append(letter);
        }

        return kept.ToString();
    }

    /// <summary>The text at the left of exactly so many columns.</summary>
    public static string Left(string text, int columns, string mark = CutMark)
    {
        string cut = Cut(text, columns, mark);
        return cut + new string(' ', Math.Max(0, columns - Of(cut)));
    }

    /// <summary>The text at the right of exactly so many columns.</summary>
    public static string Right(string text, int columns, string mark = CutMark)
    {
        string cut = Cut(text, columns, mark);
        return new string(' ', Math.Max(0, columns - Of(cut))) + cut;
    }

    private static int Width(string letter) =>
        Math.Min(MostOfALetter, letter.EnumerateRunes().Sum(rune => Math.Max(0, UnicodeCalculator.GetWidth(rune))));

    private static IEnumerable<string> Letters(string text)
    {
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            yield return elements.GetTextElement();
        }
    }
}

/// <summary>Text in lines of so many columns, broken between words.</summary>
public static class Wrapped
{
    /// <summary>The lines; at least one. A word longer than a line, such as a hash, is broken.</summary>
    public static IEnumerable<string> Lines(string text, int columns)
    {
        ArgumentNullException.ThrowIfNull(text);
        string line = "";
        foreach (string word in text.Split(' ').SelectMany(word => Pieces(word, Math.Max(2, columns))))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Columns.Of(longer) > columns)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private static IEnumerable<string> Pieces(string word, int columns)
    {
        while (Columns.Of(word) > columns)
        {
            string piece = Columns.Start(word, columns);
            yield return piece;
            word = word[piece.Length..];
        }

        yield return word;
    }
}
