namespace FieldSession.Benchmarks;

/// <summary>
/// Error rates where a study has several sessions or days, or two cars side by side: each shifts all its runs by an amount of its own.
/// </summary>
internal static class SharedDays
{
    private static (string Name, string Order, (string? Sessions, string? Cars, string? Slots) Shared)[] Layouts =>
        [
            ("two days, ABBA then BAAB", "ABBABAAB", ("11112222", null, null)),
            ("two days, ABA then BAB", "ABABAB", ("111222", null, null)),
            ("three days of ABA", "ABAABAABA", ("111222333", null, null)),
            ("two cars side by side, ABBA and BAAB", "ABBABAAB", (null, "XXXXYYYY", "12341234")),
            ("two cars side by side, two days", "ABBABAABABBABAAB", ("1111111122222222", "XXXXYYYYXXXXYYYY", "1234123456785678")),
        ];

    /// <summary>Prints the table. Same seed and days, same table.</summary>
    public static void Print(TextWriter to, int days, int seed)
    {
        to.WriteLine(
            $"10 segments, reading SD 0.75 dB, run SD 0.4 dB, sessions, cars and slots 1 dB apart (SD), {days} studies a cell, seed {seed}"
        );
        to.WriteLine("| layout | false difference % | cover % | half-width dB | shown at 1 dB % | false equivalence at 1 dB % |");
        to.WriteLine("| --- | --- | --- | --- | --- | --- |");
        int row = 5000;
        foreach ((string name, string order, (string?, string?, string?) shared) in Layouts)
        {
            InventedDay day = new(order) { Shared = shared, SharedSdDb = 1 };
            SimulatedDays none = SimulatedDays.Of(_ => day, days, seed, row++);
            SimulatedDays one = SimulatedDays.Of(_ => day with { DifferenceDb = 1 }, days, seed, row++);
            to.WriteLine(
                $"| {name} | {none.DifferencePercent:0.0} | {none.CoverPercent:0.0} | {none.HalfWidthDb:0.00} | "
                    + $"{one.DifferencePercent:0.0} | {one.EquivalentPercent:0.0} |"
            );
        }
    }
}
