using System.Collections.Immutable;

namespace FieldSession.Signals;

/// <summary>
/// The mean spectrum of a stretch by Welch's method, blocks overlapping by half; and the level of one band block by block.
/// </summary>
/// <param name="transform">The spectrum of a block; several means may share it in turn.</param>
/// <param name="followed">The band whose level is kept block by block; null: none.</param>
public sealed class WelchMean(WelchTransform transform, FrequencyBand? followed = null) : ISampleTaker
{
    private readonly double[] _block = new double[transform.Length];
    private readonly double[] _density = new double[(transform.Length / 2) + 1];
    private readonly double[] _sum = new double[(transform.Length / 2) + 1];
    private readonly List<double> _followed = [];
    private int _filled;
    private int _blocks;

    /// <summary>The mean spectrum so far; null: less than one block was heard.</summary>
    public PowerSpectrum? Spectrum => _blocks == 0 ? null : new(transform.BinHz, [.. _sum.Select(sum => sum / _blocks)]);

    /// <summary>Median over the blocks of the followed band's level, dB; null: no block, silence, or no band is followed.</summary>
    public double? FollowedMedianDb => _followed.Count == 0 ? null : Level.OfMeanSquare(Quantile.Median(_followed));

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        while (samples.Length > 0)
        {
            int taken = Math.Min(samples.Length, _block.Length - _filled);
            samples[..taken].CopyTo(_block.AsSpan(_filled));
            _filled += taken;
            samples = samples[taken..];
            if (_filled == _block.Length)
            {
                AddBlock();
            }
        }
    }

    private void AddBlock()
    {
        transform.Density(_block, _density);
        for (int k = 0; k < _sum.Length; k++)
        {
            _sum[k] += _density[k];
        }

        _blocks++;
        if (followed is { } band)
        {
            _followed.Add(new PowerSpectrum(transform.BinHz, ImmutableArray.Create(_density)).MeanSquare(band));
        }

        int half = _block.Length / 2;
        _block.AsSpan(half).CopyTo(_block);
        _filled = half;
    }
}

/// <summary>
/// The spectrum of one block for Welch's method: Hann window, no mean removed, power density on one side (P. D. Welch, IEEE Transactions on
/// Audio and Electroacoustics 15, 1967). One object serves one caller at a time.
/// </summary>
/// <param name="length">Samples of a block, a power of two.</param>
/// <param name="rateHz">Samples a second.</param>
public sealed class WelchTransform(int length, double rateHz)
{
    private readonly FastFourier _fourier = new(length);
    private readonly double[] _window = Hann(length);
    private readonly double[] _windowed = new double[length];

    /// <summary>Samples of a block.</summary>
    public int Length => length;

    /// <summary>Distance of neighbouring bins, Hz.</summary>
    public double BinHz => rateHz / length;

    /// <summary>Mean square per Hz, from 0 Hz to half the rate.</summary>
    /// <param name="block">The samples of the block.</param>
    /// <param name="density">Half the length and one more.</param>
    public void Density(ReadOnlySpan<double> block, Span<double> density)
    {
        for (int i = 0; i < _windowed.Length; i++)
        {
            _windowed[i] = block[i] * _window[i];
        }

        _fourier.Power(_windowed, density);

        // the squares of a Hann window sum to 3/8 of its length; both sides of the spectrum count but at its two ends
        double scale = 2 / (rateHz * 0.375 * length);
        for (int k = 0; k < density.Length; k++)
        {
            density[k] *= scale;
        }

        density[0] /= 2;
        density[^1] /= 2;
    }

    private static double[] Hann(int length) =>
        [.. Enumerable.Range(0, length).Select(i => 0.5 - (0.5 * Math.Cos(2 * Math.PI * i / length)))];
}

/// <summary>A power density spectrum from 0 Hz to half the rate.</summary>
/// <param name="BinHz">Distance of neighbouring bins, Hz; bin k lies at k times this.</param>
/// <param name="Density">Mean square per Hz of every bin.</param>
public sealed record PowerSpectrum(double BinHz, ImmutableArray<double> Density)
{
    /// <summary>Mean square in a band: bins between its edges, the two at the edges by their share.</summary>
    public double MeanSquare(FrequencyBand band)
    {
        int first = Math.Max(0, (int)Math.Floor(band.LowerHz / BinHz - 0.5));
        int last = Math.Min(Density.Length - 1, (int)Math.Ceiling(band.UpperHz / BinHz + 0.5));
        double sum = 0;
        for (int k = first; k <= last; k++)
        {
            double width = Math.Min(band.UpperHz, (k + 0.5) * BinHz) - Math.Max(band.LowerHz, (k - 0.5) * BinHz);
            sum += Density[k] * Math.Max(0, width);
        }

        return sum;
    }

    /// <summary>The level in a band, dB; null for silence.</summary>
    public double? LevelDb(FrequencyBand band) => Level.OfMeanSquare(MeanSquare(band));
}

/// <summary>Levels of mean squares, 0 dB at mean square 1: a sine of full scale is -3.01 dB.</summary>
public static class Level
{
    /// <summary>10 lg of a mean square, dB; null for silence.</summary>
    public static double? OfMeanSquare(double meanSquare) => meanSquare > 0 ? 10 * Math.Log10(meanSquare) : null;
}
