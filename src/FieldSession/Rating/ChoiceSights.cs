using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// What somebody could know of the answer before choosing (own rule, docs/formulas.md, "The ear"): until both codes of the pair have been read on the meter
/// nothing can be known. From then on who sat at the meter knows; anybody else could have looked, unless they say that they did not.
/// </summary>
public static class ChoiceSights
{
    /// <summary>What a choice made now rests on.</summary>
    /// <param name="study">The study before the choice.</param>
    /// <param name="set">The set.</param>
    /// <param name="member">Who chooses.</param>
    /// <param name="saysUnseen">Whether they say that they saw neither meter nor comparison.</param>
    public static ChoiceSight Of(Study study, ChoiceSet set, CrewMember member, bool saysUnseen)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(member);
        return set.IsRunBy(member.Name) ? ChoiceSight.OrderSeen

            // whoever knows what the meter showed still does not know which clip is which: that is drawn when it is played
            : set.IsFromRecordings ? ChoiceSight.Unseen
            : !IsComparable(study, set) ? ChoiceSight.Unseen
            : saysUnseen && !HasReadMeter(study, set, member) ? ChoiceSight.Unseen
            : ChoiceSight.MeterSeen;
    }

    /// <summary>Whether somebody sat at the meter in a run on one of the pair, after which both codes are read.</summary>
    public static bool HasReadMeter(Study study, ChoiceSet set, CrewMember member)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        return IsComparable(study, set) && study.Runs.Exists(run =>
            IsOf(set, run.Code) && run.Readings.Any() && EarGate.SeatIn(run, member) == CrewMember.CoDriverSeat);
    }

    /// <summary>Whether both codes of the pair are read, so that a screen could show how they compare.</summary>
    public static bool IsComparable(Study study, ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        return IsRead(study, set.Terms.First) && IsRead(study, set.Terms.Second);
    }

    private static bool IsRead(Study study, SpecCode code) => study.Runs.Exists(run => run.Code == code && run.Readings.Any());

    private static bool IsOf(ChoiceSet set, SpecCode code) => code == set.Terms.First || code == set.Terms.Second;
}
