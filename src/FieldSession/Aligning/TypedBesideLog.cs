using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>A typed reading with the log's levels over the same seconds.</summary>
/// <param name="Typed">The reading.</param>
/// <param name="LevelsDb">Levels of the log, dB(A), in the order of time; empty: none.</param>
public sealed record BesideLog(TypedRange Typed, ImmutableArray<double> LevelsDb);

/// <summary>What the log says about one reading.</summary>
/// <param name="Fit">How it fits.</param>
/// <param name="ResidualDb">Typed middle minus the log's, minus the median of all such differences, dB; null: nothing logged.</param>
/// <param name="HasTraffic">Whether traffic is proposed: the log lies 5 dB and more over its own median for 1 to 8 s.</param>
public sealed record EntryFinding(EntryFit Fit, double? ResidualDb, bool HasTraffic);

/// <summary>
/// Typed readings held against a log. Residual: typed middle minus the log's middle, minus the median over all readings, so that a meter
/// beside another does no harm. Doubt: beyond 3 dB and beyond 4 robust standard deviations (1.4826 x median absolute deviation). Own rule,
/// no source. All runs are treated alike, and nothing is left out by it.
/// </summary>
/// <param name="Entries">A finding for each reading, in the order given.</param>
/// <param name="MedianDb">Median of typed minus logged, dB; null: nothing logged.</param>
/// <param name="LimitDb">From where on a residual is a doubt, dB.</param>
public sealed record TypedBesideLog(ImmutableArray<EntryFinding> Entries, double? MedianDb, double LimitDb)
{
    private const double LeastLimitDb = 3;
    private const double RobustDeviations = 4;
    private const double MadToDeviation = 1.4826;
    private const double NearTenDb = 2;
    private const double SwappedFitsDb = 1.5;

    /// <summary>Holds readings against the log.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="stepS">Seconds from one level of the log to the next.</param>
    public static TypedBesideLog Of(IReadOnlyList<BesideLog> readings, double stepS)
    {
        double?[] differences = [.. readings.Select(Difference)];
        double[] known = [.. differences.OfType<double>()];
        if (known.Length == 0)
        {
            return new([.. readings.Select(_ => new EntryFinding(EntryFit.NotHeard, null, false))], null, LeastLimitDb);
        }

        double median = Quantile.Median(known);
        double limit = Math.Max(
            LeastLimitDb,
            RobustDeviations * MadToDeviation * Quantile.Median(known.Select(one => Math.Abs(one - median)))
        );
        return new(
            [
                .. readings.Zip(
                    differences,
                    (reading, difference) =>
                        new EntryFinding(
                            Fit(reading, difference - median, limit, median),
                            difference - median,
                            LoggedTraffic.IsIn(reading.LevelsDb, stepS)
                        )
                ),
            ],
            median,
            limit
        );
    }

    private static double? Difference(BesideLog reading) =>
        reading.LevelsDb.IsEmpty ? null : reading.Typed.MiddleDb - LogMiddle.Of([.. reading.LevelsDb]);

    private static EntryFit Fit(BesideLog reading, double? residual, double limit, double median)
    {
        if (residual is not { } off)
        {
            return EntryFit.NotHeard;
        }

        if (Math.Abs(off) <= limit)
        {
            return EntryFit.Fits;
        }

        if (Math.Abs(Math.Abs(off) - 10) <= NearTenDb)
        {
            return EntryFit.TenOff;
        }

        double logged = LogMiddle.Of([.. reading.LevelsDb]) + median;
        return SwappedRanges(reading.Typed).Any(swapped => Math.Abs(swapped.MiddleDb - logged) <= SwappedFitsDb)
            ? EntryFit.DigitsSwapped
            : EntryFit.DoesNotFit;
    }

    // one end, the other, or both, as far as the result is a range
    private static IEnumerable<TypedRange> SwappedRanges(TypedRange typed)
    {
        (double Low, double High)[] ends =
        [
            (Swapped(typed.LowDb), typed.HighDb),
            (typed.LowDb, Swapped(typed.HighDb)),
            (Swapped(typed.LowDb), Swapped(typed.HighDb)),
        ];
        return ends.Where(end => end.Low <= end.High).Select(end => typed with { LowDb = end.Low, HighDb = end.High });
    }

    private static double Swapped(double levelDb)
    {
        double whole = Math.Floor(levelDb);
        double tens = Math.Floor(whole / 10);
        return levelDb is >= 10 and < 100 ? ((whole - (10 * tens)) * 10) + tens + (levelDb - whole) : levelDb;
    }
}

/// <summary>How a typed reading fits the log beside it.</summary>
public enum EntryFit
{
    /// <summary>It fits.</summary>
    Fits,

    /// <summary>It is ten off: a digit of the tens was misread or mistyped.</summary>
    TenOff,

    /// <summary>It fits once the digits of one end are swapped.</summary>
    DigitsSwapped,

    /// <summary>It does not fit, and no usual slip explains it.</summary>
    DoesNotFit,

    /// <summary>The log holds nothing there.</summary>
    NotHeard,
}

/// <summary>
/// Whether somebody passed by: the level lies 5 dB and more over the median of its window for 1 to 8 s in all. Own rule, no source; one for
/// all runs.
/// </summary>
public static class LoggedTraffic
{
    private const double OverDb = 5;
    private const double ShortestS = 1;
    private const double LongestS = 8;

    /// <summary>Whether traffic is proposed.</summary>
    /// <param name="levelsDb">Levels of the window, dB(A).</param>
    /// <param name="stepS">Seconds from one level to the next.</param>
    public static bool IsIn(ImmutableArray<double> levelsDb, double stepS)
    {
        if (levelsDb.IsEmpty)
        {
            return false;
        }

        double median = Quantile.Median(levelsDb);
        double seconds = levelsDb.Count(level => level >= median + OverDb) * stepS;
        return seconds is >= ShortestS and <= LongestS;
    }
}
