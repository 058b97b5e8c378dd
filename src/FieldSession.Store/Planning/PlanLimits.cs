using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads the table <c>[limits]</c>: what the checks hold the day against.</summary>
internal static class PlanLimits
{
    private const string Table = "limits.";
    private const string Reasons = "limits.reasons.";
    private const int LongestReason = 200;

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
    public static IEnumerable<string> Names =>
        [.. LimitNames.Select(name => Table + name), .. LimitNames.Select(name => Reasons + name)];

    private static IEnumerable<string> LimitNames =>
        Rows.Select(row => row.Name[Table.Length..]).Concat(FurtherLimits.All.Select(limit => limit.Name));

    /// <summary>The limits of a plan; what it does not say keeps its default.</summary>
    public static Limits Of(PlanWords words, Troubles troubles)
    {
        Limits limits = new();
        foreach (Row row in Rows)
        {
            limits = words.Number(row.Name, row.Lowest, row.Highest, troubles) is double number ? row.Set(limits, number) : limits;
        }

        return limits with { Further = FurtherOf(words, troubles), Reasons = ReasonsOf(words, troubles) };
    }

    private static ImmutableSortedDictionary<string, double>? FurtherOf(PlanWords words, Troubles troubles)
    {
        ImmutableSortedDictionary<string, double> further = ImmutableSortedDictionary<string, double>.Empty;
        foreach (Limit limit in FurtherLimits.All)
        {
            further = words.Number(Table + limit.Name, limit.Lowest, limit.Highest, troubles) is { } number ? further.Add(limit.Name, number) : further;
        }

        return further.IsEmpty ? null : further;
    }

    private static ImmutableSortedDictionary<string, string>? ReasonsOf(PlanWords words, Troubles troubles)
    {
        ImmutableSortedDictionary<string, string> reasons = ImmutableSortedDictionary<string, string>.Empty;
        foreach (string name in LimitNames)
        {
            if (words.Find(Table + name) is not { } changed)
            {
                continue;
            }

            if (words.Text(Reasons + name, LongestReason, troubles) is { } reason)
            {
                reasons = reasons.Add(name, reason);
            }
            else
            {
                changed.Warn(troubles, $"the limit '{name}' is changed without a reason", $"write it under [limits.reasons]: {name} = \"why\"");
            }
        }

        return reasons.IsEmpty ? null : reasons;
    }
}
