using MathNet.Numerics;

namespace FieldSession.Statistics;

/// <summary>
/// Exact tests of a count of right answers against any chance: a half in a paired comparison (ISO 5495), a third in a triangle
/// (ISO 4120). Sums of binomial probabilities by the incomplete beta function (M. Abramowitz, I. A. Stegun, Handbook of
/// Mathematical Functions, 1964, 26.5.24). Worked example: 12 trials at a chance of a third need 8 right at 5 %.
/// </summary>
public static class ForcedChoice
{
    /// <summary>P(X &gt;= right): so many right or more by chance alone.</summary>
    /// <param name="right">0 .. trials.</param>
    /// <param name="trials">0 or more.</param>
    /// <param name="chance">Chance of a right answer, above 0 and below 1.</param>
    public static double UpperTail(int right, int trials, double chance) =>
        right <= 0 ? 1 : right > trials ? 0 : SpecialFunctions.BetaRegularized(right, trials - right + 1, chance);

    /// <summary>Fewest right answers whose upper tail is at most alpha; null if not even all of them suffice.</summary>
    public static int? FewestRight(int trials, double chance, double alpha)
    {
        for (int right = 0; right <= trials; right++)
        {
            if (UpperTail(right, trials, chance) <= alpha)
            {
                return right;
            }
        }

        return null;
    }

    /// <summary>Chance that at least so many are right when a share of the answers is right in truth; 0 where that count can't be reached.</summary>
    /// <param name="fewestRight">The count that the test asks for; null: no count suffices.</param>
    /// <param name="trials">How many trials.</param>
    /// <param name="trueShare">Share of right answers in truth, above 0 and below 1.</param>
    public static double Power(int? fewestRight, int trials, double trueShare) =>
        fewestRight is { } needed ? UpperTail(needed, trials, trueShare) : 0;
}
