namespace FieldSession.Tests.Making;

/// <summary>What a recorder in the car would have heard on one segment, for a generator to make.</summary>
/// <param name="FromS">Where it begins, s from the first sample.</param>
/// <param name="ToS">Where it ends, s.</param>
/// <param name="NoiseDb">Level of the broad noise, dB.</param>
/// <param name="RingDb">Level of the ring of the air in the tyre, dB.</param>
internal sealed record HeardStretch(double FromS, double ToS, double NoiseDb, double RingDb)
{
    /// <summary>When the wheels hit something, s; null: a steady stretch.</summary>
    public double? ImpactAtS { get; init; }

    /// <summary>How long the ring lasts after the impact, s for 60 dB.</summary>
    public double RingLastsS { get; init; } = 0.25;
}

/// <summary>Makes the sound of a run: seeded noise by segment, a ring near 219 Hz, impacts that ring on. Levels as if 94 dB were 20 dB below full scale.</summary>
internal static class SoundOfRun
{
    public const double RingHz = 219;
    private const double FullScaleDb = 114;
    private const double DampingHz = 12;

    /// <summary>The samples, as numbers of full scale.</summary>
    public static float[] Of(int seed, int rateHz, double seconds, IReadOnlyList<HeardStretch> stretches)
    {
        Random lot = new(seed);
        float[] samples = new float[(int)(seconds * rateHz)];
        Resonator ring = new(RingHz, DampingHz, rateHz);
        OnePole broad = new(900, rateHz);
        double broadGain = 1 / Deviation(new OnePole(900, rateHz).Next, new Random(7));
        double ringGain = 1 / Deviation(new Resonator(RingHz, DampingHz, rateHz).Next, new Random(8));
        int at = 0;
        for (int i = 0; i < samples.Length; i++)
        {
            double time = (double)i / rateHz;
            while (at < stretches.Count - 1 && time >= stretches[at].ToS)
            {
                at++;
            }

            HeardStretch stretch = stretches[at];
            samples[i] = (float)((Amplitude(stretch.NoiseDb) * broadGain * broad.Next(Normal(lot)))
                + (Amplitude(stretch.RingDb) * ringGain * ring.Next(Normal(lot)))
                + Impact(stretch, time));
        }

        return samples;
    }

    /// <summary>The calibrator on the microphone: 94 dB at 1 kHz.</summary>
    public static float[] Tone(int rateHz, double seconds, double levelDb = 94) =>
        [.. Enumerable.Range(0, (int)(seconds * rateHz)).Select(i => (float)(Math.Sqrt(2) * Amplitude(levelDb) * Math.Sin(2 * Math.PI * 1000 * i / rateHz)))];

    /// <summary>Three knocks, the third of them at a time, over samples that are there.</summary>
    public static void Knock(float[] samples, int rateHz, double thirdS)
    {
        Random lot = new(5);
        foreach (double at in new[] { thirdS - 0.85, thirdS - 0.43, thirdS })
        {
            for (int i = 0; i < rateHz / 10; i++)
            {
                samples[(int)(at * rateHz) + i] += (float)(0.2 * Normal(lot) * Math.Exp(-i * 64.0 / rateHz));
            }
        }
    }

    /// <summary>A WAV file of 16 bits, mono.</summary>
    public static void Write(string path, float[] samples, int rateHz)
    {
        using BinaryWriter file = new(File.Create(path));
        file.Write("RIFF"u8);
        file.Write(36 + (2 * samples.Length));
        file.Write("WAVEfmt "u8);
        file.Write(16);
        file.Write((short)1);
        file.Write((short)1);
        file.Write(rateHz);
        file.Write(2 * rateHz);
        file.Write((short)2);
        file.Write((short)16);
        file.Write("data"u8);
        file.Write(2 * samples.Length);
        foreach (float sample in samples)
        {
            file.Write((short)Math.Clamp(Math.Round(sample * 32768.0), short.MinValue, short.MaxValue));
        }
    }

    private static double Amplitude(double levelDb) => Math.Pow(10, (levelDb - FullScaleDb) / 20);

    // front and rear axle, 0.15 s apart, each a ring that dies away
    private static double Impact(HeardStretch stretch, double time)
    {
        double sum = 0;
        foreach (double hit in stretch.ImpactAtS is { } at ? new[] { at, at + 0.15 } : [])
        {
            double behind = time - hit;
            sum += behind < 0 ? 0 : Amplitude(stretch.NoiseDb + 30) * Math.Exp(-6.9078 * behind / stretch.RingLastsS) * Math.Sin(2 * Math.PI * RingHz * behind);
        }

        return sum;
    }

    private static double Deviation(Func<double, double> next, Random lot)
    {
        double[] passed = [.. Enumerable.Range(0, 100_000).Select(_ => next(Normal(lot)))];
        return Math.Sqrt(passed.Skip(10_000).Average(one => one * one));
    }

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());

    private sealed class OnePole(double cornerHz, int rateHz)
    {
        private readonly double _keep = Math.Exp(-2 * Math.PI * cornerHz / rateHz);
        private double _last;

        public double Next(double sample) => _last = sample + (_keep * _last);
    }

    private sealed class Resonator(double hz, double widthHz, int rateHz)
    {
        private readonly double _r = Math.Exp(-Math.PI * widthHz / rateHz);
        private double _one;
        private double _two;

        public double Next(double sample)
        {
            double next = sample + (2 * _r * Math.Cos(2 * Math.PI * hz / rateHz) * _one) - (_r * _r * _two);
            (_two, _one) = (_one, next);
            return next;
        }
    }
}
