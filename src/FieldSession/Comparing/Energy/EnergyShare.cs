using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// What the word of one code rests on where several are asked at once: Holm's steps over both questions on every code
/// (<see cref="HolmOfTwos"/>).
/// </summary>
/// <param name="Codes">How many codes are asked at once.</param>
/// <param name="PDifference">p of a difference, allowing for all of them.</param>
/// <param name="PEquivalence">p of equivalence, likewise.</param>
/// <param name="DifferenceLevel">What the code's own p of a difference has to stay below for the same word.</param>
/// <param name="EquivalenceLevel">The same of equivalence.</param>
internal sealed record EnergyShare(int Codes, double PDifference, double PEquivalence, double DifferenceLevel, double EquivalenceLevel)
{
    private const double Alpha = 0.05;

    /// <summary>Whether a difference is shown.</summary>
    public bool ShowsDifference => PDifference < Alpha;

    /// <summary>Whether equivalence is shown.</summary>
    public bool ShowsEquivalence => PEquivalence < Alpha;

    /// <summary>Whether any word is.</summary>
    public bool IsSettled => ShowsDifference || ShowsEquivalence;

    /// <summary>p of a difference where several codes are asked at once; null: there is one only.</summary>
    public double? PAmongAll => Codes > 1 ? PDifference : null;

    /// <summary>The shares of estimates asked at once, in their order; null: an estimate without p takes no part.</summary>
    /// <param name="estimates">One a code; null: not to be told.</param>
    public static IReadOnlyList<EnergyShare?> Of(IReadOnlyList<EnergyEstimate?> estimates)
    {
        (double Difference, double Equivalence)[] asked =
        [
            .. estimates.Where(HasP).Select(estimate => (estimate!.P!.Value / Alpha, estimate.PTost!.Value / Alpha)),
        ];
        double[] differences = [.. asked.Select(one => one.Difference)];
        double[] equivalences = [.. asked.Select(one => one.Equivalence)];
        (double[] Difference, double[] Equivalence) adjusted = HolmOfTwos.Adjust(differences, equivalences);
        (int[] Difference, int[] Equivalence) divisors = HolmOfTwos.Divisors(differences, equivalences);
        EnergyShare[] shares =
        [
            .. Enumerable
                .Range(0, asked.Length)
                .Select(i => new EnergyShare(
                    asked.Length,
                    Math.Min(1, adjusted.Difference[i] * Alpha),
                    Math.Min(1, adjusted.Equivalence[i] * Alpha),
                    Alpha / divisors.Difference[i],
                    Alpha / divisors.Equivalence[i]
                )),
        ];
        int next = 0;
        return [.. estimates.Select(estimate => HasP(estimate) ? shares[next++] : null)];
    }

    private static bool HasP(EnergyEstimate? estimate) => estimate is { P: not null, PTost: not null };
}

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
        StudentT.TwoSidedP(d / standardError, df) < share.DifferenceLevel
        || EnergyEstimate.PTostOf(d, standardError, df, marginPercent) < share.EquivalenceLevel;
}
