using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>
/// A sound level meter for recordings: samples go in block by block, what every window held comes out. The filters run through from the
/// first sample, as a meter's do; memory does not grow with the recording but for one level every 0.125 s.
/// </summary>
public sealed class RecordingMeter : ISampleTaker
{
    private const int PieceLength = 4096;
    private readonly MeterScale _scale;
    private readonly Decimator _decimator;
    private readonly LowWindows _low;
    private readonly ImmutableArray<TimeWindow> _asked;
    private readonly WindowMeter?[] _open;
    private readonly WindowLevels?[] _done;
    private readonly WeightingFilters? _filters;
    private readonly TimeWeighting _fast;
    private readonly TimeWeighting _slow;
    private readonly double[][] _pieces = [.. Enumerable.Range(0, 4).Select(_ => new double[PieceLength])];
    private readonly ClippedSamples _clipped;
    private readonly LevelTraceWriter _trace;
    private long _at;

    /// <summary>A meter at rest.</summary>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="fullScale">The largest positive sample that the format knows, as a number of full scale; 1 for floating point.</param>
    /// <param name="windows">Windows to be measured; may overlap.</param>
    /// <param name="impacts">Windows whose low branch is kept, for the decay of the ring.</param>
    /// <param name="ring">The ring band; null: 178 to 282 Hz.</param>
    public RecordingMeter(
        int rateHz,
        double fullScale,
        ImmutableArray<TimeWindow> windows,
        ImmutableArray<TimeWindow> impacts = default,
        FrequencyBand? ring = null
    )
    {
        _decimator = new(rateHz, MeterScale.LowBranchHz);
        _scale = new(rateHz, _decimator.RateHz, fullScale, ring ?? RingBand.Planned);
        _asked = windows;
        _open = new WindowMeter?[windows.Length];
        _done = new WindowLevels?[windows.Length];
        _low = new(_scale, windows, impacts.IsDefault ? [] : impacts, MeterOf);
        _filters = _scale.HasWeightings ? new(rateHz) : null;
        _fast = new(rateHz, TimeWeighting.FastS);
        _slow = new(rateHz, TimeWeighting.SlowS);
        _clipped = new(fullScale);
        _trace = new(_scale);
    }

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        for (int at = 0; at < samples.Length; at += PieceLength)
        {
            TakePiece(samples[at..Math.Min(samples.Length, at + PieceLength)]);
        }
    }

    /// <summary>The end of the recording, and what it held.</summary>
    public RecordingLevels Finish()
    {
        _decimator.Finish(_low);
        CloseUntil(long.MaxValue);
        return new()
        {
            Seconds = (double)_at / _scale.RateHz,
            ClipEvents = _clipped.Events,
            Windows = [.. _done.Select((done, i) => done ?? new WindowLevels { Window = _asked[i], HeardS = 0 })],
            Impacts = _low.Impacts,
            LowRateHz = _scale.LowRateHz,
            Trace = _trace.Finish(),
        };
    }

    private void TakePiece(ReadOnlySpan<double> samples)
    {
        WeightedPiece piece = Weighted(samples);
        long end = _at + samples.Length;
        for (int w = 0; w < _asked.Length; w++)
        {
            long from = Math.Max(_at, _scale.SampleAt(_asked[w].FromS));
            long to = Math.Min(end, _scale.SampleAt(_asked[w].ToS));
            if (from < to)
            {
                int start = (int)(from - _at);
                MeterOf(w).Take(piece.Part(start, (int)(to - from)), _trace.GridAt(from), _trace.SettledAt(from));
            }
        }

        _clipped.Take(samples);
        _trace.Take(piece);
        _at = end;
        _decimator.Take(samples, _low);

        // the low branch of a window comes some milliseconds later than its samples
        CloseUntil(_at - _scale.RateHz);
    }

    private WeightedPiece Weighted(ReadOnlySpan<double> samples)
    {
        if (_filters is null)
        {
            return new() { Samples = samples };
        }

        Span<double> a = _pieces[0].AsSpan(0, samples.Length);
        Span<double> c = _pieces[1].AsSpan(0, samples.Length);
        Span<double> fast = _pieces[2].AsSpan(0, samples.Length);
        Span<double> slow = _pieces[3].AsSpan(0, samples.Length);
        _filters.Filter(samples, a, c);
        _fast.Weight(a, fast);
        _slow.Weight(a, slow);
        return new()
        {
            Samples = samples,
            A = a,
            C = c,
            Fast = fast,
            Slow = slow,
        };
    }

    private WindowMeter MeterOf(int window) => _open[window] ??= new(_asked[window], _scale);

    private void CloseUntil(long sample)
    {
        for (int w = 0; w < _asked.Length; w++)
        {
            if (_open[w] is { } meter && _scale.SampleAt(_asked[w].ToS) <= sample)
            {
                _done[w] = meter.Finish();
                _open[w] = null;
            }
        }
    }
}

