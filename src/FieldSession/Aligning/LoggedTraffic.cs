using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>Whether somebody passed by: the level lies 5 dB and more over the median of its window for 1 to 8 s in all. Own rule, no source; one for all runs.</summary>
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
