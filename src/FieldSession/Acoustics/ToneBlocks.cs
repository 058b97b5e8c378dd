using System.Numerics;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

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
        Found.Add(new(
            Sum(0, LowestHz) - (_power[0] * _scale / 2),
            Sum(CalibratorTone.UsualHz * (1 - Nearness), CalibratorTone.UsualHz * (1 + Nearness)),
            Sum(CalibratorTone.PistonphoneHz * (1 - Nearness), CalibratorTone.PistonphoneHz * (1 + Nearness))));
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
