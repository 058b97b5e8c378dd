using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>
/// Neighbouring samples of a recording and what the filters made of them; all of one length, or empty where the rate gives no A levels.
/// </summary>
internal readonly ref struct WeightedPiece
{
    /// <summary>The samples, as numbers of full scale.</summary>
    public required ReadOnlySpan<double> Samples { get; init; }

    /// <summary>The samples, A-weighted.</summary>
    public ReadOnlySpan<double> A { get; init; }

    /// <summary>The samples, C-weighted.</summary>
    public ReadOnlySpan<double> C { get; init; }

    /// <summary>Mean squares with weighting A and F.</summary>
    public ReadOnlySpan<double> Fast { get; init; }

    /// <summary>Mean squares with weighting A and S.</summary>
    public ReadOnlySpan<double> Slow { get; init; }

    /// <summary>A part of the piece.</summary>
    public WeightedPiece Part(int from, int length) =>
        new()
        {
            Samples = Samples.Slice(from, length),
            A = A.IsEmpty ? A : A.Slice(from, length),
            C = C.IsEmpty ? C : C.Slice(from, length),
            Fast = Fast.IsEmpty ? Fast : Fast.Slice(from, length),
            Slow = Slow.IsEmpty ? Slow : Slow.Slice(from, length),
        };
}

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

/// <summary>The A level of a whole recording as it goes by; for the clock and for checking what was typed, never stored.</summary>
/// <param name="FirstS">Time of the first LAF, s from the first sample: levels of the first second are not settled.</param>
/// <param name="StepS">From one LAF to the next, s; about 0.125.</param>
/// <param name="LAFDb">LAF, dB; null for silence.</param>
/// <param name="LAeqDb">LAeq of every whole second from the start, dB; null for silence.</param>
public sealed record LevelTrace(double FirstS, double StepS, ImmutableArray<double?> LAFDb, ImmutableArray<double?> LAeqDb)
{
    /// <summary>LAF in a window; silence is left out.</summary>
    public IEnumerable<double> In(TimeWindow window) =>
        LAFDb
            .Skip((int)Math.Clamp(Math.Ceiling((window.FromS - FirstS) / StepS), 0, LAFDb.Length))
            .TakeWhile((_, i) => TimeOf(i, window) < window.ToS)
            .OfType<double>();

    private double TimeOf(int i, TimeWindow window) => FirstS + ((i + Math.Max(0, Math.Ceiling((window.FromS - FirstS) / StepS))) * StepS);
}
