namespace FieldSession.Statistics;

/// <summary>
/// Holm's step-down correction for several tests at once (S. Holm, Scandinavian Journal of Statistics 6, 1979):
/// p sorted ascending, adjusted p(i) = max over j up to i of min(1, (m - j + 1) p(j)).
/// Worked example: 0.01, 0.04, 0.03 become 0.03, 0.06, 0.06.
/// </summary>
public static class Holm
{
    /// <summary>The adjusted p in the order given.</summary>
    public static double[] Adjust(ReadOnlySpan<double> p)
    {
        double[] sorted = p.ToArray();
        int[] place = new int[p.Length];
        for (int i = 0; i < place.Length; i++)
        {
            place[i] = i;
        }

        Array.Sort(sorted, place);
        double[] adjusted = new double[p.Length];
        double highest = 0;
        for (int j = 0; j < sorted.Length; j++)
        {
            highest = Math.Max(highest, Math.Min(1, (sorted.Length - j) * sorted[j]));
            adjusted[place[j]] = highest;
        }

        return adjusted;
    }
}

/// <summary>
/// Holm's steps where tests come in twos and at most one null hypothesis of each two can be true, such as "no difference" and "as large as
/// the margin" of one pair of codes (S. Holm, Scandinavian Journal of Statistics 6, 1979, sharpened for such logic by J. P. Shaffer,
/// Journal of the American Statistical Association 81, 1986). The divisor of a step is how many can still be true: the twos that are not
/// rejected both. Worked example: first tests 0.01 and 0.04, second tests 0.02 and 0.5 become 0.02 and 0.04, 0.04 and 0.5.
/// </summary>
public static class HolmOfTwos
{
    /// <summary>The values multiplied by the divisors of their steps, never below an earlier step's; not cut off at 1.</summary>
    /// <param name="first">The first test of each two: p, or p in units of its level.</param>
    /// <param name="second">The second test of each, in the same units.</param>
    public static (double[] First, double[] Second) Adjust(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        double[] adjusted = [.. first, .. second];
        double highest = 0;
        foreach ((int place, int divisor) in Steps(first, second))
        {
            adjusted[place] = highest = Math.Max(highest, divisor * adjusted[place]);
        }

        return (adjusted[..first.Length], adjusted[first.Length..]);
    }

    /// <summary>What the level is divided by where each test is asked, or where the steps stop before it.</summary>
    /// <param name="first">The first test of each two, p in units of its level: 1 or more stops.</param>
    /// <param name="second">The second test of each, likewise.</param>
    public static (int[] First, int[] Second) Divisors(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        double[] values = [.. first, .. second];
        int[] divisors = new int[values.Length];
        int stopped = 0;
        foreach ((int place, int divisor) in Steps(first, second))
        {
            divisors[place] = stopped > 0 ? stopped : divisor;
            stopped = stopped == 0 && divisor * values[place] >= 1 ? divisor : stopped;
        }

        return (divisors[..first.Length], divisors[first.Length..]);
    }

    // from the smallest value on, as if every step before had rejected
    private static List<(int Place, int Divisor)> Steps(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        double[] values = [.. first, .. second];
        int twos = first.Length;
        int[] order = [.. Enumerable.Range(0, values.Length).OrderBy(place => values[place])];
        HashSet<int> once = [];
        int open = twos;
        List<(int, int)> steps = new(order.Length);
        foreach (int place in order)
        {
            // at most one of the two is true, so a two counts as long as one of it is left; the last one left counts itself
            steps.Add((place, Math.Max(1, open)));
            open -= once.Add(place % twos) ? 0 : 1;
        }

        return steps;
    }
}
