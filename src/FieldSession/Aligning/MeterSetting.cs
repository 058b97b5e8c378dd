using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>Which time weighting the meter was on when its levels were typed, by how wide the typed ranges are.</summary>
public static class MeterSetting
{
    private const int Fewest = 6;

    /// <summary>
    /// Whether the typed widths are nearer to those of S than to those of F: then the meter may have been on slow. Null: fewer than six ranges, or the two
    /// widths do not differ. Own rule, no source.
    /// </summary>
    /// <param name="typedWidthsDb">High minus low of every typed range, dB.</param>
    /// <param name="fastWidthsDb">90 % minus 10 % quantile of LAF over the same seconds, dB; as many.</param>
    /// <param name="slowWidthsDb">The same of LAS, dB; as many.</param>
    public static bool? IsLikeSlow(IReadOnlyCollection<double> typedWidthsDb, IReadOnlyCollection<double> fastWidthsDb, IReadOnlyCollection<double> slowWidthsDb)
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
