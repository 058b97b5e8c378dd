namespace FieldSession.Store.Readings;

/// <summary>One thing that is wrong with a file that somebody hands in: where it is, what it is, and what is allowed.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Line">The line, from 1; null: the file as a whole.</param>
/// <param name="Column">The column by its name; null: the line as a whole.</param>
/// <param name="Value">The text that is there, shortened and without control characters; null: not about one text.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Allowed">What is allowed, or what to do.</param>
public sealed record FileProblem(string File, long? Line, string? Column, string? Value, string What, string Allowed)
{
    private const int LongestQuoted = 40;

    /// <summary>The problem as one sentence: file, line, column, value, what it is, what is allowed.</summary>
    public override string ToString() =>
        $"{File}"
        + (Line is null ? "" : $", line {Line}")
        + (Column is null ? "" : $", column '{Column}'")
        + (Value is null ? "" : $": '{Value}'")
        + $": {What}; {Allowed}";

    /// <summary>A text as it may be shown in a message: at most 40 characters, control characters as '?'.</summary>
    public static string Shown(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string cut = text.Length > LongestQuoted ? text[..LongestQuoted] + "..." : text;
        return string.Create(cut.Length, cut, static (shown, from) =>
        {
            for (int i = 0; i < from.Length; i++)
            {
                shown[i] = char.IsControl(from[i]) || char.IsSurrogate(from[i]) ? '?' : from[i];
            }
        });
    }
}
