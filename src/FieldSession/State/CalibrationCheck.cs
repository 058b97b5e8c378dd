namespace FieldSession.State;

/// <summary>What the meter showed on the calibrator.</summary>
/// <param name="LevelDb">The level shown, dB.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record CalibrationCheck(double LevelDb, LineMark Mark);
