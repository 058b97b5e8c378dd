using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>A limit with the place where a plan holds its value.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Of">What holds in a plan's limits.</param>
/// <param name="Set">The limits with another value.</param>
public sealed record HeldLimit(Limit Limit, Func<Limits, double> Of, Func<Limits, double, Limits> Set)
{
    /// <summary>Whether a plan's limits differ from the default.</summary>
    public bool IsChangedIn(Limits limits) => Of(limits) != Limit.Default;
}

/// <summary>Every limit that a plan may change, in one list: those with a member of their own in <see cref="Limits"/>, then those of <see cref="FurtherLimits"/>.</summary>
public static class AllLimits
{
    private static Limits Defaults => new();

    /// <summary>The limits, in the order in which they are shown.</summary>
    public static ImmutableArray<HeldLimit> InOrder { get; } =
    [
        Own("calibration_drift_warn_db", 0, 5, "drift of the meter over a session", of => of.CalibrationDriftWarnDb, (of, value) => of with { CalibrationDriftWarnDb = value }),
        Own("calibration_drift_void_db", 0, 5, "drift of the meter, session void", of => of.CalibrationDriftVoidDb, (of, value) => of with { CalibrationDriftVoidDb = value }),
        Own("wind_warn_m_s", 0, 30, "mean wind", of => of.WindWarnMetresPerSecond, (of, value) => of with { WindWarnMetresPerSecond = value }),
        Own("wind_block_m_s", 0, 30, "mean wind beyond which no run starts", of => of.WindBlockMetresPerSecond, (of, value) => of with { WindBlockMetresPerSecond = value }),
        Own("gust_warn_m_s", 0, 60, "gusts", of => of.GustWarnMetresPerSecond, (of, value) => of with { GustWarnMetresPerSecond = value }),
        Own("air_coldest_c", -60, 60, "coldest air", of => of.AirColdestCelsius, (of, value) => of with { AirColdestCelsius = value }),
        Own("air_warmest_c", -60, 60, "warmest air", of => of.AirWarmestCelsius, (of, value) => of with { AirWarmestCelsius = value }),
        Own("level_lowest_db", 0, 140, "lowest level that is believed", of => of.LevelLowestDb, (of, value) => of with { LevelLowestDb = value }),
        Own("level_highest_db", 0, 140, "highest level that is believed", of => of.LevelHighestDb, (of, value) => of with { LevelHighestDb = value }),
        Own("nominal_distance_db", 0, 140, "reading from the plan's level", of => of.NominalDistanceDb, (of, value) => of with { NominalDistanceDb = value }),
        Own("width_warn_db", 0, 140, "width of a range", of => of.WidthWarnDb, (of, value) => of with { WidthWarnDb = value }),
        Own("width_doubt_db", 0, 140, "width of a range, asked about", of => of.WidthDoubtDb, (of, value) => of with { WidthDoubtDb = value }),
        Own("segment_shortest_s", 0, 600, "shortest steady segment", of => of.SegmentShortestSeconds, (of, value) => of with { SegmentShortestSeconds = value }),
        .. FurtherLimits.All.Select(Further),
    ];

    private static HeldLimit Own(string name, double lowest, double highest, string words, Func<Limits, double> of, Func<Limits, double, Limits> set) =>
        new(new Limit(name, of(Defaults), lowest, highest, words), of, set);

    private static HeldLimit Further(Limit limit) => new(
        limit,
        of => of.Of(limit),
        (of, value) => of with { Further = (of.Further ?? ImmutableSortedDictionary<string, double>.Empty).SetItem(limit.Name, value) });
}
