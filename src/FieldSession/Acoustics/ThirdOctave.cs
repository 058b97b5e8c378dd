using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Third-octave bands (IEC 61260-1:2014, base ten), counted from 1 kHz: -7 is 200 Hz, -6 is 250 Hz.</summary>
public static class ThirdOctave
{
    /// <summary>The exact middle of a band, Hz: 1000 x 10^(n/10).</summary>
    public static double MiddleHz(int n) => 1000 * Math.Pow(10, n / 10.0);

    /// <summary>A band between its exact edges, 1000 x 10^((n -+ 0.5)/10).</summary>
    public static FrequencyBand Band(int n) => new(1000 * Math.Pow(10, (n - 0.5) / 10), 1000 * Math.Pow(10, (n + 0.5) / 10));
}
