using MathNet.Numerics;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace FieldSession.Statistics;

/// <summary>
/// The largest of several |t| that share one estimate of the scatter: treatments against one control (C. W. Dunnett, Journal of the
/// American Statistical Association 50, 1955; two-sided tables: Biometrics 20, 1964). Correlations are products of loadings, b_i b_j (C. W.
/// Dunnett and M. Sobel, Biometrika 42, 1955): P(all |T_i| &lt;= x) is the integral over the scale u and one shared normal z of the product
/// of Phi((b_i z + x u)/r_i) - Phi((b_i z - x u)/r_i), r_i^2 = 1 - b_i^2. Worked example: two treatments, correlation 0.5, 10 degrees of
/// freedom: 5 % lie beyond 2.57 (Dunnett 1964, table II).
/// </summary>
public static class ManyToOneT
{
    private const double FarDf = 1e6;
    private const int MostSteps = 100;
    private const double LimitAccuracy = 1e-9;

    // so far out Bonferroni's limit is the same to three digits, and the integral has no digits left
    private const double LeastTail = 1e-5;
    private const int Panels = 5;
    private const int Points = 8;
    private const double Negligible = 1e-14;

    /// <summary>P(the largest |T_i| &gt; x).</summary>
    /// <param name="x">The limit, 0 or more.</param>
    /// <param name="loadings">One b_i a comparison, each strictly between -1 and 1.</param>
    /// <param name="df">Degrees of freedom that all share, above 0.</param>
    public static double Tail(double x, ReadOnlySpan<double> loadings, double df)
    {
        if (!(x >= 0) || !(df > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(x), "needs a limit of 0 or more and degrees of freedom above 0");
        }

        return Tail(x, Bell.Of(loadings), Scales(df));
    }

    /// <summary>The limit that the largest |T_i| exceeds with this probability.</summary>
    /// <param name="tail">The probability, between 0 and 0.5.</param>
    /// <param name="loadings">One b_i a comparison.</param>
    /// <param name="df">Degrees of freedom.</param>
    /// <remarks>Between one comparison alone and Bonferroni's limit; by Brent's method on the logarithm of the tail.</remarks>
    public static double Limit(double tail, ReadOnlySpan<double> loadings, double df)
    {
        (double low, double high) = (StudentT.Quantile(1 - tail / 2, df), StudentT.Quantile(1 - tail / (2 * loadings.Length), df));
        if (tail < LeastTail || loadings.Length < 2)
        {
            return high;
        }

        Bell bell = Bell.Of(loadings);
        List<(double Scale, double Weight)> scales = Scales(df);
        return Brent.TryFindRoot(x => Math.Log(Tail(x, bell, scales) / tail), low, high, LimitAccuracy, MostSteps, out double limit)
            ? limit
            : high;
    }

    private static double Tail(double x, Bell bell, List<(double Scale, double Weight)> scales)
    {
        double inside = 0;
        foreach ((double scale, double weight) in scales)
        {
            inside += weight * bell.Inside(x * scale);
        }

        return Math.Clamp(1 - inside, 0, 1);
    }

    /// <summary>
    /// Points and weights of the estimated scale sqrt(chi2/df): its density is 2 (df/2)^(df/2) / Gamma(df/2) u^(df-1) exp(-df u^2/2).
    /// </summary>
    private static List<(double Scale, double Weight)> Scales(double df)
    {
        if (df >= FarDf)
        {
            return [(1, 1)];
        }

        // below, u = U v^2 takes the steep beginning out of the density
        bool isSteep = df < 8;
        double low = isSteep ? 0 : Math.Max(0, 1 - 6 / Math.Sqrt(df));
        double high = df < 2 ? 9 : 1 + 8 / Math.Sqrt(df);
        double lnScale = Math.Log(2) + df / 2 * Math.Log(df / 2) - SpecialFunctions.GammaLn(df / 2);
        GaussLegendreRule rule = new(-1, 1, Points);
        List<(double Scale, double Weight)> scales = new(Panels * Points);
        for (int panel = 0; panel < Panels; panel++)
        {
            for (int i = 0; i < Points; i++)
            {
                (double v, double weight) = At(rule, i, panel);
                double u = isSteep ? high * v * v : low + (high - low) * v;
                double slope = isSteep ? 2 * high * v : high - low;
                scales.Add((u, weight * slope * Math.Exp(lnScale + (df - 1) * Math.Log(u) - df * u * u / 2)));
            }
        }

        double total = scales.Sum(scale => scale.Weight);
        return [.. scales.Where(scale => scale.Weight > Negligible * total).Select(scale => (scale.Scale, scale.Weight / total))];
    }

    /// <summary>A point and weight of the rule laid over one of the panels of 0..1.</summary>
    private static (double V, double Weight) At(GaussLegendreRule rule, int i, int panel)
    {
        const double half = 0.5 / Panels;
        return ((2 * panel + 1 + rule.GetAbscissa(i)) * half, rule.GetWeight(i) * half);
    }

    /// <summary>What the shared normal z leaves of the comparisons: a bell over z, the narrower the more they are correlated.</summary>
    private sealed class Bell(double[] loadings, double[] rests, double step)
    {
        private const double FarZ = 8;
        private const double MostStep = 0.5;
        private const double LeastStep = 0.01;

        // The trapezoidal rule misses the area of a bell by 2 exp(-2 pi^2 (width / step)^2), here some 1e-13 (L. N. Trefethen and J. A. C.
        // Weideman, SIAM Review 56, 2014).
        private const double WidthsAStep = 0.8;

        public static Bell Of(ReadOnlySpan<double> loadings)
        {
            double[] rests = new double[loadings.Length];
            double narrowness = 1;
            for (int i = 0; i < loadings.Length; i++)
            {
                double left = 1 - loadings[i] * loadings[i];
                rests[i] = Math.Sqrt(left);
                narrowness += loadings[i] * loadings[i] / left;
            }

            return new Bell(loadings.ToArray(), rests, Math.Clamp(WidthsAStep / Math.Sqrt(narrowness), LeastStep, MostStep));
        }

        /// <summary>P(all |Z_i| &lt;= limit); even in z, because turning all signs round changes nothing.</summary>
        public double Inside(double limit)
        {
            double sum = Product(0, limit) / 2;
            for (double z = step; z < FarZ; z += step)
            {
                sum += Math.Exp(-z * z / 2) * Product(z, limit);
            }

            return 2 * step * sum / Constants.Sqrt2Pi;
        }

        private double Product(double z, double limit)
        {
            double product = 1;
            for (int i = 0; i < loadings.Length; i++)
            {
                product *= Phi((loadings[i] * z + limit) / rests[i]) - Phi((loadings[i] * z - limit) / rests[i]);
            }

            return product;
        }

        private static double Phi(double x) => SpecialFunctions.Erfc(-x / Constants.Sqrt2) / 2;
    }
}
