using System.Globalization;
using System.Text;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>Lays words out for a shell of 80 columns: wrapped sentences, columns, no characters beyond ASCII of our own.</summary>
public static class PlainLines
{
    /// <summary>Width of a line, in columns.</summary>
    public const int Width = 80;

    /// <summary>A sentence behind a label, wrapped, later lines indented as deep as the label.</summary>
    public static IEnumerable<string> Wrapped(string label, string sentence)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(sentence);
        StringBuilder line = new(label);
        bool isStart = true;
        foreach (string word in Ascii(sentence).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isStart && line.Length + 1 + word.Length > Width)
            {
                yield return line.ToString();
                line.Clear().Append(' ', label.Length);
                isStart = true;
            }

            line.Append(isStart ? "" : " ").Append(word);
            isStart = false;
        }

        yield return line.ToString();
    }

    /// <summary>A cell to the left, cut where it is too long.</summary>
    public static string Left(string text, int width) => Cut(text, width).PadRight(width);

    /// <summary>A cell to the right, cut where it is too long.</summary>
    public static string Right(string text, int width) => Cut(text, width).PadLeft(width);

    /// <summary>The sign of plus or minus in letters of every terminal.</summary>
    public static string Ascii(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Replace("\u00b1", "+-", StringComparison.Ordinal);
    }

    private static string Cut(string text, int width)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringInfo letters = new(text);
        return letters.LengthInTextElements <= width ? text : letters.SubstringByTextElements(0, width - 2) + "..";
    }
}

/// <summary>What the main question is answered on, in words.</summary>
public static class MainMeasureWords
{
    /// <summary>"the steady segments", or "the main segments Mill lane, Quarry road".</summary>
    /// <param name="measure">The main measure.</param>
    /// <param name="segments">The main segments; null: all that the measure takes.</param>
    public static string Of(MainMeasure measure, IReadOnlyList<string>? segments) =>
        (measure, segments) switch
        {
            (_, { } names) => Named(names),
            (MainMeasure.Impact, _) => "the impacts",
            (MainMeasure.All, _) => "all segments together",
            _ => "the steady segments",
        };

    /// <summary>"the main segments Mill lane, Quarry road".</summary>
    public static string Named(IReadOnlyList<string> segments)
    {
        ArgumentNullException.ThrowIfNull(segments);
        return $"the main segment{(segments.Count == 1 ? "" : "s")} {string.Join(", ", segments)}";
    }
}
