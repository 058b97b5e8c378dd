using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace FieldSession.Statistics;

/// <summary>
/// Two one-sided tests of equivalence within plus or minus a margin (D. J. Schuirmann, J. Pharmacokin. Biopharm. 15, 1987).
/// Worked example: margin 1, standard error 0.38, 4 degrees of freedom, true difference 0: power 0.4587 (R: integrate).
/// </summary>
public static class Tost
{
    /// <summary>The larger of the two one-sided p; below alpha exactly when the 1 - 2 alpha interval lies inside the margin.</summary>
    public static double P(double difference, double standardError, double df, double margin) =>
        Math.Max(
            StudentT.UpperTail((difference + margin) / standardError, df),
            StudentT.UpperTail((margin - difference) / standardError, df)
        );

    /// <summary>
    /// The chance that the test shows equivalence at a true difference: integral over the scale u of the estimated standard error of
    /// Phi((h - theta)/SE) - Phi((-h - theta)/SE), h = margin - t(1-alpha) SE u, with the chi density of u; u = U v^2, 48 Gauss-Legendre
    /// panels.
    /// </summary>
    public static double Power(double trueDifference, double standardError, double df, double margin, double alpha)
    {
        double t = StudentT.Quantile(1 - alpha, df);
        double widest = Math.Min(df < 2 ? 9 : 1 + 8 / Math.Sqrt(df), margin / (t * standardError));
        double lnScale = Math.Log(2) + df / 2 * Math.Log(df / 2) - SpecialFunctions.GammaLn(df / 2);
        double At(double v)
        {
            double u = widest * v * v;
            double h = margin - t * standardError * u;
            double within = Phi((h - trueDifference) / standardError) - Phi((-h - trueDifference) / standardError);
            double density = Math.Exp(lnScale + (df - 1) * Math.Log(u) - df * u * u / 2);
            return Math.Max(0, within) * density * 2 * widest * v;
        }

        double sum = 0;
        const int panels = 48;
        for (int i = 0; i < panels; i++)
        {
            sum += GaussLegendreRule.Integrate(At, (double)i / panels, (double)(i + 1) / panels, 16);
        }

        return sum;
    }

    private static double Phi(double x) => SpecialFunctions.Erfc(-x / Constants.Sqrt2) / 2;
}
