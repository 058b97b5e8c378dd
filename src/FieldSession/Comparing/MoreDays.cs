using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// How many more days with two cars side by side, swapped day by day, would settle it if the difference stayed as it is (docs/formulas.md,
/// "Energy days"). One such day adds a ratio of variance 2 s^2 and one degree of freedom.
/// </summary>
internal static class MoreDays
{
    /// <summary>Further ahead than this no promise is made.</summary>
    public const int Most = 30;

    private const double CautiousShare = 0.20;
    /// <summary>The smallest number, 1..30; null: it is settled, not within 30, or there is no scatter to judge by.</summary>
    /// <param name="line">The line of the pair.</param>
    /// <param name="marginPercent">The margin, percent.</param>
    /// <param name="share">The levels that the words need among all codes.</param>
    /// <param name="cautious">True: with the scatter at its upper 80 % limit.</param>
    public static int? Of(EnergyLine line, double marginPercent, EnergyShare share, bool cautious)
    {
        if (line is not { LogRatio: { } d, Obstacle: EnergyObstacle.None, Df: >= EnergyModel.LeastDf, StandardError: > 0 and { } seen })
        {
            return null;
        }

        double factor = cautious ? line.Df / ChiSquare.Quantile(CautiousShare, line.Df) : 1;
        if (share.IsSettled)
        {
            return null;
        }

        // the standard error of this very difference, the displays' steps in it
        double unitVariance = seen * seen / line.Leverage * factor;
        for (int more = 1; more <= Most; more++)
        {
            double standardError = Math.Sqrt(unitVariance / ((1 / line.Leverage) + (more / 2.0)));
            if (IsSettled(d, standardError, line.Df + more, marginPercent, share))
            {
                return more;
            }
        }

        return null;
    }

    private static bool IsSettled(double d, double standardError, double df, double marginPercent, EnergyShare share) =>
        StudentT.TwoSidedP(d / standardError, df) < share.DifferenceLevel || EnergyEstimate.PTostOf(d, standardError, df, marginPercent) < share.EquivalenceLevel;
}
