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

/// <summary>
/// How many values per side a comparison of two means needs: standard error sd sqrt(2/n), 2n - 2 degrees of freedom, power from the
/// noncentral t distribution, equivalence from the power of the two one-sided tests. Worked example: sd 0.2549510, 4 a side: the smallest
/// difference shown with 80 % chance is 0.60698.
/// </summary>
public static class TwoSampleSize
{
    /// <summary>Most values per side that are tried.</summary>
    public const int MostPerSide = 200;

    /// <summary>The smallest true difference that n a side show with this power, n 2 or more.</summary>
    public static double? SmallestDifference(double sd, int perSide, double power, double alpha) =>
        NoncentralT.NoncentralityForPower(power, 2 * perSide - 2, alpha) * StandardError(sd, perSide);

    /// <summary>The chance that n a side show a true difference.</summary>
    public static double Power(double sd, int perSide, double difference, double alpha) =>
        NoncentralT.TwoSidedPower(
            Math.Min(NoncentralT.LargestNoncentrality, Math.Abs(difference) / StandardError(sd, perSide)),
            2 * perSide - 2,
            alpha
        );

    /// <summary>Fewest a side (2 or more) that show a true difference with this power; null if 200 do not.</summary>
    public static int? PerSideForDifference(double sd, double difference, double power, double alpha) =>
        Fewest(n => Power(sd, n, difference, alpha), power);

    /// <summary>The chance that n a side show equivalence within the margin when there is no difference at all.</summary>
    public static double EquivalencePower(double sd, int perSide, double margin, double alpha) =>
        Tost.Power(0, StandardError(sd, perSide), 2 * perSide - 2, margin, alpha);

    /// <summary>Fewest a side (2 or more) that show equivalence with this power when there is no difference; null if 200 do not.</summary>
    public static int? PerSideForEquivalence(double sd, double margin, double power, double alpha) =>
        Fewest(n => EquivalencePower(sd, n, margin, alpha), power);

    private static double StandardError(double sd, int perSide) => sd * Math.Sqrt(2.0 / perSide);

    private static int? Fewest(Func<int, double> powerAt, double power)
    {
        for (int perSide = 2; perSide <= MostPerSide; perSide++)
        {
            if (powerAt(perSide) >= power)
            {
                return perSide;
            }
        }

        return null;
    }
}
