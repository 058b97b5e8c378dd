using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>What a number of forced choices can show: known before the first of them.</summary>
/// <param name="Trials">Trials planned.</param>
/// <param name="Chance">Chance of a right answer by guessing.</param>
/// <param name="FewestRight">Fewest right, or two-sided fewest on one side, that reach 5 %; null: never.</param>
/// <param name="DetectShare">The share of right answers that is to be found.</param>
/// <param name="PowerAtDetect">Chance to find it.</param>
/// <param name="PowerAt75">Chance to find 75 % right: a subtle difference.</param>
/// <param name="PowerAt90">Chance to find 90 % right: a plain one.</param>
public sealed record ChoiceSize(
    int Trials, double Chance, int? FewestRight, double DetectShare, double PowerAtDetect, double PowerAt75, double PowerAt90)
{
    /// <summary>Chance of "heard" that is accepted where nothing is heard.</summary>
    public const double Alpha = 0.05;

    /// <summary>Chance to find what is there from which on "not heard" may be said.</summary>
    public const double EnoughPower = 0.8;

    /// <summary>What a number of trials can show.</summary>
    /// <param name="kind">How the choice is put.</param>
    /// <param name="isOneSided">Whether the code expected was named beforehand; a triangle has but one side.</param>
    /// <param name="trials">How many, 1 or more.</param>
    /// <param name="detectShare">The share of right answers that is to be found, above chance and below 1.</param>
    public static ChoiceSize Of(ChoiceKind kind, bool isOneSided, int trials, double detectShare)
    {
        double chance = ChanceOf(kind);
        bool isTwoSided = kind == ChoiceKind.Paired && !isOneSided;
        int? fewest = ForcedChoice.FewestRight(trials, chance, isTwoSided ? Alpha / 2 : Alpha);
        double Power(double share) => ForcedChoice.Power(fewest, trials, share);
        return new ChoiceSize(trials, chance, fewest, detectShare, Power(detectShare), Power(0.75), Power(0.90));
    }

    /// <summary>Fewest trials that find a share with a chance of 80 %, and do so with every larger number up to 200; null: none.</summary>
    public static int? TrialsFor(ChoiceKind kind, bool isOneSided, double detectShare)
    {
        const int Most = 200;
        int trials = Most;
        while (trials > 0 && Of(kind, isOneSided, trials, detectShare).PowerAtDetect >= EnoughPower)
        {
            trials--;
        }

        return trials == Most ? null : trials + 1;
    }

    /// <summary>Chance of a right answer by guessing.</summary>
    public static double ChanceOf(ChoiceKind kind) => kind == ChoiceKind.Triangle ? 1 / 3.0 : 1 / 2.0;
}