/// <summary>
/// Exponential time weighting of a squared signal (IEC 61672-1): F has a time constant of 0.125 s, S of 1 s. A burst of T seconds stays
/// 10 lg(1 - exp(-T / time constant)) below the steady level.
/// </summary>
/// <param name="rateHz">Samples a second.</param>
/// <param name="timeConstantS">Time constant, s.</param>
public sealed class TimeWeighting(int rateHz, double timeConstantS)
{
    /// <summary>Time constant of F, s.</summary>
    public const double FastS = 0.125;

    /// <summary>Time constant of S, s.</summary>
    public const double SlowS = 1;

    private readonly double _share = 1 - Math.Exp(-1 / (rateHz * timeConstantS));
    private double _now;

    /// <summary>Weights the squares of the next samples.</summary>
    /// <param name="samples">The samples, frequency-weighted.</param>
    /// <param name="weighted">Mean squares, as many.</param>
    public void Weight(ReadOnlySpan<double> samples, Span<double> weighted)
    {
        double now = _now;
        double share = _share;
        double rest = 1 - share;
        for (int i = 0; i < samples.Length; i++)
        {
            now = (rest * now) + (share * samples[i] * samples[i]);
            weighted[i] = now;
        }

        _now = now < 1e-200 ? 0 : now;
    }
}

/// <summary>Hands the low branch to the windows it falls into and keeps what falls into impacts.</summary>
/// <param name="scale">Rates.</param>
/// <param name="windows">Windows that are measured.</param>
/// <param name="impacts">Windows whose low branch is kept.</param>
/// <param name="meterOf">The meter of a window by its place.</param>
internal sealed class LowWindows(
    MeterScale scale,
    ImmutableArray<TimeWindow> windows,
    ImmutableArray<TimeWindow> impacts,
    Func<int, WindowMeter> meterOf
) : ISampleTaker
{
    private readonly List<double>[] _kept = [.. impacts.Select(_ => new List<double>())];
    private long _at;

    /// <summary>The low branch of every impact.</summary>
    public ImmutableArray<ImmutableArray<double>> Impacts => [.. _kept.Select(kept => kept.ToImmutableArray())];

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        for (int w = 0; w < windows.Length; w++)
        {
            ReadOnlySpan<double> inWindow = In(windows[w], samples);
            if (inWindow.Length > 0)
            {
                meterOf(w).TakeLow(inWindow);
            }
        }

        for (int i = 0; i < _kept.Length; i++)
        {
            _kept[i].AddRange(In(impacts[i], samples));
        }

        _at += samples.Length;
    }

    private ReadOnlySpan<double> In(TimeWindow window, ReadOnlySpan<double> samples)
    {
        long from = Math.Max(_at, scale.LowSampleAt(window.FromS));
        long to = Math.Min(_at + samples.Length, scale.LowSampleAt(window.ToS));
        return from < to ? samples[(int)(from - _at)..(int)(to - _at)] : [];
    }
}
