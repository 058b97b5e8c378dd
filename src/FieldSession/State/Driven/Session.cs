namespace FieldSession.State;

/// <summary>One continuous block of driving between two calibration checks.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Before">The check before it; null: driven without one.</param>
/// <param name="After">The check after it; null: not made yet.</param>
public sealed record Session(int Number, CalibrationCheck? Before, CalibrationCheck? After)
{
    /// <summary>Where its first line is in the journal.</summary>
    public LineMark Opened { get; init; }

    /// <summary>How far the meter drifted from the check before to the check after, dB; null: not known yet.</summary>
    public double? DriftDb => Before is { } before && After is { } after ? Math.Round(after.LevelDb - before.LevelDb, 6) : null;
}

/// <summary>What the meter showed on the calibrator.</summary>
/// <param name="LevelDb">The level shown, dB.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record CalibrationCheck(double LevelDb, LineMark Mark);
