namespace FieldSession.Benchmarks;

/// <summary>
/// Error rates of the comparison on invented days, a line a scenario and a column an order: how often a difference is shown that is not
/// there, how often an interval misses, how often 1 or 2 dB are seen.
/// </summary>
internal static class ErrorRates
{
    private static string[] Orders => ["ABA", "ABBA", "ABAB", "AABB", "ABABAB", "ABBAABBA"];

    /// <summary>Prints the table. Same seed and days, same table.</summary>
    public static void Print(TextWriter to, int days, int seed)
    {
        to.WriteLine($"10 segments, reading SD 0.75 dB, {days} days a cell, seed {seed}");
        to.WriteLine($"| scenario | {string.Join(" | ", Orders)} |");
        to.WriteLine($"| --- |{string.Concat(Orders.Select(_ => " --- |"))}");
        int row = 0;
        foreach ((string name, Func<InventedDay, InventedDay> change, Measure[] measures) in Scenarios)
        {
            SimulatedDays[] rates =
            [
                .. Orders.Select((order, place) => SimulatedDays.Of(_ => change(new InventedDay(order)), days, seed, 100 * row + place)),
            ];
            foreach (Measure measure in measures)
            {
                to.WriteLine($"| {name}: {measure.Name} | {string.Join(" | ", rates.Select(measure.Cell))} |");
            }

            to.Flush();
            row++;
        }
    }

    private static (string Name, Func<InventedDay, InventedDay> Change, Measure[] Measures)[] Scenarios =>
        [
            ("run SD 0", day => day with { RunSdDb = 0 }, [False]),
            ("run SD 0.2", day => day with { RunSdDb = 0.2 }, [False, HalfWidth]),
            ("run SD 0.4", day => day, [False, OneSegment, Kind, HalfWidth, SegmentHalfWidth]),
            ("run SD 0.6", day => day with { RunSdDb = 0.6 }, [False, Kind]),
            ("drift 1 dB", day => day with { DriftDb = 1 }, [False]),
            ("10 % missing", day => day with { MissingShare = 0.1 }, [False, OneSegment]),
            ("20 % missing", day => day with { MissingShare = 0.2 }, [False]),
            ("whole-dB ranges", day => day with { WholeDb = true }, [False]),
            ("10 % traffic left in", day => day with { TrafficShare = 0.1 }, [False, OneSegment]),
            ("traffic, 80 % of the clear flagged", day => day with { TrafficShare = 0.1, FlaggedShare = 0.8 }, [False]),
            ("true 1 dB", day => day with { DifferenceDb = 1 }, [Equivalent, Cover, Power]),
            ("true 2 dB", day => day with { DifferenceDb = 2 }, [Power]),
        ];

    private static Measure False => new("false difference %", outcome => $"{outcome.DifferencePercent:0.0}");

    private static Measure Power => new("difference shown %", outcome => $"{outcome.DifferencePercent:0.0}");

    private static Measure Equivalent => new("false equivalence %", outcome => $"{outcome.EquivalentPercent:0.0}");

    private static Measure Cover => new("cover %", outcome => $"{outcome.CoverPercent:0.0}");

    private static Measure OneSegment => new("one segment's interval misses %", outcome => $"{outcome.SegmentPercent:0.0}");

    private static Measure Kind => new("a kind of 3 segments misses %", outcome => $"{outcome.KindPercent:0.0}");

    private static Measure HalfWidth => new("median half-width dB", outcome => $"{outcome.HalfWidthDb:0.00}");

    private static Measure SegmentHalfWidth => new("one segment's half-width dB", outcome => $"{outcome.SegmentHalfWidthDb:0.00}");

    private sealed record Measure(string Name, Func<SimulatedDays, string> Cell);
}
