using MathNet.Numerics;

namespace FieldSession.Statistics;

/// <summary>
/// The chi-square distribution: P(X &lt;= x) = regularised lower incomplete gamma function of (df/2, x/2) (Abramowitz &amp; Stegun 26.4.19).
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
