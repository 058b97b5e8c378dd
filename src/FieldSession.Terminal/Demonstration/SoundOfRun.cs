namespace FieldSession.Terminal.Demonstration;

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

/// <summary>
/// Makes the sound of a run: seeded noise by segment, a ring near 219 Hz, impacts that ring on. Levels as if 94 dB were 20 dB below full
/// scale.
/// </summary>
internal static class SoundOfRun
{
    private const double RingHz = 219;
    private const double FullScaleDb = 114;
    private const double DampingHz = 12;
    private const double AxlesS = 0.15;

    /// <summary>The samples, as numbers of full scale.</summary>
    /// <param name="seed">What tells this run's noise from others'.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="seconds">Its length, s.</param>
    /// <param name="stretches">What is heard, one behind the other.</param>
    public static float[] Of(int seed, int rateHz, double seconds, IReadOnlyList<HeardStretch> stretches)
    {
        Random lot = new(seed);
        float[] samples = new float[(int)(seconds * rateHz)];
        Resonator ring = new(RingHz, DampingHz, rateHz);
        OnePole broad = new(900, rateHz);
        double broadGain = 1 / Deviation(new OnePole(900, rateHz).Next, new Random(7));
        double ringGain = 1 / Deviation(new Resonator(RingHz, DampingHz, rateHz).Next, new Random(8));
        int at = 0;
        (double noiseGain, double ringingGain) = Gains(stretches[at], broadGain, ringGain);
        for (int i = 0; i < samples.Length; i++)
        {
            double time = (double)i / rateHz;
            while (at < stretches.Count - 1 && time >= stretches[at].ToS)
            {
                at++;
                (noiseGain, ringingGain) = Gains(stretches[at], broadGain, ringGain);
            }

            samples[i] = (float)(
                (noiseGain * broad.Next(White(lot))) + (ringingGain * ring.Next(White(lot))) + Impact(stretches[at], time)
            );
        }

        return samples;
    }

    /// <summary>The calibrator on the microphone: 94 dB at 1 kHz.</summary>
    public static float[] Tone(int rateHz, double seconds, double levelDb = 94) =>
        [
            .. Enumerable
                .Range(0, (int)(seconds * rateHz))
                .Select(i => (float)(Math.Sqrt(2) * Amplitude(levelDb) * Math.Sin(2 * Math.PI * 1000 * i / rateHz))),
        ];

    /// <summary>Writes a WAV file of 16 bits, mono.</summary>
    /// <exception cref="IOException">It can't be written.</exception>
    public static void Write(string path, float[] samples, int rateHz)
    {
        using BinaryWriter file = new(new BufferedStream(File.Create(path), 1 << 16));
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

    private static (double Noise, double Ring) Gains(HeardStretch stretch, double broad, double ring) =>
        (Amplitude(stretch.NoiseDb) * broad, Amplitude(stretch.RingDb) * ring);

    private static double Amplitude(double levelDb) => Math.Pow(10, (levelDb - FullScaleDb) / 20);

    // front and rear axle, each a ring that dies away
    private static double Impact(HeardStretch stretch, double time)
    {
        if (stretch.ImpactAtS is not { } at || time < at)
        {
            return 0;
        }

        double amplitude = Amplitude(stretch.NoiseDb + 30);
        return amplitude * (Blow(time - at, stretch.RingLastsS) + Blow(time - at - AxlesS, stretch.RingLastsS));
    }

    private static double Blow(double behind, double lasts) =>
        behind < 0 ? 0 : Math.Exp(-6.9078 * behind / lasts) * Math.Sin(2 * Math.PI * RingHz * behind);

    private static double Deviation(Func<double, double> next, Random lot)
    {
        double[] passed = [.. Enumerable.Range(0, 100_000).Select(_ => next(White(lot)))];
        return Math.Sqrt(passed.Skip(10_000).Average(one => one * one));
    }

    // even between its ends, with a mean square of 1: behind a filter it is as good as Gaussian, and five times as fast
    private static double White(Random lot) => (lot.NextDouble() - 0.5) * Math.Sqrt(12);

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
