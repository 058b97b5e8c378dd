namespace FieldSession.Comparing;

/// <summary>
/// What one car drove on one code between two changes of code on one day: the unit of the statistics. Its legs are summed before anything is
/// divided; legs are not repetitions of each other.
/// </summary>
/// <param name="Day">Number of the day.</param>
/// <param name="Slot">Number of the stretch in the car's day, from 1: cars in the same slot were driven together.</param>
/// <param name="Car">The car.</param>
/// <param name="Code">The code.</param>
/// <param name="Legs">The legs that count.</param>
public sealed record EnergyStretch(int Day, int Slot, string Car, string Code, IReadOnlyList<MeasuredLeg> Legs)
{
    /// <summary>Kilometres in all.</summary>
    public double DistanceKm => Legs.Sum(leg => leg.DistanceKm);

    /// <summary>kWh or litres in all.</summary>
    public double KwhOrLitres => Legs.Sum(leg => leg.KwhOrLitres);

    /// <summary>Total energy over total distance, kWh or litres per 100 km.</summary>
    public double PerHundredKm => 100 * KwhOrLitres / DistanceKm;

    /// <summary>Who drove all of it; null: not noted, or several.</summary>
    public string? Driver => Legs.Select(leg => leg.Driver).Distinct().ToArray() is [var only] ? only : null;

    /// <summary>Mean air temperature by distance, degC; null: unknown on a leg.</summary>
    public double? AirCelsius => Legs.All(leg => leg.AirCelsius is not null)
        ? Legs.Sum(leg => leg.AirCelsius!.Value * leg.DistanceKm) / DistanceKm
        : null;

    /// <summary>Strongest mean wind of a leg, m/s; null: unknown on all.</summary>
    public double? WindMetresPerSecond => Legs.Max(leg => leg.WindMetresPerSecond);

    /// <summary>State of charge used in all, percent; null: the energy does not come from it.</summary>
    public double? ChargeUsedPercent => Legs.All(leg => leg.ChargeUsedPercent is not null) ? Legs.Sum(leg => leg.ChargeUsedPercent) : null;

    /// <summary>Standard uncertainty of ln(consumption) from the steps of the displays, by the law of propagation (JCGM 100:2008, GUM, 5.1.2).</summary>
    public double LnUncertainty => Math.Sqrt(Legs.Sum(leg => leg.EnergyUncertainty * leg.EnergyUncertainty)) / KwhOrLitres;

    /// <summary>The stretches of the legs. A spoilt leg is left out of the sums, but a change of code on it still ends a stretch.</summary>
    /// <param name="legs">The legs.</param>
    /// <param name="withSpoilt">Whether spoilt legs are put back.</param>
    public static IReadOnlyList<EnergyStretch> Of(IEnumerable<MeasuredLeg> legs, bool withSpoilt) =>
    [
        .. legs.GroupBy(leg => (leg.Day, leg.Car))
            .SelectMany(day => Slots(day).GroupBy(leg => leg.Slot, leg => leg.Leg).Select(slot => new EnergyStretch(
                day.Key.Day, slot.Key, day.Key.Car, slot.First().Code, [.. slot.Where(leg => withSpoilt || !leg.Spoilt)])))
            .Where(stretch => stretch.Legs.Count > 0)
            .OrderBy(stretch => stretch.Day).ThenBy(stretch => stretch.Slot).ThenBy(stretch => stretch.Car, StringComparer.Ordinal),
    ];

    private static IEnumerable<(int Slot, MeasuredLeg Leg)> Slots(IEnumerable<MeasuredLeg> day)
    {
        int slot = 0;
        string? code = null;
        foreach (MeasuredLeg leg in day)
        {
            slot += leg.Code == code ? 0 : 1;
            code = leg.Code;
            yield return (slot, leg);
        }
    }
}
