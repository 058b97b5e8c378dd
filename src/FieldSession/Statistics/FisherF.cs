using MathNet.Numerics;

namespace FieldSession.Statistics;

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
