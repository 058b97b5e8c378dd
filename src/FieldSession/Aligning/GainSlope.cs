using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>
/// Whether a recorder turned its gain by itself: the slope of its LAeq on the middles typed off a meter. An automatic gain flattens it; a
/// calibrator's tone can't show that. Least squares; the limits are an own rule, no source.
/// </summary>
/// <param name="Slope">dB of the recorder for each dB of the meter.</param>
/// <param name="StandardError">Its standard error.</param>
/// <param name="Readings">Readings behind it.</param>
public sealed record GainSlope(double Slope, double StandardError, int Readings)
{
    private const double Least = 0.8;
    private const double Most = 1.2;
    private const double LargestError = 0.1;
    private const int Fewest = 8;

    /// <summary>Whether an automatic gain is suspected; null: the readings are too few or too much alike to tell.</summary>
    public bool? IsSuspect => StandardError <= LargestError ? Slope is < Least or > Most : null;

    /// <summary>The slope; null: fewer than eight readings, or all alike.</summary>
    /// <param name="pairs">Middle typed, dB(A), and the recorder's LAeq over the same seconds, dB.</param>
    public static GainSlope? Of(IReadOnlyCollection<(double TypedDb, double RecorderDb)> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        if (pairs.Count < Fewest)
        {
            return null;
        }

        double typed = pairs.Average(pair => pair.TypedDb);
        double recorder = pairs.Average(pair => pair.RecorderDb);
        double squares = pairs.Sum(pair => (pair.TypedDb - typed) * (pair.TypedDb - typed));
        if (squares <= 0)
        {
            return null;
        }

        double slope = pairs.Sum(pair => (pair.TypedDb - typed) * (pair.RecorderDb - recorder)) / squares;
        double rest = pairs.Sum(pair => Math.Pow(pair.RecorderDb - recorder - (slope * (pair.TypedDb - typed)), 2));
        return new(slope, Math.Sqrt(rest / (pairs.Count - 2) / squares), pairs.Count);
    }
}

/// <summary>Which time weighting the meter was on when its levels were typed, by how wide the typed ranges are.</summary>
public static class MeterSetting
{
    private const int Fewest = 6;

    /// <summary>
    /// Whether the typed widths are nearer to those of S than to those of F: then the meter may have been on slow. Null: fewer than six
    /// ranges, or the two widths do not differ. Own rule, no source.
    /// </summary>
    /// <param name="typedWidthsDb">High minus low of every typed range, dB.</param>
    /// <param name="fastWidthsDb">90 % minus 10 % quantile of LAF over the same seconds, dB; as many.</param>
    /// <param name="slowWidthsDb">The same of LAS, dB; as many.</param>
    public static bool? IsLikeSlow(
        IReadOnlyCollection<double> typedWidthsDb,
        IReadOnlyCollection<double> fastWidthsDb,
        IReadOnlyCollection<double> slowWidthsDb
    )
    {
        ArgumentNullException.ThrowIfNull(typedWidthsDb);
        if (typedWidthsDb.Count < Fewest)
        {
            return null;
        }

        double typed = Quantile.Median(typedWidthsDb);
        double fast = Quantile.Median(fastWidthsDb);
        double slow = Quantile.Median(slowWidthsDb);
        return fast - slow > 0.5 ? Math.Abs(typed - slow) < Math.Abs(typed - fast) : null;
    }
}
