namespace FieldSession.Statistics;

/// <summary>
/// The sign-flip (randomisation) test of paired differences: every pattern of signs is as likely as the observed one
/// (R. A. Fisher, The Design of Experiments, 1935, section 21; E. J. G. Pitman, 1937). Exact up to 20 differences, above that from drawn
/// patterns. Worked example: Darwin's 15 pairs of maize, p = 0.0527.
/// </summary>
public static class SignFlip
{
    /// <summary>How many differences are still enumerated.</summary>
    public const int MostEnumerated = 20;

    private const double Equal = 1e-9;

    /// <summary>Shares of sign patterns at least as far out as the observed sum.</summary>
    /// <param name="TwoSided">On either side.</param>
    /// <param name="Greater">On the side of larger sums.</param>
    /// <param name="SmallestTwoSided">The smallest two-sided p that these differences can give: 2 / 2^(differences that are not 0), at most
    /// 1.</param>
    public readonly record struct Result(double TwoSided, double Greater, double SmallestTwoSided);

    /// <summary>The test by full enumeration, for 1 .. 20 differences.</summary>
    public static Result Exact(ReadOnlySpan<double> differences)
    {
        if (differences.Length is 0 or > MostEnumerated)
        {
            throw new ArgumentOutOfRangeException(nameof(differences), "needs 1 to 20 differences");
        }

        int patterns = 1 << differences.Length;
        (int twoSided, int greater) = (0, 0);
        double observed = Sum(differences);
        for (int pattern = 0; pattern < patterns; pattern++)
        {
            double sum = Flipped(differences, pattern);
            twoSided += Math.Abs(sum) >= Math.Abs(observed) - Equal ? 1 : 0;
            greater += sum >= observed - Equal ? 1 : 0;
        }

        return new Result((double)twoSided / patterns, (double)greater / patterns, Smallest(differences));
    }

    /// <summary>The test from drawn patterns, the observed one counted in; for more differences than can be enumerated.</summary>
    /// <param name="differences">The differences.</param>
    /// <param name="nextBit">The lot: true or false with even chance. It comes from outside so that a result can be had again.</param>
    /// <param name="draws">How many patterns are drawn.</param>
    public static Result Drawn(ReadOnlySpan<double> differences, Func<bool> nextBit, int draws)
    {
        (int twoSided, int greater) = (1, 1);
        double observed = Sum(differences);
        for (int draw = 0; draw < draws; draw++)
        {
            double sum = 0;
            foreach (double difference in differences)
            {
                sum += nextBit() ? difference : -difference;
            }

            twoSided += Math.Abs(sum) >= Math.Abs(observed) - Equal ? 1 : 0;
            greater += sum >= observed - Equal ? 1 : 0;
        }

        return new Result(twoSided / (draws + 1.0), greater / (draws + 1.0), Smallest(differences));
    }

    private static double Sum(ReadOnlySpan<double> differences)
    {
        double sum = 0;
        foreach (double difference in differences)
        {
            sum += difference;
        }

        return sum;
    }

    private static double Flipped(ReadOnlySpan<double> differences, int pattern)
    {
        double sum = 0;
        for (int i = 0; i < differences.Length; i++)
        {
            sum += (pattern >> i & 1) == 0 ? differences[i] : -differences[i];
        }

        return sum;
    }

    private static double Smallest(ReadOnlySpan<double> differences)
    {
        int nonzero = 0;
        foreach (double difference in differences)
        {
            nonzero += difference != 0 ? 1 : 0;
        }

        return Math.Min(1, Math.Pow(2, 1 - nonzero));
    }
}
