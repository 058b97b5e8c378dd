using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>
/// Orders that begin and end with the control and read the same from both ends: every place is then driven, on average, in
/// the middle of the day, so that a steady drift cancels (bracketing by a control: ASTM F1650, scope; that reading alike
/// from both ends suffices is computed in the tests).
/// </summary>
public static class OrderProposals
{
    /// <summary>Most runs for which orders are proposed; a day has far less.</summary>
    public const int MostRuns = 60;

    private const int MostInARow = 2;

    /// <summary>Fewest runs that name every spec and read alike from both ends.</summary>
    public static int FewestRuns(int specCount) => (2 * specCount) - 1;

    /// <summary>The orders of so many runs, shortest first; empty below <see cref="FewestRuns"/>.</summary>
    /// <param name="specCount">How many specs are compared, 2..9.</param>
    /// <param name="runs">How many runs are wanted; null: the usual lengths of a day.</param>
    public static IReadOnlyList<ImmutableList<Place>> Of(int specCount, int? runs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(specCount, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(runs ?? 0, MostRuns);
        int[] usual = [FewestRuns(specCount), 2 * specCount, (2 * specCount) + 1, (4 * specCount) - 3, 4 * specCount, (4 * specCount) + 1];
        int[] lengths = runs is { } wanted ? [wanted] : [.. usual.Distinct().Order()];
        return [.. lengths.SelectMany(length => OfLength(specCount, length)).DistinctBy(order => string.Join(' ', order))];
    }

    /// <summary>
    /// The order for the day after: backwards; where it reads the same backwards, the candidates change places, so that none
    /// always follows the same one.
    /// </summary>
    public static ImmutableList<Place> NextDay(ImmutableList<Place> order)
    {
        ArgumentNullException.ThrowIfNull(order);
        int last = order.Max(place => place.Index);
        ImmutableList<Place> backwards = order.Reverse();
        return backwards.SequenceEqual(order)
            ? order.ConvertAll(place => place.IsReference ? place : new Place(last + 1 - place.Index))
            : backwards;
    }

    private static IEnumerable<ImmutableList<Place>> OfLength(int specCount, int runs)
    {
        if (runs < FewestRuns(specCount))
        {
            yield break;
        }

        foreach (IEnumerable<int> pattern in new[] { Alternating(specCount), Grouped(specCount), Mirrored(specCount) })
        {
            int[] half = [.. pattern.Take((runs + 1) / 2)];
            int[] whole = [.. half, .. half.Take(runs / 2).Reverse()];
            if (whole.Distinct().Count() == specCount && LongestRow(whole) <= MostInARow)
            {
                yield return [.. whole.Select(index => new Place(index))];
            }
        }
    }

    // R 1 R 2 R 3 R ...: a run of the control beside every run of a candidate
    private static IEnumerable<int> Alternating(int specCount) => Forever().Select(i => i % 2 == 0 ? 0 : 1 + (i / 2 % (specCount - 1)));

    // R 1 2 3 R 3 2 1 R ...: all candidates within each bracket
    private static IEnumerable<int> Grouped(int specCount) =>
        Forever()
            .Select(i =>
            {
                int inBracket = i % specCount;
                bool isBackwards = i / specCount % 2 == 1;
                return inBracket == 0 ? 0
                    : isBackwards ? specCount - inBracket
                    : inBracket;
            });

    // R 1 2 3 3 2 1 R R 1 ...: every code equally often
    private static IEnumerable<int> Mirrored(int specCount) =>
        Forever()
            .Select(i =>
            {
                int inBlock = i % (2 * specCount);
                return inBlock < specCount ? inBlock : (2 * specCount) - 1 - inBlock;
            });

    private static IEnumerable<int> Forever() => Enumerable.Range(0, MostRuns);

    private static int LongestRow(int[] order)
    {
        int longest = 0;
        int row = 0;
        for (int i = 0; i < order.Length; i++)
        {
            row = i > 0 && order[i] == order[i - 1] ? row + 1 : 1;
            longest = Math.Max(longest, row);
        }

        return longest;
    }
}
