using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>The limits of the checks that are typed, and of brackets. Common practice, no source, where nothing else is said.</summary>
public static class FurtherLimits
{
    /// <summary>Distance of the meter from the calibrator before a session that draws a warning, dB.</summary>
    public static Limit CalibratorDistance { get; } = new("calibrator_distance_db", 0.5, 0, 5, "meter from calibrator before a session");

    /// <summary>Coldest air for a meter of class 1, degC (IEC 61672-1, from memory).</summary>
    public static Limit MeterOneColdest { get; } = new("meter_class1_coldest_c", -10, -60, 60, "coldest air for a class 1 meter");

    /// <summary>Warmest air for a meter of class 1, degC (IEC 61672-1, from memory).</summary>
    public static Limit MeterOneWarmest { get; } = new("meter_class1_warmest_c", 50, -60, 90, "warmest air for a class 1 meter");

    /// <summary>Coldest air for a meter of class 2, degC (IEC 61672-1, from memory).</summary>
    public static Limit MeterTwoColdest { get; } = new("meter_class2_coldest_c", 0, -60, 60, "coldest air for a class 2 meter");

    /// <summary>Warmest air for a meter of class 2, degC (IEC 61672-1, from memory).</summary>
    public static Limit MeterTwoWarmest { get; } = new("meter_class2_warmest_c", 40, -60, 90, "warmest air for a class 2 meter");

    /// <summary>Lowest charge of the meter's battery without a warning, percent.</summary>
    public static Limit Battery { get; } = new("battery_lowest_percent", 20, 0, 100, "lowest charge of the meter's battery");

    /// <summary>Cold pressure from its target, left from right, car from car, that draws a warning, kPa.</summary>
    public static Limit PressureWarn { get; } = new("pressure_warn_kpa", 5, 0, 100, "cold pressure: target, left-right, car-car");

    /// <summary>The same beyond which no run starts, kPa.</summary>
    public static Limit PressureBlock { get; } = new("pressure_block_kpa", 10, 0, 100, "cold pressure beyond which no run starts");

    /// <summary>Shortest run-in of a set without a warning, km (from memory: vehicle noise rules for tyres).</summary>
    public static Limit RunIn { get; } = new("run_in_shortest_km", 100, 0, 10_000, "shortest run-in of a set");

    /// <summary>Difference of tread depth between specs, mm.</summary>
    public static Limit Tread { get; } = new("tread_difference_mm", 0.5, 0, 20, "tread depth between specs");

    /// <summary>Difference of build date between specs, weeks.</summary>
    public static Limit Weeks { get; } = new("build_difference_weeks", 12, 0, 1000, "build date between specs");

    /// <summary>Difference of hardness between specs, Shore A.</summary>
    public static Limit Hardness { get; } = new("hardness_difference_shore", 3, 0, 100, "hardness between specs");

    /// <summary>Difference of the cars' masses, kg.</summary>
    public static Limit Mass { get; } = new("mass_difference_kg", 20, 0, 2000, "mass between runs and cars");

    /// <summary>Difference of fuel or charge within a session, percent of full.</summary>
    public static Limit Charge { get; } = new("charge_difference_percent", 10, 0, 100, "fuel or charge between runs and cars");

    /// <summary>Shortest warm-up before a session, minutes.</summary>
    public static Limit WarmUpMinutes { get; } = new("warm_up_shortest_min", 15, 0, 300, "shortest warm-up in time");

    /// <summary>Shortest warm-up before a session, km.</summary>
    public static Limit WarmUpKm { get; } = new("warm_up_shortest_km", 20, 0, 1000, "shortest warm-up in distance");

    /// <summary>Speed by satellite from the plan's that draws a warning, km/h.</summary>
    public static Limit SpeedWarn { get; } = new("speed_warn_kmh", 1, 0, 50, "speed from the plan's");

    /// <summary>Speed by satellite from the plan's beyond which the reading is flagged, km/h.</summary>
    public static Limit SpeedFlag { get; } = new("speed_flag_kmh", 3, 0, 50, "speed from the plan's, reading flagged");

    /// <summary>Spread of air temperature in a bracket, degC.</summary>
    public static Limit AirSpread { get; } = new("bracket_air_spread_c", 5, 0, 60, "air temperature within a bracket");

    /// <summary>
    /// Repeat of the control in a bracket, mean over the steady segments, that draws a warning, dB (bracketing by a control: ASTM F1650,
    /// scope).
    /// </summary>
    public static Limit RepeatWarn { get; } = new("control_repeat_warn_db", 1, 0, 20, "repeat of the control in a bracket");

    /// <summary>The same beyond which the bracket is void, dB.</summary>
    public static Limit RepeatVoid { get; } = new("control_repeat_void_db", 2, 0, 20, "repeat of the control, bracket void");

    /// <summary>Time between two runs of a bracket, minutes.</summary>
    public static Limit BracketGap { get; } = new("bracket_gap_longest_min", 60, 0, 1440, "time between two runs of a bracket");

