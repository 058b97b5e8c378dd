using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace FieldSession.Statistics;

/// <summary>
/// The chi-square distribution: P(X &lt;= x) = regularised lower incomplete gamma function of (df/2, x/2) (Abramowitz &amp; Stegun
/// 26.4.19).
/// Worked example: chi2(0.2; 2) = -2 ln(0.8) = 0.446287.
/// </summary>
public static class ChiSquare
{
    /// <summary>P(X &lt;= x).</summary>
    public static double Cdf(double x, double df) => x <= 0 ? 0 : SpecialFunctions.GammaLowerRegularized(df / 2, x / 2);

    /// <summary>The x with P(X &lt;= x) = p, p strictly between 0 and 1.</summary>
    /// <remarks>
    /// Newton's method on ln P over ln x, which is concave, from the left: (x/2)^(df/2) / Gamma(df/2 + 1) bounds P from above.
    /// </remarks>
    public static double Quantile(double p, double df)
    {
        if (!(p > 0 && p < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "needs a p between 0 and 1");
        }

        double half = df / 2;
        double lnX = Math.Log(2) + (Math.Log(p) + SpecialFunctions.GammaLn(half + 1)) / half;
        for (int i = 0; i < 200; i++)
        {
            double x = Math.Exp(lnX);
            double lnReached = Math.Log(Cdf(x, df));
            double lnDensity = (half - 1) * Math.Log(x / 2) - x / 2 - SpecialFunctions.GammaLn(half) - Math.Log(2);
            double step = (Math.Log(p) - lnReached) / Math.Exp(lnDensity + lnX - lnReached);
            lnX += step;
            if (Math.Abs(step) < 1e-15)
            {
                break;
            }
        }

        return Math.Exp(lnX);
    }
}

/// <summary>
/// Fisher's F distribution. Upper tail: I_x(df2/2, df1/2) at x = df2 / (df2 + df1 F) (Abramowitz &amp; Stegun 26.6.2).
/// Worked example: F(0.95; 1, 4) = t(0.975; 4)^2 = 7.7086.
/// </summary>
public static class FisherF
{
    /// <summary>P(F &gt; f), f 0 or more.</summary>
    public static double UpperTail(double f, double df1, double df2) =>
        f <= 0 ? 1 : SpecialFunctions.BetaRegularized(df2 / 2, df1 / 2, df2 / (df2 + df1 * f));

    /// <summary>The f with P(F &lt;= f) = p, p strictly between 0 and 1, by bisection on ln f over e^-60 .. e^60.</summary>
    public static double Quantile(double p, double df1, double df2)
    {
        if (!(p > 0 && p < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "needs a p between 0 and 1");
        }

        double low = -60;
        double high = 60;
        for (int i = 0; i < 70 && high - low > 1e-15; i++)
        {
            double middle = (low + high) / 2;
            bool tooLow = UpperTail(Math.Exp(middle), df1, df2) > 1 - p;
            low = tooLow ? middle : low;
            high = tooLow ? high : middle;
        }

        return Math.Exp((low + high) / 2);
    }
}

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

    /// <summary>
    /// Clopper-Pearson limits of the share of successes; 0 for no success and 1 for nothing but successes are exact ends.
    /// </summary>
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
