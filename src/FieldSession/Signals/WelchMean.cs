using System.Collections.Immutable;

namespace FieldSession.Signals;

/// <summary>The mean spectrum of a stretch by Welch's method, blocks overlapping by half; and the level of one band block by block.</summary>
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
    public PowerSpectrum? Spectrum =>
        _blocks == 0 ? null : new(transform.BinHz, [.. _sum.Select(sum => sum / _blocks)]);

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
