using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace FieldSession.Statistics;

/// <summary>
/// The largest of several |t| that share one estimate of the scatter: treatments against one control (C. W. Dunnett, Journal of the American
/// Statistical Association 50, 1955; two-sided tables: Biometrics 20, 1964). Correlations are products of loadings, b_i b_j (C. W. Dunnett and
/// M. Sobel, Biometrika 42, 1955): P(all |T_i| &lt;= x) is the integral over the scale u and one shared normal z of the product of
/// Phi((b_i z + x u)/r_i) - Phi((b_i z - x u)/r_i), r_i^2 = 1 - b_i^2.
/// Worked example: two treatments, correlation 0.5, 10 degrees of freedom: 5 % lie beyond 2.57 (Dunnett 1964, table II).
/// </summary>
public static class ManyToOneT
{
    private const double FarDf = 1e6;
    private const double FarZ = 8;
    private const int MostSteps = 40;

    // so far out Bonferroni's limit is the same to three digits, and the integral has no digits left
    private const double LeastTail = 1e-5;
    private const int Panels = 5;
    private const int Points = 8;

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

        double inside = 0;
        foreach ((double scale, double weight) in Scales(df))
        {
            inside += weight * Inside(x * scale, loadings);
        }

        return Math.Clamp(1 - inside, 0, 1);
    }

    /// <summary>The limit that the largest |T_i| exceeds with this probability.</summary>
    /// <param name="tail">The probability, between 0 and 0.5.</param>
    /// <param name="loadings">One b_i a comparison.</param>
    /// <param name="df">Degrees of freedom.</param>
    /// <remarks>Between one comparison alone and Bonferroni's limit; false position on the logarithm of the tail (Illinois variant).</remarks>
    public static double Limit(double tail, ReadOnlySpan<double> loadings, double df)
    {
        (double low, double high) = (StudentT.Quantile(1 - tail / 2, df), StudentT.Quantile(1 - tail / (2 * loadings.Length), df));
        if (tail < LeastTail || loadings.Length < 2)
        {
            return high;
        }

        return Between(low, high, Math.Log(tail), loadings, df);
    }

    private static double Between(double low, double high, double wanted, ReadOnlySpan<double> loadings, double df)
    {
        (double atLow, double atHigh) = (Math.Log(Tail(low, loadings, df)) - wanted, Math.Log(Tail(high, loadings, df)) - wanted);
        for (int i = 0; i < MostSteps && atLow > 0 && atHigh < 0; i++)
        {
            double x = (low * atHigh - high * atLow) / (atHigh - atLow);
            double at = Math.Log(Tail(x, loadings, df)) - wanted;
            if (Math.Abs(at) < 1e-8)
            {
                return x;
            }

            (low, atLow, high, atHigh) = at > 0 ? (x, at, high, atHigh / 2) : (low, atLow / 2, x, at);
        }

        return atLow <= 0 ? low : high;
    }

    // even in z, because turning all signs round changes nothing
    private static double Inside(double limit, ReadOnlySpan<double> loadings)
    {
        GaussLegendreRule rule = new(-1, 1, Points);
        double sum = 0;
        for (int panel = 0; panel < Panels; panel++)
        {
            for (int i = 0; i < Points; i++)
            {
                (double z, double weight) = At(rule, i, panel);
                z *= FarZ;
                double product = 2 * FarZ * weight * Math.Exp(-z * z / 2) / Constants.Sqrt2Pi;
                foreach (double loading in loadings)
                {
                    double rest = Math.Sqrt(1 - loading * loading);
                    product *= Phi((loading * z + limit) / rest) - Phi((loading * z - limit) / rest);
                }

                sum += product;
            }
        }

        return sum;
    }

    /// <summary>Points and weights of the estimated scale sqrt(chi2/df): its density is 2 (df/2)^(df/2) / Gamma(df/2) u^(df-1) exp(-df u^2/2).</summary>
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
        return [.. scales.Select(scale => (scale.Scale, scale.Weight / total))];
    }

    /// <summary>A point and weight of the rule laid over one of the panels of 0..1.</summary>
    private static (double V, double Weight) At(GaussLegendreRule rule, int i, int panel)
    {
        const double half = 0.5 / Panels;
        return ((2 * panel + 1 + rule.GetAbscissa(i)) * half, rule.GetWeight(i) * half);
    }

    private static double Phi(double x) => SpecialFunctions.Erfc(-x / Constants.Sqrt2) / 2;
}
