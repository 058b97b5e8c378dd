using FieldSession.Statistics;

namespace FieldSession.Tests.Statistics;

/// <summary>
/// Wilcoxon's signed-rank test (F. Wilcoxon, Biometrics Bulletin 1, 1945): zeros dropped, midranks of |d|, then the sign-flip test of the
/// signed ranks, which is its exact null distribution also with ties. Worked example: Darwin's maize, V = 96, p = 0.0413.
/// </summary>
public static class SignedRank
{
    /// <summary>Sum of the ranks of positive differences, and the exact two-sided p.</summary>
    /// <param name="V">Sum of positive ranks.</param>
    /// <param name="PTwoSided">Share of sign patterns at least as far out.</param>
    public readonly record struct Result(double V, double PTwoSided);

    /// <summary>The test, for 1 .. 20 differences that are not 0.</summary>
    public static Result Of(ReadOnlySpan<double> differences)
    {
        double[] signed = [.. differences.ToArray().Where(d => d != 0)];
        double[] sizes = [.. signed.Select(Math.Abs)];
        double[] ranks = Midranks.Of(sizes);
        double v = 0;
        for (int i = 0; i < signed.Length; i++)
        {
            v += signed[i] > 0 ? ranks[i] : 0;
            ranks[i] *= Math.Sign(signed[i]);
        }

        return new Result(v, SignFlip.Exact(ranks).TwoSided);
    }
}
