using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads the table <c>[limits]</c>: what the checks hold the day against.</summary>
internal static class PlanLimits
{
    private sealed record Row(string Name, double Lowest, double Highest, Func<Limits, double, Limits> Set);

    private static IEnumerable<Row> Rows =>
    [
        new("limits.calibration_drift_warn_db", 0, 5, (limits, number) => limits with { CalibrationDriftWarnDb = number }),
        new("limits.calibration_drift_void_db", 0, 5, (limits, number) => limits with { CalibrationDriftVoidDb = number }),
        new("limits.wind_warn_m_s", 0, 30, (limits, number) => limits with { WindWarnMetresPerSecond = number }),
        new("limits.wind_block_m_s", 0, 30, (limits, number) => limits with { WindBlockMetresPerSecond = number }),
        new("limits.gust_warn_m_s", 0, 60, (limits, number) => limits with { GustWarnMetresPerSecond = number }),
        new("limits.air_coldest_c", -60, 60, (limits, number) => limits with { AirColdestCelsius = number }),
        new("limits.air_warmest_c", -60, 60, (limits, number) => limits with { AirWarmestCelsius = number }),
        new("limits.level_lowest_db", 0, 140, (limits, number) => limits with { LevelLowestDb = number }),
        new("limits.level_highest_db", 0, 140, (limits, number) => limits with { LevelHighestDb = number }),
        new("limits.nominal_distance_db", 0, 140, (limits, number) => limits with { NominalDistanceDb = number }),
        new("limits.width_warn_db", 0, 140, (limits, number) => limits with { WidthWarnDb = number }),
        new("limits.width_doubt_db", 0, 140, (limits, number) => limits with { WidthDoubtDb = number }),
        new("limits.segment_shortest_s", 0, 600, (limits, number) => limits with { SegmentShortestSeconds = number }),
    ];

    /// <summary>The names of all limits, with their table.</summary>
    public static IEnumerable<string> Names => Rows.Select(row => row.Name);

    /// <summary>The limits of a plan; what it does not say keeps its default.</summary>
    public static Limits Of(PlanWords words, Troubles troubles)
    {
        Limits limits = new();
        foreach (Row row in Rows)
        {
            limits = words.Number(row.Name, row.Lowest, row.Highest, troubles) is double number ? row.Set(limits, number) : limits;
        }

        return limits;
    }
}
