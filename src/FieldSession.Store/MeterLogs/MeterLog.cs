using System.Collections.Immutable;

namespace FieldSession.Store.MeterLogs;

/// <summary>One line of a meter's log.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="AtS">When, s from the first line on the meter's clock.</param>
/// <param name="LevelDb">The level, dB(A); null: the meter wrote none.</param>
public readonly record struct MeterLogLine(long Line, double AtS, double? LevelDb);

/// <summary>What a meter wrote by itself.</summary>
public sealed record MeterLog
{
    /// <summary>Which columns were taken, as their headers write them: time and date joined by '+', then ':' and the level.</summary>
    public required string Columns { get; init; }

    /// <summary>The time of the first line; null: the log counts from its start, and nobody told when that was.</summary>
    public required DateTimeOffset? BegunAt { get; init; }

    /// <summary>The lines in the order of time.</summary>
    public required ImmutableArray<MeterLogLine> Lines { get; init; }

    /// <summary>Seconds from one line to the next as a rule.</summary>
    public required double StepS { get; init; }

    /// <summary>What is odd about the log although it was taken.</summary>
    public required ImmutableArray<string> Remarks { get; init; }
}
