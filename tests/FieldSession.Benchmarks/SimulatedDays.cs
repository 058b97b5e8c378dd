using FieldSession.Comparing;

namespace FieldSession.Benchmarks;

/// <summary>What became of many days drawn from one model.</summary>
internal sealed record SimulatedDays
{
    private const double Alpha = 0.05;

    public required double DifferencePercent { get; init; }

    public required double EquivalentPercent { get; init; }

    public required double CoverPercent { get; init; }

    public required double HalfWidthDb { get; init; }

    public double SegmentPercent { get; init; }

    public double KindPercent { get; init; }

    public double SegmentHalfWidthDb { get; init; }

    /// <summary>Draws and compares.</summary>
    /// <param name="model">The model of a day.</param>
    /// <param name="days">How many days.</param>
    /// <param name="seed">The seed of the simulation.</param>
    /// <param name="row">A number of this model's own.</param>
    /// <param name="archive">Earlier days for a day; null: none.</param>
    public static SimulatedDays Of(
        Func<RepeatableLot, InventedDay> model,
        int days,
        int seed,
        int row,
        Func<RepeatableLot, IReadOnlyList<ArchiveLine>>? archive = null
    )
    {
        Seen[] seen = new Seen[days];
        Parallel.For(
            0,
            days,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            day =>
            {
                RepeatableLot lot = RepeatableLot.For(seed, row, day);
                InventedDay invented = model(lot);
                (MeasuredDay drawn, double trueDb) = invented.Draw(lot);
                seen[day] = See(drawn, trueDb, invented.DifferenceDb, archive?.Invoke(lot));
            }
        );
        return Of(seen);
    }

    private static SimulatedDays Of(Seen[] seen) =>
        new()
        {
            DifferencePercent = 100 * seen.Average(day => day.Different ? 1.0 : 0),
            EquivalentPercent = 100 * seen.Average(day => day.Equivalent ? 1.0 : 0),
            CoverPercent = 100 * seen.Average(day => day.Covered ? 1.0 : 0),
            HalfWidthDb = Median(seen.Select(day => day.HalfWidthDb)),
            SegmentPercent = 100 * seen.Average(day => day.SegmentsMissed),
            KindPercent = 100 * seen.Average(day => day.KindMissed ? 1.0 : 0),
            SegmentHalfWidthDb = Median(seen.Select(day => day.SegmentHalfWidthDb)),
        };

    private static Seen See(MeasuredDay day, double trueDb, double nominalDb, IReadOnlyList<ArchiveLine>? archive)
    {
        Comparison comparison = BlindComparison.Of(day, new ComparisonTerms("A", Archive: archive));
        ClassComparison? steady = comparison.Comparisons is [CodeComparison pair, ..] ? pair.Classes.Steady : null;
        Estimate? overall = steady?.Overall;
        Estimate[] segments = [.. (steady?.Segments ?? []).Select(segment => segment.Estimate)];
        return new Seen(
            overall?.P < Alpha,
            overall?.PTost < Alpha,
            !Misses(overall, trueDb),
            HalfWidth(overall),
            segments.Length == 0 ? 0 : segments.Average(segment => Misses(segment, nominalDb) ? 1.0 : 0),
            Misses(steady?.Kinds.FirstOrDefault(kind => kind.Kind == "smooth")?.Estimate, nominalDb),
            HalfWidth(segments.FirstOrDefault())
        );
    }

    private static bool Misses(Estimate? estimate, double trueDb) => estimate?.Lo95Db > trueDb || estimate?.Hi95Db < trueDb;

    private static double HalfWidth(Estimate? estimate) => (estimate?.Hi95Db - estimate?.Lo95Db) / 2 ?? double.PositiveInfinity;

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private readonly record struct Seen(
        bool Different,
        bool Equivalent,
        bool Covered,
        double HalfWidthDb,
        double SegmentsMissed,
        bool KindMissed,
        double SegmentHalfWidthDb
    );
}
