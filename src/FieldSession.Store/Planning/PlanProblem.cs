namespace FieldSession.Store.Planning;

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
