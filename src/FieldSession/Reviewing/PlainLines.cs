using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>Lays words out for a shell of 80 columns: wrapped sentences, columns, no characters beyond ASCII of our own.</summary>
public static class PlainLines
{
    /// <summary>Width of a line, in columns.</summary>
    public const int Width = 80;

    private const string CutMark = "..";

    /// <summary>A sentence behind a label, wrapped, later lines indented as deep as the label.</summary>
    public static IEnumerable<string> Wrapped(string label, string sentence)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(sentence);
        string indent = new(' ', Columns.Of(label));
        string words = string.Join(' ', Ascii(sentence).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return Reviewing.Wrapped.Lines(words, Width - indent.Length).Select((line, row) => (row == 0 ? label : indent) + line);
    }

    /// <summary>A cell to the left, cut where it is too long.</summary>
    public static string Left(string text, int width) => Columns.Left(text, width, CutMark);

    /// <summary>A cell to the right, cut where it is too long.</summary>
    public static string Right(string text, int width) => Columns.Right(text, width, CutMark);

    /// <summary>Plus or minus, and the dot between two facts, in letters of every terminal.</summary>
    public static string Ascii(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Replace("\u00b1", "+-", StringComparison.Ordinal).Replace(" \u00b7 ", ", ", StringComparison.Ordinal);
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
