using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Hands the low branch to the windows it falls into and keeps what falls into impacts.</summary>
/// <param name="scale">Rates.</param>
/// <param name="windows">Windows that are measured.</param>
/// <param name="impacts">Windows whose low branch is kept.</param>
/// <param name="meterOf">The meter of a window by its place.</param>
internal sealed class LowWindows(
    MeterScale scale, ImmutableArray<TimeWindow> windows, ImmutableArray<TimeWindow> impacts, Func<int, WindowMeter> meterOf) : ISampleTaker
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
