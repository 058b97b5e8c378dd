using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace FieldSession.Statistics;

/// <summary>
/// Student's t distribution with real degrees of freedom above 0 (infinite: the normal distribution).
/// Upper tail: half the regularised incomplete beta function I_x(df/2, 1/2) at x = df / (df + t^2)
/// (Abramowitz &amp; Stegun 26.7.1). Worked example: t(0.975; 1) = 12.7062, in every printed table.
/// </summary>
public static class StudentT
{
    /// <summary>Newton's steps halve the exponent of their error: after a step this small nothing is left to repair.</summary>
    private const double Settled = 1e-9;

    /// <summary>P(T &gt; t). Small tails keep their relative accuracy.</summary>
    public static double UpperTail(double t, double df)
    {
        if (double.IsPositiveInfinity(df))
        {
            return 0.5 * SpecialFunctions.Erfc(t / Constants.Sqrt2);
        }

        double tail = 0.5 * SpecialFunctions.BetaRegularized(df / 2, 0.5, df / (df + t * t));
        return t >= 0 ? tail : 1 - tail;
    }

    /// <summary>P(T &lt;= t).</summary>
    public static double Cdf(double t, double df) => UpperTail(-t, df);

    /// <summary>P(|T| &gt; |t|).</summary>
    public static double TwoSidedP(double t, double df) => 2 * UpperTail(Math.Abs(t), df);

    /// <summary>
    /// The t with P(T &lt;= t) = p, for p strictly between 0 and 1; agrees with R's qt to 1e-12; with millions of degrees of freedom to
    /// 1e-8.
    /// </summary>
    public static double Quantile(double p, double df)
    {
        if (!(p > 0 && p < 1) || !(df > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(p), "needs a p between 0 and 1 and degrees of freedom above 0");
        }

        return p < 0.5 ? -UpperQuantile(p, df) : UpperQuantile(1 - p, df);
    }

    /// <summary>The t with P(T &gt; t) = tail, for a tail of 0.5 or less.</summary>
    /// <remarks>
    /// Newton's method. For a tail of 0.2 and more on t itself, from 0: the tail is convex there. Below that on ln(tail) over ln(t), which
    /// is concave and turns straight far out: a step that begins on the left ends on the right, and from there no step leaves that side.
    /// </remarks>
    private static double UpperQuantile(double tail, double df)
    {
        if (double.IsPositiveInfinity(df) || df > 1e8)
        {
            return -Normal.InvCDF(0, 1, tail);
        }

        double lnScale = SpecialFunctions.GammaLn((df + 1) / 2) - SpecialFunctions.GammaLn(df / 2) - 0.5 * Math.Log(df * Math.PI);
        return tail >= 0.2 ? NearCentre(tail, df, lnScale) : FarOut(tail, df, lnScale);
    }

    private static double NearCentre(double tail, double df, double lnScale)
    {
        double t = 0;
        for (int i = 0; i < 60; i++)
        {
            double step = (UpperTail(t, df) - tail) / Math.Exp(LnDensity(t, df, lnScale));
            t += step;
            if (Math.Abs(step) <= Settled * Math.Max(1, t))
            {
                break;
            }
        }

        return t;
    }

    private static double FarOut(double tail, double df, double lnScale)
    {
        double lnTail = Math.Log(tail);
        double lnT = Start(tail, df, lnScale, lnTail);
        for (int i = 0; i < 100; i++)
        {
            double lnReached = Math.Log(UpperTail(Math.Exp(lnT), df));
            double slope = -Math.Exp(LnDensity(Math.Exp(lnT), df, lnScale) + lnT - lnReached);
            double step = (lnReached - lnTail) / slope;
            lnT -= step;
            if (Math.Abs(step) <= Settled)
            {
                break;
            }
        }

        return Math.Exp(lnT);
    }

    /// <summary>
    /// ln t to begin with: far out the Pareto tail, which bounds the t tail from above; else the expansion about the normal quantile
    /// (G. W. Hill, Algorithm 396, Communications of the ACM 13, 1970).
    /// </summary>
    private static double Start(double tail, double df, double lnScale, double lnTail)
    {
        double lnPareto = (lnScale + (df + 1) / 2 * Math.Log(df) - Math.Log(df) - lnTail) / df;
        double a = 1 / (df - 0.5);
        double far = Math.Exp(2 * (lnPareto - 0.5 * Math.Log(df)));
        if (df < 1 || far > 1 / (0.05 + a))
        {
            return lnPareto;
        }

        double b = 48 / (a * a);
        double c = ((20700 * a / b - 98) * a - 16) * a + 96.36;
        double d = ((94.5 / (b + c) - 3) / b + 1) * Math.Sqrt(a * Math.PI / 2) * df;
        double x = Normal.InvCDF(0, 1, tail);
        double y = x * x;
        c += df < 5 ? 0.3 * (df - 4.5) * (x + 0.6) : 0;
        c = (((0.05 * d * x - 5) * x - 7) * x - 2) * x + b + c;
        y = (((((0.4 * y + 6.3) * y + 36) * y + 94.5) / c - y - 3) / b + 1) * x;
        return 0.5 * Math.Log(df * (Math.Exp(a * y * y) - 1));
    }

    private static double LnDensity(double t, double df, double lnScale)
    {
        double ratio = t * t / df;
        double lnOnePlus = ratio < 1e-5 ? ratio - ratio * ratio / 2 : Math.Log(1 + ratio);
        return lnScale - (df + 1) / 2 * lnOnePlus;
    }
}

/// <summary>
/// The limits of 95 % and 90 % intervals, t(0.975; df) and t(0.95; df), each worked out once: with complete data all lines of a class share
/// their degrees of freedom. Worked example: at 4 degrees of freedom 2.7764 and 2.1318, in every printed table.
/// </summary>
public sealed class StudentLimits
{
    private const int Most = 4096;
    private readonly Dictionary<double, (double T975, double T95)> _known = [];

    /// <summary>Both limits.</summary>
    /// <param name="df">Degrees of freedom, above 0.</param>
    public (double T975, double T95) Of(double df)
    {
        if (!_known.TryGetValue(df, out (double T975, double T95) limits))
        {
            limits = (StudentT.Quantile(0.975, df), StudentT.Quantile(0.95, df));
            if (_known.Count < Most)
            {
                _known.Add(df, limits);
            }
        }

        return limits;
    }
}
