using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>
/// The whole procedure on days as they are: scatter that differs from day to day, a difference that differs over the segments, drift,
/// traffic of which most is flagged, whole-dB ranges; without an archive, and with four earlier days of A B B A (8 degrees of freedom):
/// clean ones, or days that suffered the same drift and traffic.
/// </summary>
internal static class RealisticDays
{
    private const int ArchiveDays = 4;
    private const int Pool = 4000;

    /// <summary>Prints the table. Same seed and days, same table.</summary>
    public static void Print(TextWriter to, int days, int seed)
    {
        (string Name, IReadOnlyList<ArchiveLine>[]? Pool)[] archives =
        [
            ("no", null),
            ("clean days", Earlier(seed, asToday: false)),
            ("days like today", Earlier(seed, asToday: true)),
        ];
        to.WriteLine($"whole procedure on a realistic day, {days} days a cell, seed {seed}");
        to.WriteLine("| order, archive | cover % | half-width dB | difference shown % at 0 / 1 / 1.5 / 2 dB | equivalent % at 0 / 1 dB |");
        to.WriteLine("| --- | --- | --- | --- | --- |");
        int row = 10_000;
        foreach (string order in new[] { "ABA", "ABBA", "ABABA", "ABABAB", "ABBAABBA" })
        {
            foreach ((string name, IReadOnlyList<ArchiveLine>[]? pool) in archives)
            {
                SimulatedDays[] at = [.. new[] { 0, 1, 1.5, 2 }.Select((db, place) => Many(order, db, days, seed, row + place, pool))];
                to.WriteLine(
                    $"| {order}, {name} | {at[0].CoverPercent:0.0} | {at[0].HalfWidthDb:0.00} | "
                        + $"{string.Join(" / ", at.Select(outcome => $"{outcome.DifferencePercent:0.0}"))} | {at[0].EquivalentPercent:0.0} "
                        + $"/ {at[1].EquivalentPercent:0.0} |"
                );
                to.Flush();
            }

            row += 10;
        }
    }

    private static SimulatedDays Many(string order, double differenceDb, int days, int seed, int row, IReadOnlyList<ArchiveLine>[]? pool) =>
        SimulatedDays.Of(lot => Model(order, differenceDb, lot), days, seed, row, pool is null ? null : lot => Draw(pool, lot));

    private static InventedDay Model(string order, double differenceDb, RepeatableLot lot) =>
        new(order)
        {
            RunSdDb = 0.35 * Math.Max(0.1, 1 + 0.30 * lot.Normal()),
            ReadingSdDb = 0.75 * Math.Max(0.1, 1 + 0.15 * lot.Normal()),
            DifferenceDb = differenceDb,
            DifferenceSdDb = 0.3,
            DriftDb = 0.5,
            TrafficShare = 0.12,
            FlaggedShare = 0.85,
            WholeDb = true,
        };

    private static IReadOnlyList<ArchiveLine>[] Earlier(int seed, bool asToday)
    {
        IReadOnlyList<ArchiveLine>[] pool = new IReadOnlyList<ArchiveLine>[Pool];
        Parallel.For(
            0,
            Pool,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            day =>
            {
                RepeatableLot lot = RepeatableLot.For(seed, 9_999, day);
                InventedDay model = Model("ABBA", 0, lot);
                MeasuredDay drawn = (asToday ? model : model with { DriftDb = 0, TrafficShare = 0 }).Draw(lot).Day;
                ClassComparison steady = BlindComparison.Of(drawn, new ComparisonTerms("A")).Comparisons[0].Classes.Steady!;
                pool[day] =
                [
                    new ArchiveLine($"{day}", MeasureClass.Steady, steady.NuRun, steady.SRunDb, steady.Kbar ?? 0, steady.NuE, steady.SEDb),
                ];
            }
        );
        return pool;
    }

    private static IReadOnlyList<ArchiveLine> Draw(IReadOnlyList<ArchiveLine>[] pool, RepeatableLot lot) =>
        [.. Enumerable.Range(0, ArchiveDays).SelectMany(_ => pool[(int)(lot.Share() * Pool)])];
}
