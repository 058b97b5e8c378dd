using System.Collections.Immutable;
using FieldSession.Measures;

namespace FieldSession.Store.Readings;

/// <summary>A column of a legs CSV that holds one part of a leg.</summary>
/// <param name="Name">Its name in the header.</param>
/// <param name="Part">The part of a leg, by its name in an entry line.</param>
/// <param name="Units">The units of its values, where the part follows the plan's units in an entry line.</param>
internal sealed record LegColumn(string Name, string Part, UnitSystem Units = UnitSystem.Metric);

/// <summary>The columns of a legs CSV. An export writes the same, so that legs come in as they go out.</summary>
internal static class LegColumns
{
    /// <summary>How many of the names have to be in the header: the first ones.</summary>
    public const int Required = 3;

    /// <summary>The columns that hold one part each.</summary>
    public static ImmutableArray<LegColumn> Parts { get; } =
    [
        new("day", "day"),
        new("car", "car"),
        new("code", "code"),
        new("driver", "driver"),
        new("distance_km", "km"),
        new("distance_mi", "mi"),
        new("energy_kwh", "kwh"),
        new("fuel_l", "l"),
        new("fuel_us_gal", "gal"),
        new("fuel_imp_gal", "impgal"),
        new("energy_step", "read"),
        new("soc_step_percent", "step"),
        new("usable_kwh", "usable"),
        new("tank_l", "tank"),
        new("air_start_c", "t0"),
        new("air_start_f", "t0", UnitSystem.Imperial),
        new("air_end_c", "t1"),
        new("air_end_f", "t1", UnitSystem.Imperial),
        new("wind_m_s", "wind"),
        new("wind_mph", "wind", UnitSystem.Imperial),
        new("speed_kmh", "kmh"),
        new("speed_mph", "mph"),
        new("start", "at"),
        new("minutes", "min"),
    ];

    /// <summary>Place of the column with the state of charge at the start.</summary>
    public static int ChargeStart => Parts.Length;

    /// <summary>Place of the column with the state of charge at the end.</summary>
    public static int ChargeEnd => Parts.Length + 1;

    /// <summary>Place of the column that says what spoilt the leg.</summary>
    public static int Spoilt => Parts.Length + 2;

    /// <summary>Place of the column with words about it.</summary>
    public static int Note => Parts.Length + 3;

    /// <summary>Every name, in the order of the places.</summary>
    public static ImmutableArray<string> Names { get; } =
        [.. Parts.Select(column => column.Name), "soc_start_percent", "soc_end_percent", "spoilt", "note"];
}
