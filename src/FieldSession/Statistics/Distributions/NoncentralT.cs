using MathNet.Numerics;
using MathNet.Numerics.Distributions;

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

    /// <summary>
    /// P(|T| &gt; t(1 - alpha/2; df)): the chance that a two-sided test at alpha sees an effect of this many standard errors.
    /// </summary>
    public static double TwoSidedPower(double noncentrality, double df, double alpha) =>
        1 - new TwoSided(StudentT.Quantile(1 - alpha / 2, df), df).Missed(noncentrality).Chance;

    /// <summary>
    /// The effect in standard errors that a two-sided test at alpha sees with the wanted power; null if it lies beyond 37.
    /// </summary>
    /// <remarks>
    /// Newton's method on the logarithm of the chance to miss, which is concave like that of a normal tail, from the approximation of
    /// N. L. Johnson and B. L. Welch (Biometrika 31, 1940).
    /// </remarks>
    public static double? NoncentralityForPower(double power, double df, double alpha)
    {
        double limit = StudentT.Quantile(1 - alpha / 2, df);
        if (!(power > alpha && power < 1))
        {
            return null;
        }

        TwoSided test = new(limit, df);
        double wanted = Math.Log(1 - power);
        double start = limit * (1 - 1 / (4 * df + 1)) + Normal.InvCDF(0, 1, power) * Math.Sqrt(1 + limit * limit / (2 * df));
        double noncentrality = Math.Clamp(start, 0.1, LargestNoncentrality);
        for (int i = 0; i < 60; i++)
        {
            (double missed, double slope) = test.Missed(noncentrality);
            double step = (Math.Log(missed) - wanted) * missed / slope;
            if (noncentrality == LargestNoncentrality && step < 0)
            {
                return null;
            }

            double next = Math.Clamp(noncentrality - step, noncentrality / 4, LargestNoncentrality);
            if (Math.Abs(next - noncentrality) <= 1e-8 * noncentrality)
            {
                return next;
            }

            noncentrality = next;
        }

        return noncentrality;
    }

    /// <summary>
    /// The chance that |T| stays below a limit. T^2 is noncentral F: sum over j of Poisson(j; nc^2/2) I_x(j + 1/2, df/2), the odd terms of
    /// Lenth's sum alone; its slope comes from the same terms.
    /// </summary>
    private readonly struct TwoSided
    {
        private readonly double _x;
        private readonly double _b;
        private readonly double _first;
        private readonly double _firstDrop;

        public TwoSided(double limit, double df)
        {
            _x = limit * limit / (limit * limit + df);
            _b = df / 2;
            _first = 1 - 2 * StudentT.UpperTail(limit, df);
            double lnY = Math.Log(df / (limit * limit + df));
            _firstDrop = 2 * Math.Exp(0.5 * Math.Log(_x) + _b * lnY - SpecialFunctions.BetaLn(0.5, _b));
        }

        /// <summary>The chance, and its slope over the noncentrality.</summary>
        public (double Chance, double Slope) Missed(double noncentrality)
        {
            double lambda = noncentrality * noncentrality / 2;
            double poisson = Math.Exp(-lambda);
            double left = 1 - poisson;
            (double below, double drop) = (_first, _firstDrop);
            (double chance, double slope) = (0, 0);
            for (int j = 0; j < 4000; j++)
            {
                chance += poisson * below;
                slope -= poisson * drop;
                if (j > lambda && left * below < 1e-16)
                {
                    break;
                }

                below -= drop;
                drop *= _x * (j + 0.5 + _b) / (j + 1.5);
                poisson *= lambda / (j + 1);
                left -= poisson;
            }

            return (chance, slope * noncentrality);
        }
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
