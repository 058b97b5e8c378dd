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
        return string.Create(
            cut.Length,
            cut,
            static (shown, from) =>
            {
                for (int i = 0; i < from.Length; i++)
                {
                    shown[i] = char.IsControl(from[i]) || char.IsSurrogate(from[i]) ? '?' : from[i];
                }
            }
        );
    }
}

/// <summary>
/// Gathers what is wrong with a file, so that all of it can be repaired in one go: the first 20 in words, the rest counted.
/// </summary>
/// <param name="file">The file as it was named.</param>
internal sealed class FileProblems(string file)
{
    /// <summary>How many problems are told in words; more than a screen of them is not read.</summary>
    public const int Told = 20;

    private readonly List<FileProblem> _told = [];

    /// <summary>The first 20, in the order of the file.</summary>
    public IReadOnlyList<FileProblem> InWords => _told;

    /// <summary>How many there are beyond those.</summary>
    public int More { get; private set; }

    /// <summary>Whether anything is wrong.</summary>
    public bool Any => _told.Count > 0;

    /// <summary>Adds a problem of the file as a whole.</summary>
    public void Add(string what, string allowed) => Add(null, null, null, what, allowed);

    /// <summary>Adds a problem of a line, a column, a value.</summary>
    public void Add(long? line, string? column, string? value, string what, string allowed)
    {
        if (_told.Count == Told)
        {
            More++;
            return;
        }

        _told.Add(new FileProblem(file, line, column, value is null ? null : FileProblem.Shown(value), what, allowed));
    }
}

/// <summary>What became of reading a file: its content, or all that is wrong with it. Never both.</summary>
/// <typeparam name="T">What the file holds.</typeparam>
/// <param name="Content">The content; null: something is wrong, and nothing was taken.</param>
/// <param name="Problems">What is wrong, the first 20.</param>
/// <param name="MoreProblems">How many problems there are beyond those.</param>
public sealed record FileRead<T>(T? Content, IReadOnlyList<FileProblem> Problems, int MoreProblems)
    where T : class
{
    /// <summary>The problems as lines of text, the last one 'and N more' where there are more than 20.</summary>
    public IEnumerable<string> ProblemLines() =>
        Problems.Select(problem => problem.ToString()).Concat(MoreProblems > 0 ? [$"and {MoreProblems} more"] : []);
}
