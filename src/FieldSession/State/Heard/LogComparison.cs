using System.Collections.Immutable;
using System.Text.Json.Serialization;
using FieldSession.Aligning;

namespace FieldSession.State;

/// <summary>What a meter's own log said about the typed readings. It checks the typing; no level of it enters a comparison.</summary>
/// <param name="Sha256">SHA-256 of the log, 64 hex digits.</param>
/// <param name="Readings">The readings that it holds.</param>
public sealed record LogComparison(string Sha256, ImmutableList<LoggedReading> Readings)
{
    /// <summary>The meter's clock minus the laptop's, s.</summary>
    public double OffsetS { get; init; }

    /// <summary><see cref="OffsetS"/> lies within this of the truth, s.</summary>
    public double HalfRangeS { get; init; }

    /// <summary>What it is known by.</summary>
    public ClockSource ClockBy { get; init; }

    /// <summary>Median of typed minus logged, dB; null: nothing logged.</summary>
    public double? MedianDb { get; init; }

    /// <summary>From where on a distance from that median is a doubt, dB.</summary>
    public double LimitDb { get; init; }

    /// <summary>Whether the typed ranges are as narrow as on the meter's slow setting; null: it can't be told.</summary>
    public bool? IsLikeSlow { get; init; }

    /// <summary>Where it is in the journal.</summary>
    [JsonIgnore]
    public LineMark Mark { get; init; }
}

/// <summary>One typed reading beside the log.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Line">The line of the reading in its strand.</param>
/// <param name="Fit">How it fits.</param>
/// <param name="ResidualDb">Typed minus logged, minus the median of all such differences, dB; null: nothing logged.</param>
/// <param name="HasTraffic">Whether traffic is proposed, by the one rule for all runs.</param>
public sealed record LoggedReading(int Run, int Line, EntryFit Fit, double? ResidualDb, bool HasTraffic);
