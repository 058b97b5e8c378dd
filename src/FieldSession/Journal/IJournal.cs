namespace FieldSession.Journal;

/// <summary>
/// The append-only record behind a study. An appended line is safe on disk when <see cref="Append"/> returns; when it
/// throws, the line is not safe and the lines before it are.
/// </summary>
public interface IJournal : IDisposable
{
    /// <summary>Every line found when the journal was opened, in order, each of its chain verified.</summary>
    IReadOnlyList<Line> Lines { get; }

    /// <summary>Adds one line, durably.</summary>
    /// <exception cref="IOException">The line could not be made safe: disk full, drive gone, access lost.</exception>
    void Append(Line line);
}
