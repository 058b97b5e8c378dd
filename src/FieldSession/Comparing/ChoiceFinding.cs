using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>The ear's word, by fixed rules from a planned set of forced choices.</summary>
public enum EarVerdict
{
    /// <summary>The set is at its planned end, and its unseen choices are at or under 5 %.</summary>
    HeardBlind,

    /// <summary>The set is at its planned end, its unseen choices are above 5 %, and so many had a chance of 80 % or more to find the share it was planned for.</summary>
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
/// <param name="IsRepeat">Whether an earlier set asked about the same pair, however the question was worded: its word counts, this one is explored.</param>
/// <param name="Size">What the planned number can show; at the planned end, what the number of unseen choices can.</param>
/// <param name="Counts">What was chosen by those who had seen neither meter nor order; null: covered still, or nobody chose so.</param>
public sealed record ChoiceFinding(
    int Set, ChoiceTerms Terms, string? Segment, int Planned, int Made, bool IsRepeat, ChoiceSize Size, ChoiceCounts? Counts)
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
    public EarVerdict Verdict => (IsComplete, Counts) switch
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
        ChoiceCounts? Counted(ChoiceSight sight) => set.IsShown(study) && By(sight) is { Length: > 0 } choices ? ChoiceCounts.Of(set, choices) : null;
        int trials = set.IsComplete ? By(ChoiceSight.Unseen).Length : set.Presentations.Count;
        return new ChoiceFinding(
            set.Number,
            set.Terms,
            set.Terms.Segment is { } segment ? study.Plan?.Route[segment - 1].Name : null,
            set.Presentations.Count,
            set.Choices.Count,
            study.ChoiceSets.Any(other => other.Number < set.Number && other.Terms.IsPair(set.Terms.First, set.Terms.Second)),
            ChoiceSize.Of(set.Terms.Chance, set.Terms.IsTwoSided, trials, set.Terms.DetectShare),
            Counted(ChoiceSight.Unseen))
        {
            MeterSeen = Counted(ChoiceSight.MeterSeen),
            OrderSeen = Counted(ChoiceSight.OrderSeen),
            IsFromRecordings = set.IsFromRecordings,
        };
    }
}