    /// <summary>Share of spoilt readings in a run from which its bracket should be driven again, percent.</summary>
    public static Limit SpoiltShare { get; } = new("spoilt_share_percent", 30, 0, 100, "spoilt readings of a run");

    /// <summary>Difference of the spoilt shares of two codes, percentage points.</summary>
    public static Limit SpoiltUneven { get; } = new("spoilt_uneven_points", 20, 0, 100, "spoilt shares of two codes");

    /// <summary>Every one of them, in the order of the day.</summary>
    public static ImmutableArray<Limit> All { get; } =
    [
        CalibratorDistance,
        MeterOneColdest,
        MeterOneWarmest,
        MeterTwoColdest,
        MeterTwoWarmest,
        Battery,
        PressureWarn,
        PressureBlock,
        RunIn,
        Tread,
        Weeks,
        Hardness,
        Mass,
        Charge,
        WarmUpMinutes,
        WarmUpKm,
        SpeedWarn,
        SpeedFlag,
        AirSpread,
        RepeatWarn,
        RepeatVoid,
        BracketGap,
        SpoiltShare,
        SpoiltUneven,
    ];
}

/// <summary>A limit with the place where a plan holds its value.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Of">What holds in a plan's limits.</param>
/// <param name="Set">The limits with another value.</param>
public sealed record HeldLimit(Limit Limit, Func<Limits, double> Of, Func<Limits, double, Limits> Set)
{
    /// <summary>Whether a plan's limits differ from the default.</summary>
    public bool IsChangedIn(Limits limits) => Of(limits) != Limit.Default;
}

/// <summary>
/// Every limit that a plan may change, in one list: those with a member of their own in <see cref="Limits"/>, then those of
/// <see cref="FurtherLimits"/>.
/// </summary>
public static class AllLimits
{
    private static Limits Defaults => new();

    /// <summary>The limits, in the order in which they are shown.</summary>
    public static ImmutableArray<HeldLimit> InOrder { get; } =
    [
        Own(
            "calibration_drift_warn_db",
            0,
            5,
            "drift of the meter over a session",
            of => of.CalibrationDriftWarnDb,
            (of, value) => of with { CalibrationDriftWarnDb = value }
        ),
        Own(
            "calibration_drift_void_db",
            0,
            5,
            "drift of the meter, session void",
            of => of.CalibrationDriftVoidDb,
            (of, value) => of with { CalibrationDriftVoidDb = value }
        ),
        Own(
            "wind_warn_m_s",
            0,
            30,
            "mean wind",
            of => of.WindWarnMetresPerSecond,
            (of, value) => of with { WindWarnMetresPerSecond = value }
        ),
        Own(
            "wind_block_m_s",
            0,
            30,
            "mean wind beyond which no run starts",
            of => of.WindBlockMetresPerSecond,
            (of, value) => of with { WindBlockMetresPerSecond = value }
        ),
        Own("gust_warn_m_s", 0, 60, "gusts", of => of.GustWarnMetresPerSecond, (of, value) => of with { GustWarnMetresPerSecond = value }),
        Own("air_coldest_c", -60, 60, "coldest air", of => of.AirColdestCelsius, (of, value) => of with { AirColdestCelsius = value }),
        Own("air_warmest_c", -60, 60, "warmest air", of => of.AirWarmestCelsius, (of, value) => of with { AirWarmestCelsius = value }),
        Own(
            "level_lowest_db",
            0,
            140,
            "lowest level that is believed",
            of => of.LevelLowestDb,
            (of, value) => of with { LevelLowestDb = value }
        ),
        Own(
            "level_highest_db",
            0,
            140,
            "highest level that is believed",
            of => of.LevelHighestDb,
            (of, value) => of with { LevelHighestDb = value }
        ),
        Own(
            "nominal_distance_db",
            0,
            140,
            "reading from the plan's level",
            of => of.NominalDistanceDb,
            (of, value) => of with { NominalDistanceDb = value }
        ),
        Own("width_warn_db", 0, 140, "width of a range", of => of.WidthWarnDb, (of, value) => of with { WidthWarnDb = value }),
        Own(
            "width_doubt_db",
            0,
            140,
            "width of a range, asked about",
            of => of.WidthDoubtDb,
            (of, value) => of with { WidthDoubtDb = value }
        ),
        Own(
            "segment_shortest_s",
            0,
            600,
            "shortest steady segment",
            of => of.SegmentShortestSeconds,
            (of, value) => of with { SegmentShortestSeconds = value }
        ),
        .. FurtherLimits.All.Select(Further),
    ];

    private static HeldLimit Own(
        string name,
        double lowest,
        double highest,
        string words,
        Func<Limits, double> of,
        Func<Limits, double, Limits> set
    ) => new(new Limit(name, of(Defaults), lowest, highest, words), of, set);

    private static HeldLimit Further(Limit limit) =>
        new(
            limit,
            of => of.Of(limit),
            (of, value) => of with { Further = (of.Further ?? ImmutableSortedDictionary<string, double>.Empty).SetItem(limit.Name, value) }
        );
}
