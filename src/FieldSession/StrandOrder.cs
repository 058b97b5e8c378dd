using FieldSession.Journal;
using FieldSession.Merging;

namespace FieldSession;

/// <summary>
/// The one order in which the lines of several laptops are told, whichever way they came together. A line is at the time it was
/// written, but never before a line that its laptop knew, however its clock was set; lines of one time are sorted by how many lines were
/// known before them, then by strand. The place of a line relative to another thus follows from the two and what they knew, so that
/// it never changes when more is merged.
/// </summary>
public static class StrandOrder
{
    /// <summary>The lines in order. Those of one strand alone stay as they are.</summary>
    /// <param name="lines">Lines of whole strands, those of each strand in order.</param>
    public static IReadOnlyList<Line> Of(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Count == 0 || lines.All(line => line.Strand == lines[0].Strand))
        {
            return lines;
        }

        Dictionary<string, Line[]> strands = lines
            .GroupBy(line => line.Strand)
            .ToDictionary(g => g.Key, g => g.OrderBy(line => line.Number).ToArray());
        Dictionary<string, List<Placed>> placed = strands.Keys.ToDictionary(strand => strand, _ => new List<Placed>());
        while (
            strands.Keys.Any(strand => Advance(strand, strands, placed, isForced: false))
            || strands
                .Keys.OrderBy(strand => strand, StringComparer.Ordinal)
                .Any(strand => Advance(strand, strands, placed, isForced: true))
        ) { }

        return
        [
            .. placed
                .Values.SelectMany(list => list)
                .OrderBy(one => one.At)
                .ThenBy(one => one.Depth)
                .ThenBy(one => one.Line.Strand, StringComparer.Ordinal)
                .Select(one => one.Line),
        ];
    }

    /// <summary>The ends of the other strands that a line takes note of; empty: it is of another kind.</summary>
    public static IReadOnlyList<StrandEnd> EndsIn(Line line) =>
        line is { Kind: EntryKinds.Joined } && EntryKinds.EntryIn(line) is StrandJoined { Ends: { } ends } ? ends : [];

    // Goes on along a strand as far as the lines known to it are there; a line of another hand that knows what is not there goes on by
    // force.
    private static bool Advance(string strand, Dictionary<string, Line[]> strands, Dictionary<string, List<Placed>> placed, bool isForced)
    {
        List<Placed> own = placed[strand];
        int began = own.Count;
        bool force = isForced;
        while (own.Count < strands[strand].Length)
        {
            Line line = strands[strand][own.Count];
            StrandEnd[] ends =
            [
                .. EndsIn(line)
                    .Where(end =>
                        end.Strand != strand
                        && strands.TryGetValue(end.Strand, out Line[]? there)
                        && there.Length >= end.Line
                        && end.Line > 0
                    ),
            ];
            StrandEnd[] told = [.. ends.Where(end => placed[end.Strand].Count >= end.Line)];
            if (told.Length < ends.Length && !force)
            {
                break;
            }

            force = false;
            Placed[] before = [.. own.TakeLast(1), .. told.Select(end => placed[end.Strand][end.Line - 1])];
            own.Add(
                new Placed(
                    line,
                    before.Select(one => one.At).Append(line.At).Max(),
                    1 + before.Select(one => one.Depth).DefaultIfEmpty(0).Max()
                )
            );
        }

        return own.Count > began;
    }

    private sealed record Placed(Line Line, DateTimeOffset At, int Depth);
}
