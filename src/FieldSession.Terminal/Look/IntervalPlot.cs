using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Terminal.Look;

/// <summary>
/// A difference and its 95 % interval on one row: zero is a line, the margin a dotted band, the interval a bar with
/// ends, the estimate a dot. What lies off the scale ends in an arrow.
/// </summary>
internal static class IntervalPlot
{
    private const char Zero = '\u2502';
    private const char Band = '\u00b7';
    private const char Bar = '\u2500';
    private const char LowEnd = '\u251c';
    private const char HighEnd = '\u2524';
    private const char Dot = '\u25cf';

    private static readonly ImmutableArray<double> Spans = [2, 3, 5, 8, 12, 20];

    /// <summary>The half width of a scale, dB, on which all of these lie, as far as 20 dB reach.</summary>
    public static double SpanDb(IEnumerable<Estimate> estimates, double marginDb)
    {
        double farthest = estimates
            .SelectMany(e => e.HasNoUsableInterval ? [e.DifferenceDb] : new[] { e.DifferenceDb, e.Lo95Db ?? 0, e.Hi95Db ?? 0 })
            .Select(Math.Abs)
            .Append(marginDb * 2)
            .Max();
        return Spans.FirstOrDefault(span => span >= farthest, Spans[^1]);
    }

    /// <summary>The plot.</summary>
    /// <param name="estimate">The difference; its interval may be unknown.</param>
    /// <param name="marginDb">Half width of the band, dB.</param>
    /// <param name="spanDb">Half width of the scale, dB.</param>
    /// <param name="columns">How many columns it takes; an odd number puts zero in the middle.</param>
    public static string Of(Estimate estimate, double marginDb, double spanDb, int columns)
    {
        char[] row = Ground(marginDb, spanDb, columns);
        if (estimate is { Lo95Db: { } low, Hi95Db: { } high, HasNoUsableInterval: false })
        {
            int from = At(low, spanDb, columns);
            int to = At(high, spanDb, columns);
            Array.Fill(row, Bar, from, to - from + 1);
            row[from] = low < -spanDb ? '<' : LowEnd;
            row[to] = high > spanDb ? '>' : HighEnd;
        }

        row[At(estimate.DifferenceDb, spanDb, columns)] =
            estimate.DifferenceDb < -spanDb ? '<'
            : estimate.DifferenceDb > spanDb ? '>'
            : Dot;
        return new string(row);
    }

    /// <summary>The scale above plots: its ends and zero.</summary>
    public static string Scale(double spanDb, int columns)
    {
        string low = $"-{spanDb:0.#}";
        string high = $"+{spanDb:0.#} dB";
        int middle = columns / 2;
        string left = Columns.Left(low, middle) + "0";
        return Columns.Left(left + Columns.Right(high, Math.Max(0, columns - middle - 1)), columns);
    }

    private static char[] Ground(double marginDb, double spanDb, int columns)
    {
        char[] row = new char[columns];
        Array.Fill(row, ' ');
        int from = At(-marginDb, spanDb, columns);
        int to = At(marginDb, spanDb, columns);
        Array.Fill(row, Band, from, to - from + 1);
        row[At(0, spanDb, columns)] = Zero;
        return row;
    }

    private static int At(double db, double spanDb, int columns)
    {
        double share = (Math.Clamp(db, -spanDb, spanDb) + spanDb) / (2 * spanDb);
        return (int)Math.Round(share * (columns - 1), MidpointRounding.AwayFromZero);
    }
}
