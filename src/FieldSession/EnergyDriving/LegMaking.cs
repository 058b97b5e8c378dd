using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>Makes a leg of its parts, once: what is missing, what contradicts itself.</summary>
public static class LegMaking
{
    /// <summary>Step of a display of the state of charge where nothing else is said, percent.</summary>
    private const double WholePercent = 1;

    private const double FinePercent = 0.1;

    /// <summary>The leg, or what is wrong with its parts.</summary>
    /// <param name="draft">The parts.</param>
    /// <param name="plan">The plan, for the usable capacity; null: none.</param>
    /// <param name="typed">The line or row as it was typed.</param>
    /// <param name="objection">What is wrong; null where the leg is good.</param>
    public static LegFigures? Of(LegDraft draft, Plan? plan, string typed, out Objection? objection)
    {
        ArgumentNullException.ThrowIfNull(draft);
        Energy? usable = draft.Usable ?? plan?.Energy.Usable;
        objection = ObjectionToParts(draft) ?? ObjectionToCharge(draft, usable) ?? ObjectionToCapacity(draft, usable);
        return objection is null ? Made(draft, usable, typed) : null;
    }

    private static LegFigures Made(LegDraft draft, Energy? usable, string typed)
    {
        ChargeUsed? charge = ChargeOf(draft);
        return new LegFigures
        {
            Day = draft.Day!.Value,
            Car = draft.Car!,
            Code = draft.Code!.Value,
            Distance = draft.Distance!.Value,
            Energy = draft.Energy ?? charge!.Value.Of(usable!.Value),
            FromCharge = draft.Energy is null,
            EnergyStep = draft.Energy is null ? 0 : draft.EnergyStepSaid ?? draft.EnergyStep,
            Charge = charge,
            Usable = usable,
            Driver = draft.Driver,
            AirAtStart = draft.AirAtStart,
            AirAtEnd = draft.AirAtEnd,
            Wind = draft.Wind,
            MeanSpeed = draft.MeanSpeed,
            At = draft.At,
            Minutes = draft.Minutes,
            Typed = typed,
        };
    }

    private static ChargeUsed? ChargeOf(LegDraft draft) =>
        draft is { ChargeAtStart: { } start, ChargeAtEnd: { } end }
            ? new ChargeUsed(start, end, draft.ChargeStep ?? (draft.ChargeIsFine ? FinePercent : WholePercent))
            : null;

    private static Objection? ObjectionToParts(LegDraft draft) =>
        draft switch
        {
            { Day: null } => Missing("the day", "day=1"),
            { Car: null } => Missing("the car", "car=X"),
            { Code: null } => Missing("the code", EnergyDrivingWords.CodeForm),
            { Distance: null } => Missing("the distance", EnergyDrivingWords.DistanceForm),
            { Energy: null, ChargeAtStart: null } => Missing("the energy", EnergyDrivingWords.EnergyForm),
            _ => null,
        };

    private static Objection? ObjectionToCharge(LegDraft draft, Energy? usable)
    {
        if (ChargeOf(draft) is not { } charge)
        {
            return null;
        }

        if (charge.Percent <= 0)
        {
            return new Objection(EnergyDrivingWords.ChargeDoesNotFallOnLeg(charge), EnergyDrivingWords.ChargeForm);
        }

        return draft.Energy is null && usable is not { Carrier: EnergyCarrier.Electricity }
            ? new Objection(EnergyDrivingWords.ChargeNeedsUsableCapacity, EnergyDrivingWords.AddUsableCapacity)
            : null;
    }

    private static Objection? ObjectionToCapacity(LegDraft draft, Energy? usable) =>
        draft.Energy is { } energy
        && usable is { } capacity
        && energy.Carrier == capacity.Carrier
        && energy.KwhOrLitres > capacity.KwhOrLitres
            ? new Objection(EnergyDrivingWords.EnergyExceedsCapacity(energy, capacity), EnergyDrivingWords.LookAtMeterAgain)
            : null;

    private static Objection Missing(string what, string instead) => new(EnergyDrivingWords.LegDoesNotSay(what), $"add {instead}");
}
