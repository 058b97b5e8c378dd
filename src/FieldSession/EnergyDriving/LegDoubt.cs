using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>What makes a leg doubtful although it is stored: figures that are hardly true, or not what the plan asks for.</summary>
public static class LegDoubt
{
    // A meter and a display of charge that differ by more than this tell of a typing slip, not of their own errors (common practice, no source).
    private const double MeterAgainstChargePercent = 15;

    /// <summary>The doubts in words; null: none.</summary>
    public static string? Of(LegFigures leg, Study study)
    {
        ArgumentNullException.ThrowIfNull(leg);
        ArgumentNullException.ThrowIfNull(study);
        string[] doubts = [.. new[] { OfConsumption(leg, study), OfCharge(leg), OfPlan(leg, study), OfMethod(leg, study) }.OfType<string>()];
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

    private static string? OfMethod(LegFigures leg, Study study) => study.Legs.Any(other => other.Figures.FromCharge != leg.FromCharge)
        ? EnergyDrivingWords.MeterAndChargeAreMixed
        : null;
}
