using FieldSession.Measures;

namespace FieldSession.Comparing;

/// <summary>One leg as the comparison of consumption sees it. Legs of one car are in driven order.</summary>
/// <param name="Day">Number of the day.</param>
/// <param name="Car">The car.</param>
/// <param name="Code">The code.</param>
/// <param name="DistanceKm">Kilometres, above 0.</param>
/// <param name="KwhOrLitres">kWh or litres, above 0.</param>
public sealed record MeasuredLeg(int Day, string Car, string Code, double DistanceKm, double KwhOrLitres)
{
    /// <summary>Whether the clean result leaves it out.</summary>
    public bool Spoilt { get; init; }

    /// <summary>Who drove; null: not noted.</summary>
    public string? Driver { get; init; }

    /// <summary>Mean air temperature, degC; null: unknown.</summary>
    public double? AirCelsius { get; init; }

    /// <summary>Mean wind, m/s; null: unknown.</summary>
    public double? WindMetresPerSecond { get; init; }

    /// <summary>State of charge used, percent, where the energy comes from it; null: it does not.</summary>
    public double? ChargeUsedPercent { get; init; }

    /// <summary>Standard uncertainty of the energy from the step of its display, kWh or litres.</summary>
    public double EnergyUncertainty { get; init; }
}

/// <summary>What was agreed before the consumption is compared, and the limits that warn.</summary>
/// <param name="Reference">The code the others are compared with; null: the first driven.</param>
/// <param name="MarginPercent">Differences within plus or minus this count as equivalent, percent, above 0 and below 100.</param>
/// <param name="Carrier">Electricity or fuel.</param>
/// <param name="Usable">Usable capacity, kWh or litres; null: not told, no range is given.</param>
/// <param name="PlanComplete">False while planned energy days are still to be driven: numbers then, but no verdict words.</param>
public sealed record EnergyTerms(
    string? Reference = null,
    double MarginPercent = 2,
    EnergyCarrier Carrier = EnergyCarrier.Electricity,
    double? Usable = null,
    bool PlanComplete = true
)
{
    /// <summary>Shortest way of a stretch without a warning, km.</summary>
    public double DistanceShortKm { get; init; } = 100;

    /// <summary>Least state of charge used without a warning, percent.</summary>
    public double ChargeLeastPercent { get; init; } = 40;

    /// <summary>Mean wind that draws a warning, m/s.</summary>
    public double WindWarnMetresPerSecond { get; init; } = 5;
}

/// <summary>
/// What one car drove on one code between two changes of code on one day: the unit of the statistics. Its legs are summed before anything
/// is divided; legs are not repetitions of each other.
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
    public double? AirCelsius =>
        Legs.All(leg => leg.AirCelsius is not null) ? Legs.Sum(leg => leg.AirCelsius!.Value * leg.DistanceKm) / DistanceKm : null;

    /// <summary>Strongest mean wind of a leg, m/s; null: unknown on all.</summary>
    public double? WindMetresPerSecond => Legs.Max(leg => leg.WindMetresPerSecond);

    /// <summary>State of charge used in all, percent; null: the energy does not come from it.</summary>
    public double? ChargeUsedPercent => Legs.All(leg => leg.ChargeUsedPercent is not null) ? Legs.Sum(leg => leg.ChargeUsedPercent) : null;

    /// <summary>
    /// Standard uncertainty of ln(consumption) from the steps of the displays, by the law of propagation (JCGM 100:2008, GUM, 5.1.2).
    /// </summary>
    public double LnUncertainty => Math.Sqrt(Legs.Sum(leg => leg.EnergyUncertainty * leg.EnergyUncertainty)) / KwhOrLitres;

    /// <summary>The stretches of the legs. A spoilt leg is left out of the sums, but a change of code on it still ends a stretch.</summary>
    /// <param name="legs">The legs.</param>
    /// <param name="withSpoilt">Whether spoilt legs are put back.</param>
    public static IReadOnlyList<EnergyStretch> Of(IEnumerable<MeasuredLeg> legs, bool withSpoilt) =>
        [
            .. legs.GroupBy(leg => (leg.Day, leg.Car))
                .SelectMany(day =>
                    Slots(day)
                        .GroupBy(leg => leg.Slot, leg => leg.Leg)
                        .Select(slot => new EnergyStretch(
                            day.Key.Day,
                            slot.Key,
                            day.Key.Car,
                            slot.First().Code,
                            [.. slot.Where(leg => withSpoilt || !leg.Spoilt)]
                        ))
                )
                .Where(stretch => stretch.Legs.Count > 0)
                .OrderBy(stretch => stretch.Day)
                .ThenBy(stretch => stretch.Slot)
                .ThenBy(stretch => stretch.Car, StringComparer.Ordinal),
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
