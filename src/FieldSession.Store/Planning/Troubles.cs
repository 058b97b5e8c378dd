using System.Collections.Immutable;

namespace FieldSession.Store.Planning;

/// <summary>Gathers what is wrong with a plan folder, so that the crew repairs it in one go.</summary>
internal sealed class Troubles
{
    /// <summary>Most problems that are told at once.</summary>
    public const int Most = 20;

    private const int LongestPart = 240;

    private readonly List<PlanProblem> _problems = [];
    private readonly List<PlanProblem> _warnings = [];

    /// <summary>Whether no further problem would be told.</summary>
    public bool IsFull => _problems.Count >= Most;

    /// <summary>Whether nothing is refused.</summary>
    public bool IsNone => _problems.Count == 0;

    /// <summary>Why the plan is refused, in the order found.</summary>
    public ImmutableList<PlanProblem> Problems => [.. _problems];

    /// <summary>What is doubtful and driven all the same, in the order found.</summary>
    public ImmutableList<PlanProblem> Warnings => [.. _warnings];

    /// <summary>Notes a reason to refuse the plan.</summary>
    public void Refuse(string file, int? line, string? column, string what, string allowed) =>
        Add(_problems, file, line, column, what, allowed);

    /// <summary>Notes what is doubtful.</summary>
    public void Warn(string file, int? line, string? column, string what, string better) =>
        Add(_warnings, file, line, column, what, better);

    /// <summary>A value as it is in a message: short, in quotes.</summary>
    public static string Quoted(string value) => value.Length <= 40 ? $"'{value}'" : $"'{value[..40]}...'";

    private static void Add(List<PlanProblem> list, string file, int? line, string? column, string what, string allowed)
    {
        if (list.Count < Most)
        {
            list.Add(new PlanProblem(file, line, column, Shown(what), Shown(allowed)));
        }
    }

    // what a file holds may be meant for the terminal, not for the eye
    private static string Shown(string text) =>
        string.Concat(text.Take(LongestPart).Select(letter => char.IsControl(letter) ? '\uFFFD' : letter));
}

/// <summary>Something about a plan folder: what rules it out, or what makes it weak.</summary>
/// <param name="File">The file, such as "plan.toml".</param>
/// <param name="Line">Line in the file, from 1; null: the file as a whole.</param>
/// <param name="Column">Place in the line, from 1, or the name of the CSV column; null: the line as a whole.</param>
/// <param name="What">What is wrong or weak.</param>
/// <param name="Allowed">What is allowed, or better.</param>
public sealed record PlanProblem(string File, int? Line, string? Column, string What, string Allowed)
{
    /// <summary>The sentence for the crew: "route.csv, line 4, column speed_kmh: what; what is allowed".</summary>
    public override string ToString()
    {
        string line = Line is null ? "" : $", line {Line}";
        string column = Column is null ? "" : $", column {Column}";
        return $"{File}{line}{column}: {What}; {Allowed}";
    }
}
