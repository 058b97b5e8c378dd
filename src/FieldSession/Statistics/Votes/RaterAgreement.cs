namespace FieldSession.Statistics;

/// <summary>
/// How well two sets of scores of the same things agree. Quadratic weighted kappa in its closed form
/// 2 s_xy / (s_x^2 + s_y^2 + (m_x - m_y)^2), moments with divisor n, equal to kappa with squared weights on any even grid
/// (J. L. Fleiss, J. Cohen, Educ. Psychol. Meas. 33, 1973). Worked example: scores 1, 2, 3 and 2, 3, 4: kappa 0.5714.
/// </summary>
public static class RaterAgreement
{
    /// <summary>Agreement in numbers.</summary>
    /// <param name="Count">Things scored by both.</param>
    /// <param name="MeanDifference">Mean of first minus second.</param>
    /// <param name="SdDifference">Standard deviation of the differences; null with fewer than two.</param>
    /// <param name="WithinShare">Share of differences no larger than the tolerance.</param>
    /// <param name="QuadraticKappa">1: the same scores; 0: as by chance; null if no score varies and the means are equal.</param>
    public readonly record struct Result(
        int Count,
        double MeanDifference,
        double? SdDifference,
        double WithinShare,
        double? QuadraticKappa
    );

    /// <summary>The agreement of two equally long sets of one score or more.</summary>
    public static Result Of(ReadOnlySpan<double> first, ReadOnlySpan<double> second, double tolerance)
    {
        int n = first.Length;
        (double meanFirst, double meanSecond) = (Mean(first), Mean(second));
        (double xx, double yy, double xy) = (0, 0, 0);
        int within = 0;
        for (int i = 0; i < n; i++)
        {
            (double x, double y) = (first[i] - meanFirst, second[i] - meanSecond);
            xx += x * x;
            yy += y * y;
            xy += x * y;
            within += Math.Abs(first[i] - second[i]) <= tolerance + 1e-9 ? 1 : 0;
        }

        double bias = meanFirst - meanSecond;
        double spread = xx / n + yy / n + bias * bias;
        double? sd = n > 1 ? Math.Sqrt(Math.Max(0, xx + yy - 2 * xy) / (n - 1)) : null;
        return new Result(n, bias, sd, (double)within / n, spread > 0 ? 2 * xy / n / spread : null);
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}

/// <summary>
/// The sign test: how many paired differences are above and below 0, zeros dropped, against an even chance (exact binomial).
/// Source: W. J. Dixon, A. M. Mood, J. Am. Stat. Assoc. 41, 1946. Worked example: 3 above, 1 below: p = 0.625.
/// </summary>
public static class SignTest
{
    /// <summary>Counts and two-sided p.</summary>
    /// <param name="Plus">Differences above 0.</param>
    /// <param name="Minus">Differences below 0.</param>
    /// <param name="PTwoSided">Twice the smaller tail, at most 1; 1 if all are zero.</param>
    public readonly record struct Result(int Plus, int Minus, double PTwoSided);

    /// <summary>The test.</summary>
    public static Result Of(ReadOnlySpan<double> differences)
    {
        (int plus, int minus) = (0, 0);
        foreach (double difference in differences)
        {
            plus += difference > 0 ? 1 : 0;
            minus += difference < 0 ? 1 : 0;
        }

        return new Result(plus, minus, ExactBinomial.PTwoSided(plus, plus + minus));
    }
}
