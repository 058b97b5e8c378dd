using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What the plain text holds.</summary>
/// <param name="Lines">The file's lines, in order; null where one is no valid line.</param>
/// <param name="Tail">The bytes after the last line break: a line that was being written, never acknowledged.</param>
internal sealed record TextCopy(IReadOnlyList<Line?> Lines, ReadOnlyMemory<byte> Tail)
{
    /// <summary>The valid lines, and the tail if it lacks only its line break.</summary>
    public IEnumerable<Line> Valid => Lines.OfType<Line>().Concat(TailLine is { } last ? [last] : []);

    /// <summary>Whether every line is valid. The tail does not count.</summary>
    public bool IsSound => Lines.All(line => line is not null);

    private Line? TailLine => Line.Parse(Tail);

    /// <summary>Reads the bytes of a text.</summary>
    public static TextCopy Read(ReadOnlyMemory<byte> bytes)
    {
        List<Range> places = PlacesIn(bytes.Span);
        Line?[] lines = new Line?[places.Count];
        // hashing is all the work there is, and lines do not need each other for it
        Parallel.For(0, lines.Length, i => lines[i] = Line.Parse(bytes[places[i]]));

        int tailAt = places.Count == 0 ? 0 : places[^1].End.Value + 1;
        return new TextCopy(lines, bytes[tailAt..]);
    }

    private static List<Range> PlacesIn(ReadOnlySpan<byte> bytes)
    {
        List<Range> places = [];
        int start = 0;
        while (bytes[start..].IndexOf((byte)'\n') is >= 0 and int length)
        {
            places.Add(start..(start + length));
            start += length + 1;
        }

        return places;
    }
}
