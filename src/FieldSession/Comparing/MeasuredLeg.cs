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
    bool PlanComplete = true)
{
    /// <summary>Shortest way of a stretch without a warning, km.</summary>
    public double DistanceShortKm { get; init; } = 100;

    /// <summary>Least state of charge used without a warning, percent.</summary>
    public double ChargeLeastPercent { get; init; } = 40;

    /// <summary>Mean wind that draws a warning, m/s.</summary>
    public double WindWarnMetresPerSecond { get; init; } = 5;
}
