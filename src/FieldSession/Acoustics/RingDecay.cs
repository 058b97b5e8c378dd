using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>How long the ring lasts after the impacts of one run and segment.</summary>
/// <param name="T60S">Time for 60 dB of decay, s: one for all impacts.</param>
/// <param name="LowS">Lower end of the likelihood interval, 95 %, s; one mode of ringing assumed.</param>
/// <param name="HighS">Upper end, s.</param>
/// <param name="Events">Impacts that were 20 dB and more over the noise; only they count.</param>
public sealed record RingDecayTime(double T60S, double LowS, double HighS, int Events);

/// <summary>
/// Decay of the ring after impacts. The band is filtered backwards in time, so that the filter's own ringing lies before the impact (the
/// idea of ISO 3382-2, from memory); the squared envelope, averaged over blocks of 1/(2 B) s, is fitted from after the last hit of an axle
/// by a exp(-13.8155 t / T) + N with an exponential likelihood: a and N of every impact its own, T common. The interval is that of the
/// profile likelihood. Two modes near each other beat, and then the interval is too narrow: a verdict comes from runs, never from one
/// interval.
/// </summary>
public static class RingDecay
{
    private const double LeastOverNoiseDb = 20;
    private const int Steps = 161;
    private const double ShortestS = 0.02;
    private const double LongestS = 3;

    // half of the 95 % point of chi square with one degree of freedom
    private const double IntervalDrop = 1.9207;

    /// <summary>The decay time; null: no impact is 20 dB over the noise.</summary>
    /// <param name="impacts">The low branch around one impact each: 0.5 s and more before it, 0.8 s and more behind its last hit.</param>
    /// <param name="rateHz">Samples a second of the low branch.</param>
    /// <param name="band">The band.</param>
    public static RingDecayTime? Of(IEnumerable<IReadOnlyList<double>> impacts, double rateHz, FrequencyBand band)
    {
        double[][] profiles =
        [
            .. impacts
                .Select(impact => ImpactEnvelope.Of(impact, rateHz, band))
                .OfType<ImpactEnvelope>()
                .Where(envelope => envelope.OverNoiseDb >= LeastOverNoiseDb)
                .Select(envelope => envelope.Profile(Times)),
        ];
        if (profiles.Length == 0)
        {
            return null;
        }

        double[] sum = [.. Enumerable.Range(0, Steps).Select(i => profiles.Sum(profile => profile[i]))];
        int best = Enumerable.Range(0, Steps).MinBy(i => sum[i]);
        int[] inside = [.. Enumerable.Range(0, Steps).Where(i => sum[i] <= sum[best] + IntervalDrop)];
        return new(TimeAt(best + Shift(sum, best)), TimeAt(inside[0]), TimeAt(inside[^1]), profiles.Length);
    }

    private static IEnumerable<double> Times => Enumerable.Range(0, Steps).Select(i => TimeAt(i));

    private static double TimeAt(double step) => ShortestS * Math.Pow(LongestS / ShortestS, step / (Steps - 1));

    // where the parabola through the least value and its neighbours is lowest
    private static double Shift(double[] sum, int best) =>
        best is 0 or Steps - 1 ? 0 : 0.5 * (sum[best - 1] - sum[best + 1]) / (sum[best - 1] - (2 * sum[best]) + sum[best + 1]);
}
