using System.Globalization;
using FieldSession.Comparing;

namespace FieldSession.Tests.Making;

/// <summary>Readings that a test makes up: an order of codes, so many steady segments, a level for each.</summary>
internal static class InventedReadings
{
    /// <summary>A day of runs in this order ("A B B A"), 30 minutes apart, ranges of 2 dB about the level.</summary>
    public static MeasuredDay Day(string order, int segments, Func<int, int, double> levelDb) =>
        new([
            .. order
                .Split(' ')
                .SelectMany(
                    (code, run) =>
                        Enumerable
                            .Range(0, segments)
                            .Select(s => new MeasuredLevel(
                                run + 1,
                                code,
                                Name(s),
                                "smooth",
                                MeasureClass.Steady,
                                levelDb(run, s) - 1,
                                levelDb(run, s) + 1,
                                Minutes: run * 30
                            ))
                ),
        ]);

    /// <summary>A day with scatter that is the same every time.</summary>
    public static MeasuredDay Scattered(string order, int segments, double secondCodeDb = 0)
    {
        Random lot = new(3);
        double[] runs = [.. order.Split(' ').Select(code => lot.NextDouble() + (code == "B" ? secondCodeDb : 0))];
        return Day(order, segments, (run, s) => 60 + s + runs[run] + lot.NextDouble());
    }

    /// <summary>The same day with some readings flagged.</summary>
    public static MeasuredDay Spoilt(this MeasuredDay day, Func<MeasuredLevel, bool> which) =>
        day with
        {
            Levels = [.. day.Levels.Select(level => which(level) ? level with { Spoilt = true, Cause = "traffic" } : level)],
        };

    /// <summary>The name of a segment.</summary>
    public static string Name(int segment) => string.Create(CultureInfo.InvariantCulture, $"s{segment}");
}
