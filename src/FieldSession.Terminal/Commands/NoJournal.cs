using FieldSession.Journal;

namespace FieldSession.Terminal.Commands;

/// <summary>The journal of no study: while a plan is made there is none, and nothing can be written into it.</summary>
internal sealed class NoJournal : IJournal
{
    /// <inheritdoc/>
    public IReadOnlyList<Line> Lines => [];

    /// <inheritdoc/>
    public void Append(Line line) => throw new IOException(CommandWords.NoStudyYet);

    /// <inheritdoc/>
    public void Dispose()
    {
        // nothing is open
    }
}
