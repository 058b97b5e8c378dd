using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>The clock of a log by the levels that were typed.</summary>
/// <param name="BestS">The offset that fits best, s.</param>
/// <param name="LowS">The least offset that fits nearly as well, s.</param>
/// <param name="HighS">The greatest, s.</param>
/// <param name="Used">Readings that lay within the log at every offset tried.</param>
public sealed record TypedAlignment(double BestS, double LowS, double HighS, int Used)
{
    private const double CapDb = 3;
    private const double StepS = 0.1;
    private const int FewestLevels = 3;
    private const int FewestReadings = 5;

    /// <summary>The middle of the range as an offset with its half-range.</summary>
    public ClockOffset Offset => new((LowS + HighS) / 2, (HighS - LowS) / 2, ClockSource.TypedLevels);

    /// <summary>
    /// Tries offsets from <paramref name="fromS"/> to <paramref name="toS"/>: in the seconds before each reading was stored the middle of
    /// the log (of its 10 % and 90 % quantiles) is held against the middle typed; cost is the mean distance, each capped at 3 dB. The range
    /// is where the cost exceeds the least by no more than two standard errors of the difference. Steady stretches look alike a little
    /// earlier, so the range is wide towards too early, and a typing delay is part of the offset. Own rule, no source. Null: fewer than
    /// five readings can be used.
    /// </summary>
    /// <param name="readings">Readings of steady segments.</param>
    /// <param name="log">Levels in the order of time.</param>
    /// <param name="windowS">How many seconds before storing the levels were read in.</param>
    /// <param name="fromS">The least offset tried, s.</param>
    /// <param name="toS">The greatest offset tried, s.</param>
    public static TypedAlignment? Of(
        IReadOnlyList<TypedRange> readings,
        ImmutableArray<LoggedLevel> log,
        double windowS,
        double fromS = -30,
        double toS = 30
    )
    {
        double[] offsets =
        [
            .. Enumerable.Range(0, (int)Math.Ceiling((toS + (StepS / 2) - fromS) / StepS)).Select(i => fromS + (i * StepS)),
        ];
        double[][] costs =
        [
            .. readings
                .Select(reading => offsets.Select(offset => Cost(reading, log, windowS, offset)).ToArray())
                .Where(row => !row.Contains(null))
                .Select(row => row.Select(cost => cost!.Value).ToArray()),
        ];
        if (costs.Length < FewestReadings)
        {
            return null;
        }

        int best = Enumerable.Range(0, offsets.Length).MinBy(i => costs.Sum(row => row[i]));
        bool[] isNear = [.. Enumerable.Range(0, offsets.Length).Select(i => IsNear(costs, i, best))];
        int low = best;
        while (low > 0 && isNear[low - 1])
        {
            low--;
        }

        int high = best;
        while (high < offsets.Length - 1 && isNear[high + 1])
        {
            high++;
        }

        return new(offsets[best], offsets[low], offsets[high], costs.Length);
    }

    private static bool IsNear(double[][] costs, int i, int best)
    {
        double[] more = [.. costs.Select(row => row[i] - row[best])];
        double mean = more.Average();
        double deviation = Math.Sqrt(more.Sum(one => (one - mean) * (one - mean)) / (more.Length - 1));
        return mean <= (2 * deviation / Math.Sqrt(more.Length)) + 1e-12;
    }

    private static double? Cost(TypedRange reading, ImmutableArray<LoggedLevel> log, double windowS, double offset)
    {
        int from = FirstAt(log, reading.StoredS + offset - windowS);
        int to = FirstAt(log, reading.StoredS + offset);
        return to - from < FewestLevels ? null : Math.Min(CapDb, Math.Abs(reading.MiddleDb - LogMiddle.Of(log.AsSpan(from, to - from))));
    }

    private static int FirstAt(ImmutableArray<LoggedLevel> log, double atS)
    {
        int low = 0;
        int high = log.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = log[middle].AtS < atS ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}

/// <summary>A reading as it was typed, and when it was stored.</summary>
/// <param name="StoredS">When it was stored, s on the laptop's clock.</param>
/// <param name="LowDb">Lowest level typed, dB(A).</param>
/// <param name="HighDb">Highest level typed, dB(A).</param>
public readonly record struct TypedRange(double StoredS, double LowDb, double HighDb)
{
    /// <summary>The middle of the range, dB(A).</summary>
    public double MiddleDb => (LowDb + HighDb) / 2;
}

/// <summary>
/// The middle of a stretch of levels as a person reads a range off a meter: half-way between the 10 % and the 90 % quantile. Own rule, no
/// source.
/// </summary>
public static class LogMiddle
{
    /// <summary>The middle of logged levels, dB.</summary>
    /// <param name="levels">One or more.</param>
    public static double Of(ReadOnlySpan<LoggedLevel> levels)
    {
        double[] sorted = new double[levels.Length];
        for (int i = 0; i < sorted.Length; i++)
        {
            sorted[i] = levels[i].LevelDb;
        }

        return Of(sorted);
    }

    /// <summary>The middle of levels, dB, which are sorted by it.</summary>
    /// <param name="levels">One or more.</param>
    public static double Of(double[] levels)
    {
        Array.Sort(levels);
        return (Quantile.OfSorted(levels, 0.1) + Quantile.OfSorted(levels, 0.9)) / 2;
    }
}

/// <summary>One level of a meter's log or of a recording.</summary>
/// <param name="AtS">When, s on the clock of the log.</param>
/// <param name="LevelDb">The level, dB(A).</param>
public readonly record struct LoggedLevel(double AtS, double LevelDb);
