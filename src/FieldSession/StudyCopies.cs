using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession;

/// <summary>What copies of one study come to.</summary>
/// <param name="Study">The study.</param>
/// <param name="Newest">The copy that holds all lines of all others; null: there is none, so the study can't be counted.</param>
/// <param name="Others">The copies and earlier states that it means. Without a newest one: the copies that went on differently, one a state.</param>
public sealed record StudyCopies<T>(StudyIdentity Study, T? Newest, ImmutableArray<T> Others)
    where T : class;

/// <summary>
/// Finds the copies and earlier states of each study among many, so that a study counts once however often it was copied. Where one copy holds
/// the lines of all others, it counts. Where no copy does, two of them went on differently and only 'merge' brings them together.
/// </summary>
public static class StudyCopies
{
    /// <summary>The studies, in the order in which they were met first.</summary>
    /// <param name="copies">The copies.</param>
    /// <param name="stateOf">How far a copy goes.</param>
    /// <param name="linesOf">Reads the lines of a copy; asked only where copies of a study differ.</param>
    public static IEnumerable<StudyCopies<T>> Of<T>(IEnumerable<T> copies, Func<T, StudyState> stateOf, Func<T, IReadOnlyList<Line>> linesOf)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(copies);
        return copies.GroupBy(copy => stateOf(copy).Study).Select(study => OfOne(study.Key, [.. study], stateOf, linesOf));
    }

    private static StudyCopies<T> OfOne<T>(StudyIdentity study, T[] copies, Func<T, StudyState> stateOf, Func<T, IReadOnlyList<Line>> linesOf)
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
