using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>A leg of an energy day is over: the crew has read meter or display at a stop.</summary>
/// <param name="Figures">What was typed.</param>
/// <param name="Spoilt">What spoilt it, where it was flagged at once; null: clean.</param>
/// <param name="Words">More about what spoilt it; null: none.</param>
public sealed record EnergyLegDriven(LegFigures Figures, SpoiltCause? Spoilt = null, string? Words = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (study.RunOn is { } run ? new Objection(JournalWords.RunIsOn(run), EnergyDrivingWords.EndRunBeforeLeg) : null)
            ?? ObjectionToCode(study)
            ?? ObjectionToOthers(study);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        EnergyLeg leg = new(study.Legs.Count + 1, Figures, mark)
        {
            Spoilt = Spoilt is { } cause ? new Spoiling(cause, Words, Late: false) : null,
            Doubt = LegDoubt.Of(Figures, study),
        };
        return (study with { Legs = study.Legs.Add(leg) }).Undoably(study, mark, $"leg {leg.Number}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        UnitSystem units = after.Plan?.Units ?? UnitSystem.Metric;
        string spoilt = Spoilt is { } cause ? $", spoilt by {cause.Word()}{(Words is null ? "" : $": {Words}")}" : "";
        string warning = WindWarning(after.Plan?.Limits ?? new Limits(), units);
        return new Echo(EnergyDrivingWords.LegDriven(after, Figures, units, spoilt, warning), after.Legs.LastOrDefault()?.Doubt);
    }

    private string WindWarning(Limits limits, UnitSystem units) =>
        Figures.Wind is { } wind && wind.MetresPerSecond > limits.WindWarnMetresPerSecond
            ? EnergyDrivingWords.MeanWindIsHigh(limits, units)
            : "";

    private Objection? ObjectionToCode(Study study)
    {
        SpecCode[] codes = [.. study.Fittings.SelectMany(f => f.Codes)];
        if (codes.Length == 0)
        {
            return study.Overrides.Any(o => o.Check == RunChecks.Commitment)
                ? null
                : new Objection(EnergyDrivingWords.DaysWouldNotBeBlind, EnergyDrivingWords.SealOrOverrideFirst, RunChecks.Commitment);
        }

        return codes.Contains(Figures.Code)
            ? null
            : new Objection(
                JournalWords.IsNoCodeOfStudy(Figures.Code),
                JournalWords.CodesAre(string.Join(", ", codes.OrderBy(c => c.Digits, StringComparer.Ordinal)))
            );
    }

    private Objection? ObjectionToOthers(Study study)
    {
        foreach (EnergyLeg leg in study.Legs)
        {
            if (leg.Figures.Energy.Carrier != Figures.Energy.Carrier)
            {
                return new Objection(EnergyDrivingWords.LegsUseAnotherCarrier, EnergyDrivingWords.StartStudyForEachCarrier);
            }

            if (LegTimes.IsSame(leg.Figures, Figures))
            {
                return new Objection(EnergyDrivingWords.SameLegIsThereAlready(leg), EnergyDrivingWords.AddStartOfOtherLeg);
            }

            if (LegTimes.Overlap(leg.Figures, Figures))
            {
                return new Objection(EnergyDrivingWords.CarWasOnOtherLeg(Figures.Car, leg), EnergyDrivingWords.FixCarDayOrStart);
            }
        }

        return null;
    }
}

/// <summary>What makes a leg doubtful although it is stored: figures that are hardly true, or not what the plan asks for.</summary>
public static class LegDoubt
{
    // A meter and a display of charge that differ by more than this tell of a typing slip, not of their own errors (common practice, no
    // source).
    private const double MeterAgainstChargePercent = 15;

    /// <summary>The doubts in words; null: none.</summary>
    public static string? Of(LegFigures leg, Study study)
    {
        ArgumentNullException.ThrowIfNull(leg);
        ArgumentNullException.ThrowIfNull(study);
        string[] doubts =
        [
            .. new[] { OfConsumption(leg, study), OfCharge(leg), OfPlan(leg, study), OfMethod(leg, study) }.OfType<string>(),
        ];
        return doubts.Length == 0 ? null : string.Join("; ", doubts);
    }

    private static string? OfConsumption(LegFigures leg, Study study)
    {
        EnergyPlan limits = study.Plan?.Energy ?? new EnergyPlan();
        double perHundredKm = leg.Consumption.PerHundredKm;
        return perHundredKm >= limits.ConsumptionLowest && perHundredKm <= limits.ConsumptionHighest
            ? null
            : EnergyDrivingWords.ConsumptionIsHardToBelieve(leg.Consumption.In(study.Plan?.Units ?? UnitSystem.Metric));
    }

    private static string? OfCharge(LegFigures leg)
    {
        if (leg is not { FromCharge: false, Charge: { } charge, Usable: { } usable } || usable.Carrier != leg.Energy.Carrier)
        {
            return null;
        }

        double byCharge = charge.Of(usable).KwhOrLitres;
        double allowed = (byCharge * MeterAgainstChargePercent / 100) + (2 * usable.KwhOrLitres * charge.UncertaintyPercent / 100);
        return Math.Abs(byCharge - leg.Energy.KwhOrLitres) > allowed ? EnergyDrivingWords.MeterAndChargeDisagree(leg, byCharge) : null;
    }

    private static string? OfPlan(LegFigures leg, Study study)
    {
        if (study.Plan?.Energy.Days is not { Count: > 0 } days)
        {
            return null;
        }

        if (leg.Day > days.Count)
        {
            return EnergyDrivingWords.PlanHasEnergyDays(days.Count);
        }

        return days[leg.Day - 1].On(leg.Car) switch
        {
            null => EnergyDrivingWords.PlanHasNoCarOnDay(leg),
            { } place when study.Fitting?.At(place) is { } code && code != leg.Code => EnergyDrivingWords.PlanAsksForOtherCode(code, leg),
            _ => null,
        };
    }

    private static string? OfMethod(LegFigures leg, Study study) =>
        study.Legs.Any(other => other.Figures.FromCharge != leg.FromCharge) ? EnergyDrivingWords.MeterAndChargeAreMixed : null;
}
