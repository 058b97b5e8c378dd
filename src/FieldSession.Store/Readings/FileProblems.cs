namespace FieldSession.Store.Readings;

/// <summary>Gathers what is wrong with a file, so that all of it can be repaired in one go: the first 20 in words, the rest counted.</summary>
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
