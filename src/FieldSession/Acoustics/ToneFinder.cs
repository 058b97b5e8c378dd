using System.Numerics;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>
/// Looks for a calibrator's tone: blocks of 1 s every 0.5 s behind a Hann window. A block is pure when 95 % of its power from 50 Hz on lies
/// within 2 % of the tone's frequency. The longest stretch of pure blocks within 0.2 dB of their median, 4 s and longer, is the tone. Own
/// rule, no source.
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
        for (int i = 0; i < levels.Length; )
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

    private static double? PureLevel(double total, double tone) =>
        tone > 1e-20 && tone >= PureShare * total ? Level.OfMeanSquare(tone) : null;

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

/// <summary>Mean squares of one block of a second.</summary>
/// <param name="BelowLowest">Below 50 Hz.</param>
/// <param name="Usual">Within 2 % of 1 kHz.</param>
/// <param name="Pistonphone">Within 2 % of 250 Hz.</param>
internal readonly record struct ToneBlock(double BelowLowest, double Usual, double Pistonphone)
{
    /// <summary>Within 2 % of a calibrator's frequency.</summary>
    public double At(double frequencyHz) => frequencyHz == CalibratorTone.UsualHz ? Usual : Pistonphone;
}

/// <summary>Finds for every block of a branch of about 8 kHz how much lies at the frequencies of calibrators.</summary>
internal sealed class ToneBlocks : ISampleTaker
{
    private const double Nearness = 0.02;
    private const double LowestHz = 50;
    private readonly double _binHz;
    private readonly double[] _window;
    private readonly double[] _padded;
    private readonly double[] _power;
    private readonly double _scale;
    private readonly FastFourier _fourier;
    private readonly HalfOverlap _blocks;

    /// <summary>At rest.</summary>
    /// <param name="rateHz">Samples a second of the branch.</param>
    public ToneBlocks(double rateHz)
    {
        _window = HalfOverlap.Hann(rateHz);
        int length = (int)BitOperations.RoundUpToPowerOf2((uint)_window.Length);
        _fourier = new(length);
        _padded = new double[length];
        _power = new double[(length / 2) + 1];
        _binHz = rateHz / length;
        _scale = 2 / (_window.Sum(w => w * w) * length);
        _blocks = new(rateHz, Add);
    }

    /// <summary>The blocks so far.</summary>
    public List<ToneBlock> Found { get; } = [];

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples) => _blocks.Take(samples);

    private void Add(ReadOnlySpan<double> block)
    {
        for (int i = 0; i < block.Length; i++)
        {
            _padded[i] = block[i] * _window[i];
        }

        _fourier.Power(_padded, _power);
        Found.Add(
            new(
                Sum(0, LowestHz) - (_power[0] * _scale / 2),
                Sum(CalibratorTone.UsualHz * (1 - Nearness), CalibratorTone.UsualHz * (1 + Nearness)),
                Sum(CalibratorTone.PistonphoneHz * (1 - Nearness), CalibratorTone.PistonphoneHz * (1 + Nearness))
            )
        );
    }

    private double Sum(double fromHz, double toHz)
    {
        double sum = 0;
        for (int k = (int)Math.Ceiling(fromHz / _binHz); k * _binHz < toHz; k++)
        {
            sum += _power[k];
        }

        return sum * _scale;
    }
}

/// <summary>A steady pure tone in a recording, such as a sound calibrator makes.</summary>
/// <param name="LevelDb">Its level, dB re mean square 1: median of its blocks without the first and the last.</param>
/// <param name="RangeDb">Highest minus lowest of these blocks, dB.</param>
/// <param name="FromS">Where it begins, s.</param>
/// <param name="ToS">Where it ends, s.</param>
public sealed record CalibratorTone(double LevelDb, double RangeDb, double FromS, double ToS)
{
    /// <summary>What a sound calibrator of IEC 60942 makes as a rule, Hz.</summary>
    public const double UsualHz = 1000;

    /// <summary>What a pistonphone makes, Hz.</summary>
    public const double PistonphoneHz = 250;

    /// <summary>The gain of the chain by this tone, dB: level = 10 lg of the mean square + gain.</summary>
    /// <param name="calibratorDb">What the calibrator's sheet says, dB; usually 94 or 114.</param>
    public double GainDb(double calibratorDb) => calibratorDb - LevelDb;
}
