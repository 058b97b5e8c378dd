namespace FieldSession.Comparing;

/// <summary>A segment that the plan asks for, in the order of the route.</summary>
/// <param name="Segment">Its name.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Class">How it is read.</param>
/// <param name="Seconds">How long a run stays on it, above 0; null: not known.</param>
public sealed record PlannedSegment(string Segment, string Kind, MeasureClass Class, double? Seconds = null);

/// <summary>Everything read on one study, ready to be compared: readings by code, no identity behind a code.</summary>
/// <param name="Levels">All readings, spoilt ones included; several of one run and segment are several readings of it.</param>
/// <param name="Missed">How many planned readings were not taken.</param>
/// <param name="Planned">The planned segments in route order; null: the segments that occur in the readings, in the order of their first
/// one.</param>
public sealed record MeasuredDay(IReadOnlyList<MeasuredLevel> Levels, int Missed = 0, IReadOnlyList<PlannedSegment>? Planned = null)
{
    /// <summary>
    /// Runs of the order as it was planned, then after each time it was lengthened when a comparison could be seen (<see cref="Looks"/>);
    /// null: not known.
    /// </summary>
    public IReadOnlyList<int>? OrderRuns { get; init; }
}

/// <summary>One reading as the comparison sees it: what the display showed on one segment of one run, and whether it counts.</summary>
/// <param name="Run">Number of the run, in driven order.</param>
/// <param name="Code">The spec code the run was driven on.</param>
/// <param name="Segment">The segment's name.</param>
/// <param name="Kind">The segment's kind (smooth, coarse, impact, or a word of one's own).</param>
/// <param name="Class">Whether the segment is read as a range or as a peak.</param>
/// <param name="LowDb">Lower end of the range, dB; for one value the same as the upper end.</param>
/// <param name="HighDb">Upper end of the range, dB.</param>
/// <param name="Spoilt">True: flagged, left out of the comparison (but kept in "with spoilt").</param>
/// <param name="Cause">Why it is spoilt, in one word; null: not spoilt or not said.</param>
/// <param name="Minutes">From the first run's start to the middle of this run; null: unknown, runs then count as equally spaced.</param>
/// <param name="Car">The car that drove the run; null: only one car.</param>
/// <param name="Slot">Runs driven side by side share it; null: runs one after the other.</param>
/// <param name="Session">The session (day, half-day) of the run; null: one session.</param>
public sealed record MeasuredLevel(
    int Run,
    string Code,
    string Segment,
    string Kind,
    MeasureClass Class,
    double LowDb,
    double HighDb,
    bool Spoilt = false,
    string? Cause = null,
    double? Minutes = null,
    string? Car = null,
    string? Slot = null,
    string? Session = null
)
{
    /// <summary>The level that enters the comparison, dB: the middle of the range.</summary>
    public double LevelDb => (LowDb + HighDb) / 2;

    /// <summary>Whether it belongs to a run that another one replaced; it is left out, and nothing spoilt it.</summary>
    public bool IsReplaced => Spoilt && Cause is StudyReadings.DrivenAgain or StudyReadings.RunAborted;

    /// <summary>How far the display wandered, dB; 0 for one value.</summary>
    public double WidthDb => HighDb - LowDb;
}

/// <summary>
/// How a segment is read: a low-high range while the display wanders, or the highest value of a single event.
/// The two are analysed apart because their scatter differs (docs/formulas.md). Where a class is asked for, null means all segments
/// together.
/// </summary>
public enum MeasureClass
{
    /// <summary>A range read over a steady surface.</summary>
    Steady,

    /// <summary>A peak read at a joint, kerb or the like.</summary>
    Impact,
}

/// <summary>Why readings are left out, also a cause in readings.csv.</summary>
internal static class LeftOutWords
{
    // also a cause in readings.csv
    public const string BracketDrivenAgain = "bracket driven again";
    public const string RunAborted = "run aborted";
    public const string FilledAtStop = "filled at the stop";
}
