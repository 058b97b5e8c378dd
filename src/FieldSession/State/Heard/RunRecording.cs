using System.Collections.Immutable;
using System.Text.Json.Serialization;
using FieldSession.Aligning;
using FieldSession.Signals;

namespace FieldSession.State;

/// <summary>
/// What is kept of the recording of one run: where it lay in time, and what every reading's window held. It names a run, never a spec, and
/// no file: a file's name could tell what is behind a code.
/// </summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Sha256">SHA-256 of the file, 64 hex digits.</param>
/// <param name="Chain">The chain that it was recorded by.</param>
public sealed record RunRecording(int Run, string Sha256, string Chain)
{
    /// <summary>The chain of recordings for which none was named.</summary>
    public const string UsualChain = "recorder";

    /// <summary>How the levels were made; a later program that makes them otherwise counts on.</summary>
    public const int MethodNow = 1;

    /// <summary>Samples a second.</summary>
    public int RateHz { get; init; }

    /// <summary>Bits of a sample.</summary>
    public int Bits { get; init; }

    /// <summary>The channel, from 1.</summary>
    public int Channel { get; init; } = 1;

    /// <summary>When it began, on the laptop's clock.</summary>
    public DateTimeOffset BegunAt { get; init; }

    /// <summary>Its length, s.</summary>
    public double Seconds { get; init; }

    /// <summary><see cref="BegunAt"/> lies within this of the truth, s.</summary>
    public double HalfRangeS { get; init; }

    /// <summary>What the time is known by.</summary>
    public ClockSource ClockBy { get; init; }

    /// <summary>Seconds by which the recorder gains in one second; 0: not known to differ.</summary>
    public double RateError { get; init; }

    /// <summary>Lower edge of the ring band, Hz.</summary>
    public double RingFromHz { get; init; }

    /// <summary>Upper edge of the ring band, Hz.</summary>
    public double RingToHz { get; init; }

    /// <summary>How the levels were made.</summary>
    public int Method { get; init; } = MethodNow;

    /// <summary>Readings of the run that it does not hold long enough.</summary>
    public int NotHeard { get; init; }

    /// <summary>What it held, a window for each reading that it holds.</summary>
    public ImmutableList<HeardSegment> Segments { get; init; } = [];

    /// <summary>Which recording of the study it is, from 1.</summary>
    [JsonIgnore]
    public int Ordinal { get; init; }

    /// <summary>Where it is in the journal.</summary>
    [JsonIgnore]
    public LineMark Mark { get; init; }

    /// <summary>The ring band.</summary>
    [JsonIgnore]
    public FrequencyBand RingBand => new(RingFromHz, RingToHz);

    /// <summary>The same without the highest level of any window.</summary>
    public RunRecording Sparse() => this with { Segments = [.. Segments.Select(heard => heard with { LAFmaxDb = null })] };

    /// <summary>What was heard during a reading; null: the recording does not hold it.</summary>
    public HeardSegment? During(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Segments.Find(heard => heard.Line == reading.Mark.Number);
    }
}

/// <summary>
/// What a recording held while one reading was read off the meter: all that is ever kept of its sound. Levels are in dB re full scale (mean
/// square 1), so that a gain found later holds for them too; unknown is null. Nothing in it is finer than the window.
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
