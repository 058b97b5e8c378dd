using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>What a recording held. Levels are in dB re mean square 1; <see cref="WindowLevels.Raised"/> adds a chain's gain.</summary>
public sealed record RecordingLevels
{
    /// <summary>Length of the recording, s.</summary>
    public required double Seconds { get; init; }

    /// <summary>Times that the recorder clipped: three and more neighbouring samples equal at full scale.</summary>
    public required int ClipEvents { get; init; }

    /// <summary>The windows in the order asked for.</summary>
    public required ImmutableArray<WindowLevels> Windows { get; init; }

    /// <summary>The low branch of every impact, in the order asked for; never stored.</summary>
    public required ImmutableArray<ImmutableArray<double>> Impacts { get; init; }

    /// <summary>Samples a second of the low branch.</summary>
    public required double LowRateHz { get; init; }

    /// <summary>The A level as it goes by; never stored.</summary>
    public required LevelTrace Trace { get; init; }
}

/// <summary>The level of one third-octave band.</summary>
/// <param name="N">The band, counted from 1 kHz: -7 is 200 Hz, -6 is 250 Hz.</param>
/// <param name="LevelDb">Its level over the window, energy mean, dB; null for silence.</param>
public readonly record struct BandLevel(int N, double? LevelDb)
{
    /// <summary>The exact middle of the band, Hz.</summary>
    public double MiddleHz => ThirdOctave.MiddleHz(N);
}

/// <summary>
/// What a recording holds in one window: the only thing that is ever kept of it. Levels are in dB: sound pressure levels where the gain of
/// the chain is known, else re mean square 1, good for differences only. What could not be told is null.
/// </summary>
public sealed record WindowLevels
{
    /// <summary>The stretch that was asked for.</summary>
    public required TimeWindow Window { get; init; }

    /// <summary>How much of it the recording holds, s.</summary>
    public required double HeardS { get; init; }

    /// <summary>A-weighted energy mean, dB; null at rates below 44.1 kHz.</summary>
    public double? LAeqDb { get; init; }

    /// <summary>C-weighted energy mean, dB; null at rates below 44.1 kHz.</summary>
    public double? LCeqDb { get; init; }

    /// <summary>Energy mean without weighting, dB.</summary>
    public double? LZeqDb { get; init; }

    /// <summary>Highest A level with time weighting F, dB.</summary>
    public double? LAFmaxDb { get; init; }

    /// <summary>Lowest A level with time weighting F, dB; the first second of a recording is left out.</summary>
    public double? LAFminDb { get; init; }

    /// <summary>Highest A level with time weighting S, dB.</summary>
    public double? LASmaxDb { get; init; }

    /// <summary>LAF exceeded 5 % of the time, dB; taken every 0.125 s, the first second of a recording left out.</summary>
    public double? L5Db { get; init; }

    /// <summary>LAF exceeded 10 % of the time, dB.</summary>
    public double? L10Db { get; init; }

    /// <summary>LAF exceeded 50 % of the time, dB.</summary>
    public double? L50Db { get; init; }

    /// <summary>LAF exceeded 90 % of the time, dB.</summary>
    public double? L90Db { get; init; }

    /// <summary>LAF exceeded 95 % of the time, dB.</summary>
    public double? L95Db { get; init; }

    /// <summary>
    /// Median change of LAF from one eighth of a second to the next, dB: above 1.2 voices fill the window (<see cref="IsLikeSpeech"/>).
    /// </summary>
    public double? SwingDb { get; init; }

    /// <summary>Third-octave bands, lowest first; empty where the window is shorter than 1.28 s.</summary>
    public ImmutableArray<BandLevel> Bands { get; init; } = [];

    /// <summary>Level of the ring band, energy mean, dB.</summary>
    public double? RingDb { get; init; }

    /// <summary>Median over blocks of 1.28 s of the ring band's level, dB: what short events hardly move.</summary>
    public double? RingMedianDb { get; init; }

    /// <summary>Ring band minus the mean of its flanks, per Hz, dB: gain and, nearly, speed drop out of it.</summary>
    public double? ProminenceDb { get; init; }

    /// <summary>Times that three and more neighbouring samples were equal at full scale.</summary>
    public int ClipEvents { get; init; }

    /// <summary>Mean spectrum to 800 Hz, mean square per Hz without gain; null where the window is shorter than 1.28 s.</summary>
    public PowerSpectrum? Spectrum { get; init; }

    /// <summary>Whether the recorder clipped in the window: then no level of it counts.</summary>
    public bool IsOverloaded => ClipEvents > 0;

    /// <summary>Whether the level swings as in speech for more than half of the window; own rule, no source.</summary>
    public bool IsLikeSpeech => SwingDb > 1.2;

    /// <summary>The same levels with a chain's gain added, dB; the spectrum and what is a difference stay as they are.</summary>
    public WindowLevels Raised(double gainDb) =>
        this with
        {
            LAeqDb = LAeqDb + gainDb,
            LCeqDb = LCeqDb + gainDb,
            LZeqDb = LZeqDb + gainDb,
            LAFmaxDb = LAFmaxDb + gainDb,
            LAFminDb = LAFminDb + gainDb,
            LASmaxDb = LASmaxDb + gainDb,
            L5Db = L5Db + gainDb,
            L10Db = L10Db + gainDb,
            L50Db = L50Db + gainDb,
            L90Db = L90Db + gainDb,
            L95Db = L95Db + gainDb,
            Bands = [.. Bands.Select(band => band with { LevelDb = band.LevelDb + gainDb })],
            RingDb = RingDb + gainDb,
            RingMedianDb = RingMedianDb + gainDb,
        };
}
