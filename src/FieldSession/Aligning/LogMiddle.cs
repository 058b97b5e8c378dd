using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>The middle of a stretch of levels as a person reads a range off a meter: half-way between the 10 % and the 90 % quantile. Own rule, no source.</summary>
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
