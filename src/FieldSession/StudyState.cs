using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Merging;
using FieldSession.State;

namespace FieldSession;

/// <summary>
/// How far a copy of a study goes: which study it is, and where each strand ends in it. Two copies with the same ends hold the same lines.
/// </summary>
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
    public static StudyState? Of(IReadOnlyList<Line> lines) =>
        IdentityOf(lines) is { } study
            ? new StudyState(
                study,
                [
                    .. lines
                        .GroupBy(line => line.Strand)
                        .Select(strand => EndAt(strand.Last()))
                        .OrderBy(end => end.Strand, StringComparer.Ordinal),
                ]
            )
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

/// <summary>What copies of one study come to.</summary>
/// <param name="Study">The study.</param>
/// <param name="Newest">The copy that holds all lines of all others; null: there is none, so the study can't be counted.</param>
/// <param name="Others">The copies and earlier states that it means. Without a newest one: the copies that went on differently, one a
/// state.</param>
public sealed record StudyCopies<T>(StudyIdentity Study, T? Newest, ImmutableArray<T> Others)
    where T : class;

/// <summary>
/// Finds the copies and earlier states of each study among many, so that a study counts once however often it was copied. Where one copy
/// holds the lines of all others, it counts. Where no copy does, two of them went on differently and only 'merge' brings them together.
/// </summary>
public static class EachStudyOnce
{
    /// <summary>The studies, in the order in which they were met first.</summary>
    /// <param name="copies">The copies.</param>
    /// <param name="stateOf">How far a copy goes.</param>
    /// <param name="linesOf">Reads the lines of a copy; asked only where copies of a study differ.</param>
    public static IEnumerable<StudyCopies<T>> Of<T>(
        IEnumerable<T> copies,
        Func<T, StudyState> stateOf,
        Func<T, IReadOnlyList<Line>> linesOf
    )
        where T : class
    {
        ArgumentNullException.ThrowIfNull(copies);
        return copies.GroupBy(copy => stateOf(copy).Study).Select(study => OfOne(study.Key, [.. study], stateOf, linesOf));
    }

    private static StudyCopies<T> OfOne<T>(
        StudyIdentity study,
        T[] copies,
        Func<T, StudyState> stateOf,
        Func<T, IReadOnlyList<Line>> linesOf
    )
        where T : class
    {
        List<T> apart = [];
        T[] states = [.. copies.DistinctBy(stateOf).OrderByDescending(copy => stateOf(copy).Lines)];
        List<IReadOnlyList<Line>> known = [];
        foreach (T copy in states)
        {
            if (!known.Any(stateOf(copy).IsIn))
            {
                apart.Add(copy);
                known.Add(states.Length == 1 ? [] : linesOf(copy));
            }
        }

        return apart is [{ } newest]
            ? new StudyCopies<T>(study, newest, [.. copies.Where(copy => !ReferenceEquals(copy, newest))])
            : new StudyCopies<T>(study, null, [.. apart]);
    }
}
