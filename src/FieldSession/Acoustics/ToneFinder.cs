using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>
/// Looks for a calibrator's tone: blocks of 1 s every 0.5 s behind a Hann window. A block is pure when 95 % of its power from 50 Hz on lies within 2 % of the
/// tone's frequency. The longest stretch of pure blocks within 0.2 dB of their median, 4 s and longer, is the tone. Own rule, no source.
/// </summary>
public sealed class ToneFinder : ISampleTaker
{
    private const double PureShare = 0.95;
    private const double SteadyDb = 0.2;
    private const int FewestBlocks = 7;
    private const double HopS = 0.5;
    private const int BranchHz = 8000;

    private readonly Decimator _decimator;
    private readonly ToneBlocks _branch;
    private readonly HalfOverlap _blocks;
    private readonly double[] _window;
    private readonly double _windowSquares;
    private readonly List<double> _totals = [];

    /// <summary>A finder at rest.</summary>
    /// <param name="rateHz">Samples a second, 8000 or more.</param>
    public ToneFinder(int rateHz)
    {
        _decimator = new(rateHz, BranchHz);
        _branch = new(_decimator.RateHz);
        _blocks = new(rateHz, AddTotal);
        _window = HalfOverlap.Hann(rateHz);
        _windowSquares = _window.Sum(w => w * w);
    }

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        _blocks.Take(samples);
        _decimator.Take(samples, _branch);
    }

    /// <summary>The tone in what was taken; null: there is none.</summary>
    /// <param name="frequencyHz">One of <see cref="CalibratorTone.UsualHz"/> and <see cref="CalibratorTone.PistonphoneHz"/>.</param>
    public CalibratorTone? Find(double frequencyHz)
    {
        double?[] levels = [.. _totals.Zip(_branch.Found, (total, block) => PureLevel(total - block.BelowLowest, block.At(frequencyHz)))];
        (int From, int Count) best = (0, 0);
        for (int i = 0; i < levels.Length;)
        {
            int count = SteadyFrom(levels, i);
            best = count > best.Count ? (i, count) : best;
            i += Math.Max(1, count);
        }

        if (best.Count < FewestBlocks)
        {
            return null;
        }

        double[] inner = [.. levels.Skip(best.From + 1).Take(best.Count - 2).OfType<double>().Order()];
        double from = best.From * HopS;
        return new(Quantile.OfSorted(inner, 0.5), inner[^1] - inner[0], from, from + ((best.Count + 1) * HopS));
    }

    private static double? PureLevel(double total, double tone) => tone > 1e-20 && tone >= PureShare * total ? Level.OfMeanSquare(tone) : null;

    // how many blocks from this one on are pure and near their common median
    private static int SteadyFrom(double?[] levels, int from)
    {
        List<double> sorted = [];
        for (int i = from; i < levels.Length && levels[i] is { } level; i++)
        {
            int place = sorted.BinarySearch(level);
            sorted.Insert(place < 0 ? ~place : place, level);
            double median = (sorted[sorted.Count / 2] + sorted[(sorted.Count - 1) / 2]) / 2;
            if (sorted[^1] - median > SteadyDb || median - sorted[0] > SteadyDb)
            {
                return i - from;
            }
        }

        return sorted.Count;
    }

    private void AddTotal(ReadOnlySpan<double> block)
    {
        double sum = 0;
        for (int i = 0; i < block.Length; i++)
        {
            double windowed = block[i] * _window[i];
            sum += windowed * windowed;
        }

        _totals.Add(sum / _windowSquares);
    }
}
