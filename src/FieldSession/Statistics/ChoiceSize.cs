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
    int Trials, double Chance, int? FewestRight, double DetectShare, double PowerAtDetect, double PowerAt75, double PowerAt90)
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
