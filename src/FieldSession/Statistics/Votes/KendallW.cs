using MathNet.Numerics;

namespace FieldSession.Statistics;

/// <summary>
/// Kendall's coefficient of concordance with correction for ties: W = 12 S / (m^2 (n^3 - n) - m sum(t^3 - t))
/// (M. G. Kendall, B. Babington Smith, Ann. Math. Stat. 10, 1939; ties: Kendall, Rank Correlation Methods).
/// Worked example: three judges who rank four things alike: W = 1.
/// </summary>
public static class KendallW
{
    /// <summary>Concordance.</summary>
    /// <param name="W">0: no concordance, 1: all rank alike.</param>
    /// <param name="P">Upper tail of chi-square m (n - 1) W; null for 7 things or fewer, where the approximation is poor.</param>
    public readonly record struct Result(double W, double? P);

    /// <summary>The concordance of m judges on n things; null if every judge scored all things alike.</summary>
    /// <param name="scores">One row per judge, one score per thing.</param>
    public static Result? Of(IReadOnlyList<double[]> scores)
    {
        int m = scores.Count;
        int n = scores[0].Length;
        double[] rankSums = new double[n];
        double ties = 0;
        foreach (double[] judge in scores)
        {
            double[] ranks = Midranks.Of(judge);
            for (int i = 0; i < n; i++)
            {
                rankSums[i] += ranks[i];
            }

            ties += ranks.GroupBy(rank => rank).Sum(tied => Math.Pow(tied.Count(), 3) - tied.Count());
        }

        double mean = m * (n + 1) / 2.0;
        double s = rankSums.Sum(sum => (sum - mean) * (sum - mean));
        double largest = (double)m * m * (Math.Pow(n, 3) - n) - m * ties;
        if (largest <= 0)
        {
            return null;
        }

        double w = 12 * s / largest;
        return new Result(w, n > 7 ? SpecialFunctions.GammaUpperRegularized((n - 1) / 2.0, m * (n - 1) * w / 2) : null);
    }
}

/// <summary>
/// Ranks from 1 upward; equal values share the mean of their ranks (M. G. Kendall, Biometrika 33, 1945).
/// Worked example: 5, 7, 7, 9 have the ranks 1, 2.5, 2.5, 4.
/// </summary>
public static class Midranks
{
    /// <summary>The ranks in the order of the values.</summary>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        double[] ranks = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            (int below, int equal) = (0, 0);
            foreach (double other in values)
            {
                below += other < values[i] ? 1 : 0;
                equal += other == values[i] ? 1 : 0;
            }

            ranks[i] = below + (equal + 1) / 2.0;
        }

        return ranks;
    }
}
