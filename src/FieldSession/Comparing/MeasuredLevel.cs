namespace FieldSession.Comparing;

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
    string? Session = null)
{
    /// <summary>The level that enters the comparison, dB: the middle of the range.</summary>
    public double LevelDb => (LowDb + HighDb) / 2;

    /// <summary>Whether it belongs to a run that another one replaced; it is left out, and nothing spoilt it.</summary>
    public bool IsReplaced => Spoilt && Cause is StudyReadings.DrivenAgain or StudyReadings.RunAborted;

    /// <summary>How far the display wandered, dB; 0 for one value.</summary>
    public double WidthDb => HighDb - LowDb;
}
