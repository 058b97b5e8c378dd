using System.Collections.Immutable;
using System.Numerics;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>The squared envelope of a band behind one impact, in blocks, and the noise before it.</summary>
internal sealed class ImpactEnvelope
{
    private const double NepersOf60Db = 13.815510557964274;
    private const double FitS = 0.6;
    private const double LastHitWithinS = 0.4;
    private const double BeforeImpactS = 0.45;
    private const int AmplitudeSteps = 121;
    private readonly double[] _blocks;
    private readonly double _blockS;
    private readonly double _noise;

    private ImpactEnvelope(double[] blocks, double blockS, double noise, double overNoiseDb)
    {
        _blocks = blocks;
        _blockS = blockS;
        _noise = noise;
        OverNoiseDb = overNoiseDb;
    }

    /// <summary>How far the ring rises over the noise of its band at the start of the fit, dB.</summary>
    public double OverNoiseDb { get; }

    /// <summary>The envelope of one impact; null where there are too few samples, or only silence.</summary>
    public static ImpactEnvelope? Of(IReadOnlyList<double> samples, double rateHz, FrequencyBand band)
    {
        int block = Math.Max(1, (int)Math.Round(rateHz / (2 * band.WidthHz)));
        double blockS = block / rateHz;
        double[] blocks = Means(Squares(Backwards(samples, rateHz, band)), block);
        if (blocks.Length * blockS < 1)
        {
            return null;
        }

        int top = Array.IndexOf(blocks, blocks.Max());
        double noise = blocks.Take(Math.Max(1, top - (int)(0.1 / blockS) - (int)((BeforeImpactS - 0.1) / blockS))).Average();
        int start = LastHit(blocks, top, (int)(LastHitWithinS / blockS));
        double[] fitted = [.. blocks.Skip(start + 1).Take((int)(FitS / blockS))];
        return noise > 0 && fitted.Length > 1 ? new(fitted, blockS, noise, 10 * Math.Log10(blocks[start] / noise)) : null;
    }

    /// <summary>The negative log likelihood of decay times, each with its best amplitude.</summary>
    public double[] Profile(IEnumerable<double> times)
    {
        double most = Math.Log(_blocks.Max());
        double[] amplitudes = [.. Enumerable.Range(0, AmplitudeSteps).Select(i => Math.Exp(most - 5 + (8.0 * i / (AmplitudeSteps - 1))))];
        return
        [
            .. times.Select(time =>
            {
                double[] decay = [.. Enumerable.Range(0, _blocks.Length).Select(i => Math.Exp(-NepersOf60Db * i * _blockS / time))];
                return amplitudes.Min(amplitude => NegativeLogLikelihood(amplitude, decay));
            }),
        ];
    }

    // front and rear axle hit one after the other: the last local maximum within 6 dB of the highest counts
    private static int LastHit(double[] blocks, int top, int within)
    {
        for (int i = Math.Min(blocks.Length - 3, top + within - 1); i > top; i--)
        {
            if (blocks[i] >= blocks[i - 1] && blocks[i] >= blocks[i + 1] && blocks[i] >= blocks[top] / 4)
            {
                return i;
            }
        }

        return top;
    }

    private static double[] Backwards(IReadOnlyList<double> samples, double rateHz, FrequencyBand band)
    {
        double[] reversed = [.. samples.Reverse()];
        new RunningSections(SecondOrderSection.ButterworthBandPass(band, rateHz)).Filter(reversed, reversed);
        Array.Reverse(reversed);
        return reversed;
    }

    // squares of the analytic signal: the transform without its negative frequencies, doubled (Gabor 1946); zeros behind the end keep it
    // from wrapping
    private static double[] Squares(double[] samples)
    {
        int length = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(4, samples.Length + 256));
        double[] real = new double[length];
        double[] imaginary = new double[length];
        samples.CopyTo(real, 0);
        FastFourier fourier = new(2 * length);
        fourier.Transform(real, imaginary);
        for (int k = 1; k < length / 2; k++)
        {
            (real[k], imaginary[k]) = (2 * real[k], 2 * imaginary[k]);
        }

        real.AsSpan((length / 2) + 1).Clear();
        imaginary.AsSpan((length / 2) + 1).Clear();

        // backwards: real and imaginary parts change places
        fourier.Transform(imaginary, real);
        return [.. samples.Select((_, i) => ((real[i] * real[i]) + (imaginary[i] * imaginary[i])) / ((double)length * length))];
    }

    private static double[] Means(double[] squares, int block) =>
        [.. Enumerable.Range(0, squares.Length / block).Select(i => squares.AsSpan(i * block, block).ToArray().Average())];

    private double NegativeLogLikelihood(double amplitude, double[] decay)
    {
        double sum = 0;
        for (int i = 0; i < decay.Length; i++)
        {
            double model = (amplitude * decay[i]) + _noise;
            sum += Math.Log(model) + (_blocks[i] / model);
        }

        return sum;
    }
}

/// <summary>
/// Finds the impact in a stretch that holds one: the second around its loudest twentieth of a second is what the ring's decay is looked for
/// in.
/// </summary>
public static class ImpactPiece
{
    private const double BlockS = 0.05;
    private const double BeforeS = 0.8;
    private const double BehindS = 1.4;

    /// <summary>The piece around the impact; null: the stretch ends too near to it.</summary>
    /// <param name="samples">The low branch of the stretch.</param>
    /// <param name="rateHz">Samples a second.</param>
    public static IReadOnlyList<double>? Of(ImmutableArray<double> samples, double rateHz)
    {
        int block = (int)(BlockS * rateHz);
        int blocks = samples.Length / block;
        if (blocks == 0)
        {
            return null;
        }

        int top = Enumerable.Range(0, blocks).MaxBy(b => samples.AsSpan(b * block, block).ToArray().Sum(sample => sample * sample)) * block;
        int from = top - (int)(BeforeS * rateHz);
        int to = top + (int)(BehindS * rateHz);
        return from >= 0 && to <= samples.Length ? samples[from..to] : null;
    }
}
