namespace FieldSession.Aligning;

/// <summary>One level of a meter's log or of a recording.</summary>
/// <param name="AtS">When, s on the clock of the log.</param>
/// <param name="LevelDb">The level, dB(A).</param>
public readonly record struct LoggedLevel(double AtS, double LevelDb);
