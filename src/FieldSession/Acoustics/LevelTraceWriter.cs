using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Writes the trace of levels of a recording while it goes by.</summary>
/// <param name="scale">Rate and grid.</param>
internal sealed class LevelTraceWriter(MeterScale scale)
{
    private readonly List<double?> _fast = [];
    private readonly List<double?> _seconds = [];
    private long _at;
    private double _second;
    private int _inSecond;

    /// <summary>The first grid point at or behind a sample, counted from that sample.</summary>
    public int GridAt(long sample)
    {
        int settled = SettledAt(sample);
        return settled > 0 ? settled : (int)((scale.GridStep - ((sample - scale.RateHz + 1) % scale.GridStep)) % scale.GridStep);
    }

    /// <summary>The first sample with a settled level at or behind a sample, counted from that sample.</summary>
    public int SettledAt(long sample) => (int)Math.Max(0, scale.RateHz - 1 - sample);

    /// <summary>Takes the next piece.</summary>
    public void Take(WeightedPiece piece)
    {
        for (int i = GridAt(_at); i < piece.Fast.Length; i += scale.GridStep)
        {
            _fast.Add(Level.OfMeanSquare(piece.Fast[i]));
        }

        foreach (double sample in piece.A)
        {
            _second += sample * sample;
            if (++_inSecond == scale.RateHz)
            {
                _seconds.Add(Level.OfMeanSquare(_second / _inSecond));
                (_second, _inSecond) = (0, 0);
            }
        }

        _at += piece.Samples.Length;
    }

    /// <summary>The trace so far.</summary>
    public LevelTrace Finish() =>
        new((double)(scale.RateHz - 1) / scale.RateHz, (double)scale.GridStep / scale.RateHz, [.. _fast], [.. _seconds]);
}
