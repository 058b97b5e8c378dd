using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Signals;

namespace FieldSession.Tests.Acoustics;

/// <summary>Sounds made for a test, and the meter that hears them.</summary>
internal static class InventedSound
{
    public static readonly ImmutableArray<TimeWindow> Whole = [new(0, double.PositiveInfinity)];

    public static double[] Sine(double hz, int rateHz, double seconds, double amplitude = 1, double phase = 0) =>
        [.. Enumerable.Range(0, (int)(seconds * rateHz)).Select(i => amplitude * Math.Sin((2 * Math.PI * hz * i / rateHz) + phase))];

    /// <summary>White noise of a mean square of about the square of the deviation.</summary>
    public static double[] Noise(int seed, int rateHz, double seconds, double deviation)
    {
        Random lot = new(seed);
        return
        [
            .. Enumerable
                .Range(0, (int)(seconds * rateHz))
                .Select(_ => deviation * Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble())),
        ];
    }

    /// <summary>What a meter hears, fed in blocks of uneven length as files and pipes give them.</summary>
    public static RecordingLevels Metered(
        double[] samples,
        int rateHz,
        ImmutableArray<TimeWindow>? windows = null,
        FrequencyBand? ring = null,
        double fullScale = 1
    )
    {
        RecordingMeter meter = new(rateHz, fullScale, windows ?? Whole, ring: ring);
        InBlocks(samples, meter);
        return meter.Finish();
    }

    public static void InBlocks(double[] samples, ISampleTaker taker)
    {
        int at = 0;
        for (int length = 1; at < samples.Length; length = (length * 7 % 9973) + 1)
        {
            int taken = Math.Min(length, samples.Length - at);
            taker.Take(samples.AsSpan(at, taken));
            at += taken;
        }
    }
}
