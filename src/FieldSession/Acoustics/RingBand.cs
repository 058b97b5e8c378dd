using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Where the air inside the tyre rings, and how far it rises out of the noise beside it.</summary>
public static class RingBand
{
    /// <summary>
    /// The planned measure: the third-octave bands 200 and 250 Hz together. One band, because 10 degrees move the ring by 1.7 %, from one
    /// of the two into the other; together they keep its energy. Own choice, no source.
    /// </summary>
    public static FrequencyBand Planned => new(178, 282);

    /// <summary>Where the decay after an impact is looked for: wider, so that the filter does not ring longer than the tyre.</summary>
    public static FrequencyBand Decay => new(140, 290);

    /// <summary>The flank below the ring.</summary>
    public static FrequencyBand LowerFlank => new(120, 145);

    /// <summary>The flank above the ring.</summary>
    public static FrequencyBand UpperFlank => new(295, 340);

    /// <summary>
    /// Prominence, dB: density in the ring band over the mean of the levels of its two flanks. Gain and, nearly, speed drop out of it. Null
    /// for silence. Own measure, no source; explored, never a verdict.
    /// </summary>
    public static double? ProminenceDb(PowerSpectrum spectrum, FrequencyBand ring)
    {
        ArgumentNullException.ThrowIfNull(spectrum);
        return PerHzDb(spectrum, ring) - ((PerHzDb(spectrum, LowerFlank) + PerHzDb(spectrum, UpperFlank)) / 2);
    }

    private static double? PerHzDb(PowerSpectrum spectrum, FrequencyBand band) =>
        Level.OfMeanSquare(spectrum.MeanSquare(band) / band.WidthHz);
}

/// <summary>The spectrum of one run and segment, for the search of the ring.</summary>
/// <param name="Group">Which lines count as one, such as those of one code; each group weighs the same.</param>
/// <param name="LevelsDb">Density at every frequency of the grid, dB.</param>
public sealed record SearchedLine(int Group, ImmutableArray<double> LevelsDb);

/// <summary>Where the ring was found.</summary>
/// <param name="PeakHz">The highest excess over the floor, Hz.</param>
/// <param name="ExcessDb">That excess, dB.</param>
/// <param name="Band">The band around it.</param>
public sealed record FoundRing(double PeakHz, double ExcessDb, FrequencyBand Band);

/// <summary>
/// Looks for the band of the ring in all lines together, blind: groups weigh the same and are never told apart, so exchanging them changes
/// nothing. Floor: the straight line in dB through the medians of 120-145 and 295-340 Hz. Excess over it is smoothed over 5 Hz; the peak is
/// looked for in 150-290 Hz, and the band goes out to a quarter of its excess in dB, at least 10 Hz to each side. Own rule, no source.
/// </summary>
public static class RingSearch
{
    private const double LowestHz = 150;
    private const double HighestHz = 290;
    private const double LeastDb = 3;
    private const double LeastHz = 10;
    private const double SmoothedHz = 5;
    private const double EdgeShare = 0.25;

    /// <summary>The band of the ring; null: no ring rises 3 dB out of the noise.</summary>
    /// <param name="hz">The grid, evenly spaced, from 120 Hz or below to 340 Hz or above.</param>
    /// <param name="lines">One line or more.</param>
    public static FoundRing? Find(ImmutableArray<double> hz, IReadOnlyCollection<SearchedLine> lines)
    {
        double[] excess = Smoothed(hz, ExcessDb(hz, MeanOfGroups(hz.Length, lines)));
        int[] within = [.. Enumerable.Range(0, hz.Length).Where(i => hz[i] is >= LowestHz and <= HighestHz)];
        int peak = within.MaxBy(i => excess[i]);
        if (excess[peak] < LeastDb)
        {
            return null;
        }

        double edge = EdgeShare * excess[peak];
        int low = peak;
        while (low > within[0] && excess[low - 1] >= edge)
        {
            low--;
        }

        int high = peak;
        while (high < within[^1] && excess[high + 1] >= edge)
        {
            high++;
        }

        FrequencyBand band = new(
            Math.Max(LowestHz, Math.Min(hz[low], hz[peak] - LeastHz)),
            Math.Min(HighestHz, Math.Max(hz[high], hz[peak] + LeastHz))
        );
        return new(hz[peak], excess[peak], band);
    }

    private static double[] MeanOfGroups(int length, IReadOnlyCollection<SearchedLine> lines)
    {
        double[] mean = new double[length];
        IGrouping<int, SearchedLine>[] groups = [.. lines.GroupBy(line => line.Group)];
        foreach (IGrouping<int, SearchedLine> group in groups)
        {
            double weight = 1.0 / (groups.Length * group.Count());
            foreach (SearchedLine line in group)
            {
                for (int i = 0; i < length; i++)
                {
                    mean[i] += weight * line.LevelsDb[i];
                }
            }
        }

        return mean;
    }

    private static double[] ExcessDb(ImmutableArray<double> hz, double[] levels)
    {
        (double lowHz, double lowDb) = Flank(hz, levels, RingBand.LowerFlank);
        (double highHz, double highDb) = Flank(hz, levels, RingBand.UpperFlank);
        return [.. levels.Select((level, i) => level - (lowDb + ((highDb - lowDb) * (hz[i] - lowHz) / (highHz - lowHz))))];
    }

    private static (double MiddleHz, double MedianDb) Flank(ImmutableArray<double> hz, double[] levels, FrequencyBand band)
    {
        int[] inside = [.. Enumerable.Range(0, hz.Length).Where(i => hz[i] >= band.LowerHz && hz[i] <= band.UpperHz)];
        return (inside.Average(i => hz[i]), Quantile.Median(inside.Select(i => levels[i])));
    }

    private static double[] Smoothed(ImmutableArray<double> hz, double[] excess)
    {
        int width = Math.Max(1, (int)Math.Round(SmoothedHz / (hz[1] - hz[0])));
        int half = width / 2;
        double count = (2 * half) + 1;
        return
        [
            .. excess.Select(
                (_, i) => Enumerable.Range(i - half, (2 * half) + 1).Where(k => k >= 0 && k < excess.Length).Sum(k => excess[k]) / count
            ),
        ];
    }
}
