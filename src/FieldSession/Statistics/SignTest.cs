namespace FieldSession.Statistics;

/// <summary>
/// The sign test: how many paired differences are above and below 0, zeros dropped, against an even chance (exact binomial).
/// Source: W. J. Dixon, A. M. Mood, J. Am. Stat. Assoc. 41, 1946. Worked example: 3 above, 1 below: p = 0.625.
/// </summary>
public static class SignTest
{
    /// <summary>Counts and two-sided p.</summary>
    /// <param name="Plus">Differences above 0.</param>
    /// <param name="Minus">Differences below 0.</param>
    /// <param name="PTwoSided">Twice the smaller tail, at most 1; 1 if all are zero.</param>
    public readonly record struct Result(int Plus, int Minus, double PTwoSided);

    /// <summary>The test.</summary>
    public static Result Of(ReadOnlySpan<double> differences)
    {
        (int plus, int minus) = (0, 0);
        foreach (double difference in differences)
        {
            plus += difference > 0 ? 1 : 0;
            minus += difference < 0 ? 1 : 0;
        }

        return new Result(plus, minus, ExactBinomial.PTwoSided(plus, plus + minus));
    }
}
