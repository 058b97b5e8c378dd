using System.Collections.Immutable;
using System.Text.Json.Serialization;
using FieldSession.Aligning;
using FieldSession.Signals;

namespace FieldSession.State;

/// <summary>
/// What is kept of the recording of one run: where it lay in time, and what every reading's window held. It names a run, never a spec, and no file: a file's
/// name could tell what is behind a code.
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
