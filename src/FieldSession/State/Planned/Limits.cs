using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>
/// The limits that checks hold the day against; each can be set in the plan. Defaults are common practice, no source, where nothing else is
/// said.
/// </summary>
public sealed record Limits
{
    /// <summary>Difference of the calibration checks before and after that draws a warning, dB.</summary>
    public double CalibrationDriftWarnDb { get; init; } = 0.3;

    /// <summary>
    /// Difference of the calibration checks beyond which the session is void, dB (from memory: the rule used in type approval of vehicle
    /// noise).
    /// </summary>
    public double CalibrationDriftVoidDb { get; init; } = 0.5;

    /// <summary>Mean wind that draws a warning, m/s (from memory: the limit of vehicle noise tests outdoors).</summary>
    public double WindWarnMetresPerSecond { get; init; } = 5;

    /// <summary>Mean wind beyond which no run starts, m/s.</summary>
    public double WindBlockMetresPerSecond { get; init; } = 8;

    /// <summary>Gusts that draw a warning, m/s.</summary>
    public double GustWarnMetresPerSecond { get; init; } = 8;

    /// <summary>Coldest air without a warning, degC.</summary>
    public double AirColdestCelsius { get; init; } = 5;

    /// <summary>Warmest air without a warning, degC.</summary>
    public double AirWarmestCelsius { get; init; } = 35;

    /// <summary>Lowest interior level that is believed without asking, dB(A).</summary>
    public double LevelLowestDb { get; init; } = 30;

    /// <summary>Highest interior level that is believed without asking, dB(A).</summary>
    public double LevelHighestDb { get; init; } = 110;

    /// <summary>Distance from the plan's nominal level that is asked about, dB.</summary>
    public double NominalDistanceDb { get; init; } = 8;

    /// <summary>Width of a range that draws a warning, dB.</summary>
    public double WidthWarnDb { get; init; } = 4;

    /// <summary>Width of a range that is asked about, dB.</summary>
    public double WidthDoubtDb { get; init; } = 8;

    /// <summary>Shortest steady segment without a warning, seconds.</summary>
    public double SegmentShortestSeconds { get; init; } = 5;

    /// <summary>The limits of <see cref="FurtherLimits"/> that the plan changes, by name; null: none.</summary>
    public ImmutableSortedDictionary<string, double>? Further { get; init; }

    /// <summary>Why a limit was changed, by name; null: no reason was given for any.</summary>
    public ImmutableSortedDictionary<string, string>? Reasons { get; init; }

    /// <summary>What holds for a limit: the plan's value, or its default.</summary>
    public double Of(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return Further?.GetValueOrDefault(limit.Name, limit.Default) ?? limit.Default;
    }
}

/// <summary>A limit that a plan may change, by name.</summary>
/// <param name="Name">Its name in the plan, with its unit, such as "pressure_warn_kpa".</param>
/// <param name="Default">What holds where the plan says nothing.</param>
/// <param name="Lowest">Lowest value that a plan may give.</param>
/// <param name="Highest">Highest value that a plan may give.</param>
/// <param name="Words">What it limits.</param>
public sealed record Limit(string Name, double Default, double Lowest, double Highest, string Words);
