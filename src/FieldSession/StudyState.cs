using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Merging;
using FieldSession.State;

namespace FieldSession;

/// <summary>How far a copy of a study goes: which study it is, and where each strand ends in it. Two copies with the same ends hold the same lines.</summary>
/// <param name="Study">The study.</param>
/// <param name="Ends">The ends of its strands, by strand.</param>
public sealed record StudyState(StudyIdentity Study, ImmutableArray<StrandEnd> Ends)
{
    /// <summary>How many lines the copy holds.</summary>
    public int Lines => Ends.Sum(end => end.Line);

    /// <summary>The identity of the study that some lines tell; null: there are none.</summary>
    /// <param name="lines">Lines of whole strands, those of each strand in order, from the first.</param>
    public static StudyIdentity? IdentityOf(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        // the one strand that takes note of no other begins the study
        return StrandOrder.Of(lines) is [{ } first, ..] ? StudyIdentity.WithHash(first.Hash) : null;
    }

    /// <summary>The state that some lines are; null: there are none.</summary>
    /// <param name="lines">Lines of whole strands, those of each strand in order, from the first.</param>
    public static StudyState? Of(IReadOnlyList<Line> lines) => IdentityOf(lines) is { } study
        ? new StudyState(study, [.. lines.GroupBy(line => line.Strand).Select(strand => EndAt(strand.Last())).OrderBy(end => end.Strand, StringComparer.Ordinal)])
        : null;

    /// <summary>Whether some lines hold all of this state: it is a copy of them, or an earlier state.</summary>
    public bool IsIn(IEnumerable<Line> lines)
    {
        // a line names the one before it, so an end that is there brings its whole strand along
        HashSet<StrandEnd> ends = [.. Ends];
        ends.ExceptWith(lines.Select(EndAt));
        return ends.Count == 0;
    }

    /// <summary>Whether the other state has the same lines.</summary>
    public bool Equals(StudyState? other) => other is not null && Study == other.Study && Ends.SequenceEqual(other.Ends);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Study, Ends.Length, Ends[0]);

    private static StrandEnd EndAt(Line line) => new(line.Strand, line.Number, line.Hash);
}
