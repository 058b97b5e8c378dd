namespace FieldSession.Acoustics;

/// <summary>A steady pure tone in a recording, such as a sound calibrator makes.</summary>
/// <param name="LevelDb">Its level, dB re mean square 1: median of its blocks without the first and the last.</param>
/// <param name="RangeDb">Highest minus lowest of these blocks, dB.</param>
/// <param name="FromS">Where it begins, s.</param>
/// <param name="ToS">Where it ends, s.</param>
public sealed record CalibratorTone(double LevelDb, double RangeDb, double FromS, double ToS)
{
    /// <summary>What a sound calibrator of IEC 60942 makes as a rule, Hz.</summary>
    public const double UsualHz = 1000;

    /// <summary>What a pistonphone makes, Hz.</summary>
    public const double PistonphoneHz = 250;

    /// <summary>The gain of the chain by this tone, dB: level = 10 lg of the mean square + gain.</summary>
    /// <param name="calibratorDb">What the calibrator's sheet says, dB; usually 94 or 114.</param>
    public double GainDb(double calibratorDb) => calibratorDb - LevelDb;
}
