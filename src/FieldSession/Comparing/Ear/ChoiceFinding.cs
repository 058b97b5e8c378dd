using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>The ear's word, by fixed rules from a planned set of forced choices.</summary>
public enum EarVerdict
{
    /// <summary>The set is at its planned end, and its unseen choices are at or under 5 %.</summary>
    HeardBlind,

    /// <summary>
    /// The set is at its planned end, its unseen choices are above 5 %, and so many had a chance of 80 % or more to find the share it was
    /// planned for.
    /// </summary>
    NotHeard,

    /// <summary>Anything else.</summary>
    NotTestedEnough,
}

/// <summary>What a set of forced choices says. Nothing of the counts is known before the planned end or before the data freeze.</summary>
/// <param name="Set">Number of the set.</param>
/// <param name="Terms">What was fixed before the first choice.</param>
/// <param name="Segment">Name of the segment; null: any.</param>
/// <param name="Planned">Trials planned.</param>
/// <param name="Made">Trials made.</param>
/// <param name="IsRepeat">Whether an earlier set asked about the same pair, however the question was worded: its word counts, this one is
/// explored.</param>
/// <param name="Size">What the planned number can show; at the planned end, what the number of unseen choices can.</param>
/// <param name="Counts">What was chosen by those who had seen neither meter nor order; null: covered still, or nobody chose so.</param>
public sealed record ChoiceFinding(
    int Set,
    ChoiceTerms Terms,
    string? Segment,
    int Planned,
    int Made,
    bool IsRepeat,
    ChoiceSize Size,
    ChoiceCounts? Counts
)
{
    /// <summary>What was chosen by those who had read the meter or could see a comparison; null: covered still, or nobody.</summary>
    public ChoiceCounts? MeterSeen { get; init; }

    /// <summary>What was chosen by those who had been shown the order; null: covered still, or nobody.</summary>
    public ChoiceCounts? OrderSeen { get; init; }

    /// <summary>Whether its trials were played from recordings.</summary>
    public bool IsFromRecordings { get; init; }

    /// <summary>Whether what was chosen is still covered.</summary>
    public bool IsCovered => Made > 0 && Counts is null && MeterSeen is null && OrderSeen is null;

    /// <summary>Whether every planned trial is made.</summary>
    public bool IsComplete => Made >= Planned;

    /// <summary>The word.</summary>
    public EarVerdict Verdict =>
        (IsComplete, Counts) switch
        {
            (true, { } counts) when counts.P <= ChoiceSize.Alpha => EarVerdict.HeardBlind,
            (true, { }) when Size.CanSayNotHeard => EarVerdict.NotHeard,
            _ => EarVerdict.NotTestedEnough,
        };

    /// <summary>The finding on one set of a study.</summary>
    public static ChoiceFinding Of(Study study, ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        Choice[] By(ChoiceSight sight) => [.. set.Choices.Where(choice => choice.Sight == sight)];
        ChoiceCounts? Counted(ChoiceSight sight) =>
            set.IsShown(study) && By(sight) is { Length: > 0 } choices ? ChoiceCounts.Of(set, choices) : null;
        int trials = set.IsComplete ? By(ChoiceSight.Unseen).Length : set.Presentations.Count;
        return new ChoiceFinding(
            set.Number,
            set.Terms,
            set.Terms.Segment is { } segment ? study.Plan?.Route[segment - 1].Name : null,
            set.Presentations.Count,
            set.Choices.Count,
            study.ChoiceSets.Any(other => other.Number < set.Number && other.Terms.IsPair(set.Terms.First, set.Terms.Second)),
            ChoiceSize.Of(set.Terms.Chance, set.Terms.IsTwoSided, trials, set.Terms.DetectShare),
            Counted(ChoiceSight.Unseen)
        )
        {
            MeterSeen = Counted(ChoiceSight.MeterSeen),
            OrderSeen = Counted(ChoiceSight.OrderSeen),
            IsFromRecordings = set.IsFromRecordings,
        };
    }
}

/// <summary>What was chosen in a set.</summary>
/// <param name="Made">Trials made.</param>
/// <param name="Right">Two-sided: choices of the code chosen more often; one-sided: of the code expected; triangle: the odd one
/// found.</param>
/// <param name="RightCode">The code that <paramref name="Right"/> counts; null: a triangle.</param>
/// <param name="P">Exact p against guessing, by the side that was fixed.</param>
/// <param name="LowShare">Lower end of the exact 95 % interval of the share of <paramref name="Right"/>; one-sided: the lower 95 % limit,
/// as the test asks.</param>
/// <param name="HighShare">Upper end of it; one-sided: 1.</param>
/// <param name="FirstPlace">How often the first place was chosen, whatever was there: far from even is a habit, not a difference.</param>
/// <param name="Persons">Each person's own count.</param>
public sealed record ChoiceCounts(
    int Made,
    int Right,
    SpecCode? RightCode,
    double P,
    double LowShare,
    double HighShare,
    int FirstPlace,
    IReadOnlyList<PersonCount> Persons
)
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
        bool IsRight(Choice choice) =>
            counted is { } code ? set.CodeAt(choice.Trial, choice.Place) == code : set.IsOdd(choice.Trial, choice.Place);
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
            [.. choices.GroupBy(choice => choice.Person).Select(own => new PersonCount(own.Key, own.Count(IsRight), own.Count()))]
        )
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
