using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>What was chosen in a set.</summary>
/// <param name="Made">Trials made.</param>
/// <param name="Right">Two-sided: choices of the code chosen more often; one-sided: of the code expected; triangle: the odd one found.</param>
/// <param name="RightCode">The code that <paramref name="Right"/> counts; null: a triangle.</param>
/// <param name="P">Exact p against guessing, by the side that was fixed.</param>
/// <param name="LowShare">Lower end of the exact 95 % interval of the share of <paramref name="Right"/>; one-sided: the lower 95 % limit, as the test asks.</param>
/// <param name="HighShare">Upper end of it; one-sided: 1.</param>
/// <param name="FirstPlace">How often the first place was chosen, whatever was there: far from even is a habit, not a difference.</param>
/// <param name="Persons">Each person's own count.</param>
public sealed record ChoiceCounts(
    int Made, int Right, SpecCode? RightCode, double P, double LowShare, double HighShare, int FirstPlace, IReadOnlyList<PersonCount> Persons)
{
    private const double Level = 0.95;
    private const double OneSidedLevel = 0.90;

    /// <summary>Whether the test asks in one direction: a code was expected, or the odd one was to be found.</summary>
    public bool IsOneSided { get; private init; }

    /// <summary>The counts of some choices of a set, one or more.</summary>
    public static ChoiceCounts Of(ChoiceSet set, IReadOnlyCollection<Choice> choices)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(choices);
        ChoiceTerms terms = set.Terms;
        int first = choices.Count(choice => set.CodeAt(choice.Trial, choice.Place) == terms.First);
        SpecCode favourite = terms.Expected ?? (first * 2 >= choices.Count ? terms.First : terms.Second);
        SpecCode? counted = terms.Kind == ChoiceKind.Triangle ? null : favourite;
        bool IsRight(Choice choice) => counted is { } code
            ? set.CodeAt(choice.Trial, choice.Place) == code
            : set.IsOdd(choice.Trial, choice.Place);
        int right = choices.Count(IsRight);
        bool isOneSided = !terms.IsTwoSided;
        (double low, double high) = ExactBinomial.Interval(right, choices.Count, isOneSided ? OneSidedLevel : Level);
        return new ChoiceCounts(
            choices.Count,
            right,
            counted,
            POf(terms, right, choices.Count),
            low,
            isOneSided ? 1 : high,
            choices.Count(choice => choice.Place == 1),
            [.. choices.GroupBy(choice => choice.Person).Select(own => new PersonCount(own.Key, own.Count(IsRight), own.Count()))])
        {
            IsOneSided = isOneSided,
        };
    }

    private static double POf(ChoiceTerms terms, int right, int made)
    {
        double oneSided = ForcedChoice.UpperTail(right, made, terms.Chance);
        return terms.IsTwoSided ? Math.Min(1, 2 * oneSided) : oneSided;
    }
}

/// <summary>One person's own count in a set.</summary>
/// <param name="Person">Who chose.</param>
/// <param name="Right">As in <see cref="ChoiceCounts.Right"/>.</param>
/// <param name="Made">Choices of this person.</param>
public sealed record PersonCount(string Person, int Right, int Made);
