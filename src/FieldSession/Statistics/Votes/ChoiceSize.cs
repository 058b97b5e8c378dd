using MathNet.Numerics;

namespace FieldSession.Statistics;

/// <summary>What a number of forced choices can show: known before the first of them.</summary>
/// <param name="Trials">Trials planned.</param>
/// <param name="Chance">Chance of a right answer by guessing.</param>
/// <param name="FewestRight">Fewest right, or two-sided fewest on one side, that reach 5 %; null: never.</param>
/// <param name="DetectShare">The share of right answers that is to be found.</param>
/// <param name="PowerAtDetect">Chance to find it.</param>
/// <param name="PowerAt75">Chance to find 75 % right: a subtle difference.</param>
/// <param name="PowerAt90">Chance to find 90 % right: a plain one.</param>
public sealed record ChoiceSize(
    int Trials,
    double Chance,
    int? FewestRight,
    double DetectShare,
    double PowerAtDetect,
    double PowerAt75,
    double PowerAt90
)
{
    /// <summary>Chance of "heard" that is accepted where nothing is heard.</summary>
    public const double Alpha = 0.05;

    /// <summary>Chance to find what is there from which on "not heard" may be said.</summary>
    public const double EnoughPower = 0.8;

    /// <summary>Whether such a set may end in "not heard" at all.</summary>
    public bool CanSayNotHeard => PowerAtDetect >= EnoughPower;

    /// <summary>What a number of trials can show.</summary>
    /// <param name="chance">Chance of a right answer by guessing, above 0 and below 1.</param>
    /// <param name="isTwoSided">Whether no side was named beforehand.</param>
    /// <param name="trials">How many, 0 or more.</param>
    /// <param name="detectShare">The share of right answers that is to be found, above chance and below 1.</param>
    public static ChoiceSize Of(double chance, bool isTwoSided, int trials, double detectShare)
    {
        int? fewest = ForcedChoice.FewestRight(trials, chance, isTwoSided ? Alpha / 2 : Alpha);
        double Power(double share) => ForcedChoice.Power(fewest, trials, share);
        return new ChoiceSize(trials, chance, fewest, detectShare, Power(detectShare), Power(0.75), Power(0.90));
    }

    /// <summary>Fewest trials that find a share with a chance of 80 %, and do so with every larger number up to 200; null: none.</summary>
    /// <param name="chance">Chance of a right answer by guessing, above 0 and below 1.</param>
    /// <param name="isTwoSided">Whether no side was named beforehand.</param>
    /// <param name="detectShare">The share of right answers that is to be found, above chance and below 1.</param>
    public static int? TrialsFor(double chance, bool isTwoSided, double detectShare)
    {
        const int Most = 200;
        int trials = Most;
        while (trials > 0 && Of(chance, isTwoSided, trials, detectShare).CanSayNotHeard)
        {
            trials--;
        }

        return trials == Most ? null : trials + 1;
    }
}

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
        right <= 0 ? 1
        : right > trials ? 0
        : SpecialFunctions.BetaRegularized(right, trials - right + 1, chance);

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

    /// <summary>
    /// Chance that at least so many are right when a share of the answers is right in truth; 0 where that count can't be reached.
    /// </summary>
    /// <param name="fewestRight">The count that the test asks for; null: no count suffices.</param>
    /// <param name="trials">How many trials.</param>
    /// <param name="trueShare">Share of right answers in truth, above 0 and below 1.</param>
    public static double Power(int? fewestRight, int trials, double trueShare) =>
        fewestRight is { } needed ? UpperTail(needed, trials, trueShare) : 0;
}
