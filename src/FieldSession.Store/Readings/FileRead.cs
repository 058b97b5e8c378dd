namespace FieldSession.Store.Readings;

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
