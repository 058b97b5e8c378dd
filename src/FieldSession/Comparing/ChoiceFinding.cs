using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The ear's word, by fixed rules from a planned set of forced choices.</summary>
public enum EarVerdict
{
    /// <summary>The set is at its planned end and at or under 5 %.</summary>
    HeardBlind,

    /// <summary>The set is at its planned end, above 5 %, and had a chance of 80 % or more to find the share it was planned for.</summary>
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
/// <param name="IsRepeat">Whether an earlier set asked about the same pair, however the question was worded: its word stands, this one is explored.</param>
/// <param name="Size">What the planned number can show.</param>
/// <param name="Counts">What was chosen; null: covered still, or nothing chosen.</param>
public sealed record ChoiceFinding(
    int Set, ChoiceTerms Terms, string? Segment, int Planned, int Made, bool IsRepeat, ChoiceSize Size, ChoiceCounts? Counts)
{
    /// <summary>Whether every planned trial is made.</summary>
    public bool IsComplete => Made >= Planned;

    /// <summary>The word.</summary>
    public EarVerdict Verdict => (IsComplete, Counts) switch
    {
        (true, { } counts) when counts.P <= ChoiceSize.Alpha => EarVerdict.HeardBlind,
        (true, { }) when Size.PowerAtDetect >= ChoiceSize.EnoughPower => EarVerdict.NotHeard,
        _ => EarVerdict.NotTestedEnough,
    };

    /// <summary>The finding on one set of a study.</summary>
    public static ChoiceFinding Of(Study study, ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        bool isShown = set.Choices.Count > 0 && set.IsShown(study);
        return new ChoiceFinding(
            set.Number,
            set.Terms,
            set.Terms.Segment is { } segment ? study.Plan?.Route[segment - 1].Name : null,
            set.Presentations.Count,
            set.Choices.Count,
            study.ChoiceSets.Any(other => other.Number < set.Number && other.Terms.IsPair(set.Terms.First, set.Terms.Second)),
            ChoiceSize.Of(set.Terms.Kind, set.Terms.Expected is not null, set.Presentations.Count, set.Terms.DetectShare),
            isShown ? ChoiceCounts.Of(set) : null);
    }
}
