using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>
/// What a recording held while one reading was read off the meter: all that is ever kept of its sound. Levels are in dB re full scale (mean square 1), so
/// that a gain found later holds for them too; unknown is null. Nothing in it is finer than the window.
/// </summary>
/// <param name="Line">The line of the reading in its strand.</param>
/// <param name="FromS">Where the window begins, s from the first sample.</param>
/// <param name="Seconds">How long it is, s.</param>
public sealed record HeardSegment(int Line, double FromS, double Seconds)
{
    /// <summary>Number of the lowest third-octave band kept, counted from 1 kHz: 100 Hz.</summary>
    public const int LowestBand = -10;

    /// <summary>Lowest frequency of the kept spectrum, Hz.</summary>
    public const double SpectrumFromHz = 100;

    /// <summary>Distance of two frequencies of the kept spectrum, Hz.</summary>
    public const double SpectrumStepHz = 3.125;

    /// <summary>How many frequencies of the spectrum are kept: 100 to 400 Hz.</summary>
    public const int SpectrumLength = 97;

    /// <summary>A-weighted energy mean, dB.</summary>
    public double? LAeqDb { get; init; }

    /// <summary>C-weighted energy mean, dB.</summary>
    public double? LCeqDb { get; init; }

    /// <summary>Highest A level with time weighting F, dB.</summary>
    public double? LAFmaxDb { get; init; }

    /// <summary>Lowest A level with time weighting F, dB.</summary>
    public double? LAFminDb { get; init; }

    /// <summary>LAF exceeded 10 % of the time, dB.</summary>
    public double? L10Db { get; init; }

    /// <summary>LAF exceeded 50 % of the time, dB.</summary>
    public double? L50Db { get; init; }

    /// <summary>LAF exceeded 90 % of the time, dB.</summary>
    public double? L90Db { get; init; }

    /// <summary>Third-octave bands from <see cref="LowestBand"/> on, dB; null: the window is too short for bands.</summary>
    public ImmutableList<double?>? BandsDb { get; init; }

    /// <summary>Level of the ring band, energy mean, dB.</summary>
    public double? RingDb { get; init; }

    /// <summary>Median of the ring band's level over blocks of 1.28 s, dB: what short events hardly move.</summary>
    public double? RingMedianDb { get; init; }

    /// <summary>Ring band over its flanks, per Hz, dB.</summary>
    public double? ProminenceDb { get; init; }

    /// <summary>Mean spectrum, dB per Hz, at 100, 103.125, ... 400 Hz; null: the window is too short.</summary>
    public ImmutableList<double>? SpectrumDb { get; init; }

    /// <summary>How long the ring lasts after the impact, s for 60 dB; null: no impact, or not determinable.</summary>
    public double? RingLastsS { get; init; }

    /// <summary>Times that the recorder clipped in the window.</summary>
    public int Clips { get; init; }

    /// <summary>Whether the level swings as in speech for more than half of the window.</summary>
    public bool HasSpeech { get; init; }

    /// <summary>Whether no level of the window counts, because the recorder clipped.</summary>
    public bool IsOverloaded => Clips > 0;

    /// <summary>Level of a third-octave band, dB; null: not known.</summary>
    /// <param name="n">The band, counted from 1 kHz: -7 is 200 Hz.</param>
    public double? BandDb(int n) => BandsDb?.ElementAtOrDefault(n - LowestBand);
}
