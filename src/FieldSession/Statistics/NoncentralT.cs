using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace FieldSession.Statistics;

/// <summary>
/// The noncentral t distribution, for power: series of incomplete beta functions
/// (R. V. Lenth, Algorithm AS 243, Applied Statistics 38, 1989). Noncentrality 0 .. 37; beyond that the first term underflows.
/// Worked example: at 4 degrees of freedom a test at 5 % two-sided reaches a power of 80 % at a noncentrality of 3.76106 (R: pt with ncp).
/// </summary>
public static class NoncentralT
{
    /// <summary>The largest noncentrality that is computed.</summary>
    public const double LargestNoncentrality = 37;

    /// <summary>P(T &gt; t) for t of 0 or more and a noncentrality of 0 .. 37.</summary>
    public static double UpperTail(double t, double df, double noncentrality) =>
        SpecialFunctions.Erfc(-noncentrality / Constants.Sqrt2) / 2 - BetweenZeroAnd(t, df, noncentrality);

    /// <summary>P(|T| &gt; t(1 - alpha/2; df)): the chance that a two-sided test at alpha sees an effect of this many standard errors.</summary>
    public static double TwoSidedPower(double noncentrality, double df, double alpha)
    {
        double limit = StudentT.Quantile(1 - alpha / 2, df);
        return TwoSided(limit, df, noncentrality);
    }

    /// <summary>The effect in standard errors that a two-sided test at alpha sees with the wanted power; null if it lies beyond 37.</summary>
    public static double? NoncentralityForPower(double power, double df, double alpha)
    {
        double limit = StudentT.Quantile(1 - alpha / 2, df);
        double Missing(double noncentrality) => TwoSided(limit, df, noncentrality) - power;
        return Missing(LargestNoncentrality) > 0 && Brent.TryFindRoot(Missing, 1e-6, LargestNoncentrality, 1e-11, 200, out double root)
            ? root
            : null;
    }

    private static double TwoSided(double limit, double df, double noncentrality)
    {
        double belowMinusLimit = SpecialFunctions.Erfc(noncentrality / Constants.Sqrt2) / 2 - BetweenZeroAnd(limit, df, -noncentrality);
        return UpperTail(limit, df, noncentrality) + Math.Max(0, belowMinusLimit);
    }

    /// <summary>P(0 &lt; T &lt;= t): Lenth's sum of 1/2 (p_j I_x(j+1/2, df/2) + q_j I_x(j+1, df/2)), each I from the one before.</summary>
    private static double BetweenZeroAnd(double t, double df, double noncentrality)
    {
        double b = df / 2;
        double x = t * t / (t * t + df);
        double y = df / (t * t + df);
        double lambda = noncentrality * noncentrality / 2;
        double p = Math.Exp(-lambda);
        double q = noncentrality * Math.Sqrt(2 / Math.PI) * p;
        double odd = SpecialFunctions.BetaRegularized(0.5, b, x);
        double even = SpecialFunctions.BetaRegularized(1, b, x);
        double lnY = b * Math.Log(y);
        double oddDrop = Math.Exp(0.5 * Math.Log(x) + lnY - SpecialFunctions.BetaLn(0.5, b)) / 0.5;
        double evenDrop = b * x * Math.Exp(lnY);
        double sum = 0;
        double poissonLeft = 1 - p;
        for (int j = 0; j < 4000; j++)
        {
            sum += p * odd + q * even;
            if (j > lambda && (poissonLeft + Math.Abs(q)) * odd < 1e-15)
            {
                break;
            }

            odd -= oddDrop;
            even -= evenDrop;
            oddDrop *= x * (j + 0.5 + b) / (j + 1.5);
            evenDrop *= x * (j + 1 + b) / (j + 2);
            p *= lambda / (j + 1);
            q *= lambda / (j + 1.5);
            poissonLeft -= p;
        }

        return sum / 2;
    }
}
