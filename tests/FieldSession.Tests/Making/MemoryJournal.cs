using FieldSession.Journal;

namespace FieldSession.Tests.Making;

/// <summary>A journal in memory; it can be told to fail as a full disk does.</summary>
internal sealed class MemoryJournal(params IEnumerable<Line> lines) : IJournal
{
    private readonly List<Line> _lines = [.. lines];

    public bool DiskIsFull { get; set; }

    public IReadOnlyList<Line> Lines => _lines;

    public void Append(Line line)
    {
        if (DiskIsFull)
        {
            throw new IOException("no space left on the disk");
        }

        _lines.Add(line);
    }

    public void Dispose() { }
}
