using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace FieldSession.Statistics;

/// <summary>
/// Exact tests of a count of successes against an even chance, and the exact interval of a share.
/// Sums of binomial probabilities; interval: C. J. Clopper, E. S. Pearson, Biometrika 26, 1934.
/// Worked example: 21 of 30: one-sided p = 0.0214; needed of 10 at 5 %: 9 (ISO 5495 table A.1).
/// </summary>
public static class ExactBinomial
{
    /// <summary>P(X &gt;= successes) at a chance of one half: the side was named before.</summary>
    public static double POneSided(int successes, int trials) =>
        successes <= 0 ? 1 : SpecialFunctions.BetaRegularized(successes, trials - successes + 1, 0.5);

    /// <summary>Twice the smaller tail, at most 1: the side was not named before.</summary>
    public static double PTwoSided(int successes, int trials) =>
        Math.Min(1, 2 * Math.Min(POneSided(successes, trials), POneSided(trials - successes, trials)));

    /// <summary>Fewest successes whose one-sided p is at most alpha; null if not even all of them suffice.</summary>
    public static int? FewestSuccesses(int trials, double alpha)
    {
        for (int successes = 0; successes <= trials; successes++)
        {
            if (POneSided(successes, trials) <= alpha)
            {
                return successes;
            }
        }

        return null;
    }

    /// <summary>Clopper-Pearson limits of the share of successes; 0 for no success and 1 for nothing but successes are exact ends.</summary>
    /// <param name="successes">0 .. trials.</param>
    /// <param name="trials">1 or more.</param>
    /// <param name="level">Coverage, for instance 0.95.</param>
    public static (double Low, double High) Interval(int successes, int trials, double level)
    {
        double tail = (1 - level) / 2;
        double low = successes == 0 ? 0 : Beta.InvCDF(successes, trials - successes + 1, tail);
        double high = successes == trials ? 1 : Beta.InvCDF(successes + 1, trials - successes, 1 - tail);
        return (low, high);
    }
}
