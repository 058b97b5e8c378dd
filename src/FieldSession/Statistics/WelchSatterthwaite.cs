namespace FieldSession.Statistics;

/// <summary>
/// Effective degrees of freedom of a sum of variance contributions: (sum v)^2 / sum(v^2 / df)
/// (F. E. Satterthwaite, Biometrics Bulletin 2, 1946; JCGM 100:2008 (GUM) equation G.2b).
/// Worked example: GUM H.1, the end gauge: 16.7.
/// </summary>
public static class WelchSatterthwaite
{
    /// <summary>Effective degrees of freedom; infinite if no contribution has finite ones.</summary>
    /// <param name="variances">The contributions to the variance of the result; their sum is above 0.</param>
    /// <param name="df">Their degrees of freedom, above 0; infinite for an exactly known contribution.</param>
    public static double Df(ReadOnlySpan<double> variances, ReadOnlySpan<double> df)
    {
        double sum = 0;
        double weighted = 0;
        for (int i = 0; i < variances.Length; i++)
        {
            sum += variances[i];
            weighted += variances[i] * variances[i] / df[i];
        }

        return sum * sum / weighted;
    }
}
