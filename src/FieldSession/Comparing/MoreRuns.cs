using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// How many more runs per code would settle the verdict, if the difference stays as it is (docs/method.md, "How many more").
/// Standard error s sqrt(1/(nA + j) + 1/(nB + j)) with two more degrees of freedom for every j.
/// </summary>
internal static class MoreRuns
{
    /// <summary>Further ahead than this no promise is made.</summary>
    private const int Most = 10;
    private const double CautiousShare = 0.20;

    // what the normal distribution asks for at the least at 5 %, and every t distribution and every smaller level with it
    private const double LeastTwoSided = 1.9599;
    private const double LeastOneSided = 1.6448;

    /// <summary>The smallest number, 0 .. 10; null: not within 10, or no scatter to judge by.</summary>
    /// <param name="pair">The pair.</param>
    /// <param name="alpha">The level that the verdict needs, at most 0.05.</param>
    /// <param name="cautious">True: with the scatter at its upper 80 % limit.</param>
    public static int? Of(PairLine pair, double alpha, bool cautious)
    {
        Scatter scatter = pair.Model.Scatter;
        if (scatter.RunVarianceUsed is not > 0 || pair.ConfoundedWith is not null)
        {
            return null;
        }

        double nu = scatter.NuUsed;
        double factor = cautious ? nu / ChiSquare.Quantile(CautiousShare, nu) : 1;
        double sd = Math.Sqrt(scatter.RunVarianceUsed.Value * factor);
        (double first, double second) = (pair.Model.RunsOf(pair.First), pair.Model.RunsOf(pair.Second));
        for (int more = 0; more <= Most; more++)
        {
            double standardError = sd * Math.Sqrt(1 / (first + more) + 1 / (second + more));
            if (IsSettled(Math.Abs(pair.Overall.DifferenceDb), standardError, nu + 2 * more, pair.MarginDb, alpha))
            {
                return more;
            }
        }

        return null;
    }

    /// <summary>Asked through the tails, which is the same as through the quantiles and several times cheaper.</summary>
    private static bool IsSettled(double size, double standardError, double df, double marginDb, double alpha) =>
        (size > LeastTwoSided * standardError && StudentT.TwoSidedP(size / standardError, df) <= alpha)
        || (marginDb - size > LeastOneSided * standardError && StudentT.UpperTail((marginDb - size) / standardError, df) <= alpha);
}
