using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>
/// A leg was spoilt, or a flag on it was a mistake. A flag given after the same car has ended its next leg is late: it is kept and used in
/// the sensitivity result only.
/// </summary>
/// <param name="Leg">Number of the leg, from 1.</param>
/// <param name="Cause">What spoilt it; null: it is clean again.</param>
/// <param name="Words">More in the crew's words; null: none.</param>
public sealed record LegSpoilt(int Leg, SpoiltCause? Cause, string? Words = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study) ?? (Leg >= 1 && Leg <= study.Legs.Count
            ? null
            : new Objection(EnergyDrivingWords.ThereIsNoLeg(Leg), EnergyDrivingWords.FlagLegByItsNumber));
    }

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Leg = study.NumberOf(Leg, study.Legs.Select(leg => leg.Mark)) };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Leg < 1 || Leg > study.Legs.Count)
        {
            return study;
        }

        EnergyLeg leg = study.Legs[Leg - 1];
        EnergyLeg changed = leg with { Spoilt = Cause is { } cause ? new Spoiling(cause, Words, IsLate(study, leg)) : null };
        return (study with { Legs = study.Legs.SetItem(Leg - 1, changed) }).Undoably(study, mark, EnergyDrivingWords.FlagOnLeg(Leg));
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        bool isLate = Leg >= 1 && Leg <= after.Legs.Count && after.Legs[Leg - 1].Spoilt is { Late: true };
        return new Echo(Cause is { } cause
            ? EnergyDrivingWords.LegSpoilt(Leg, cause, Words, isLate)
            : EnergyDrivingWords.LegIsCleanAgain(Leg));
    }

    private static bool IsLate(Study study, EnergyLeg leg) =>
        study.Legs.Skip(leg.Number).Any(later => CrewMember.SamePerson(later.Figures.Car, leg.Figures.Car));
}
