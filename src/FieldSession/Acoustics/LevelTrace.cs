using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>The A level of a whole recording as it goes by; for the clock and for checking what was typed, never stored.</summary>
/// <param name="FirstS">Time of the first LAF, s from the first sample: levels of the first second are not settled.</param>
/// <param name="StepS">From one LAF to the next, s; about 0.125.</param>
/// <param name="LAFDb">LAF, dB; null for silence.</param>
/// <param name="LAeqDb">LAeq of every whole second from the start, dB; null for silence.</param>
public sealed record LevelTrace(double FirstS, double StepS, ImmutableArray<double?> LAFDb, ImmutableArray<double?> LAeqDb)
{
    /// <summary>LAF in a window; silence is left out.</summary>
    public IEnumerable<double> In(TimeWindow window) => LAFDb
        .Skip((int)Math.Clamp(Math.Ceiling((window.FromS - FirstS) / StepS), 0, LAFDb.Length))
        .TakeWhile((_, i) => TimeOf(i, window) < window.ToS)
        .OfType<double>();

    private double TimeOf(int i, TimeWindow window) => FirstS + ((i + Math.Max(0, Math.Ceiling((window.FromS - FirstS) / StepS))) * StepS);
}
