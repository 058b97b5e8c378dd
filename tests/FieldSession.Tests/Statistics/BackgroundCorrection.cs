namespace FieldSession.Tests.Statistics;

/// <summary>What can be said of a level once the background is taken off.</summary>
public enum BackgroundState
{
    /// <summary>Less than 3 dB above the background: the level cannot be determined.</summary>
    NotDeterminable,

    /// <summary>3 to 6 dB above: corrected by 3.0 to 1.3 dB, to be marked as uncertain.</summary>
    Uncertain,

    /// <summary>6 to 15 dB above: corrected.</summary>
    Corrected,

    /// <summary>More than 15 dB above: the correction would be below 0.14 dB and is left.</summary>
    NotNeeded,
}

/// <summary>
/// The level of a source from the level with it and the background alone: 10 lg(10^(L1/10) - 10^(L2/10)); the limits of 6 and 15 dB are
/// those of ISO 10140-4, the limit of 3 dB is common practice. Worked example: 93 dB with, 89 dB without: 90.8 dB.
/// </summary>
public static class BackgroundCorrection
{
    /// <summary>A corrected level; null if it cannot be determined.</summary>
    /// <param name="LevelDb">The level of the source alone, dB.</param>
    /// <param name="State">How far to trust it.</param>
    public readonly record struct Result(double? LevelDb, BackgroundState State);

    /// <summary>Takes a background off.</summary>
    public static Result Of(double totalDb, double backgroundDb)
    {
        double marginDb = totalDb - backgroundDb;
        BackgroundState state = marginDb switch
        {
            < 3 => BackgroundState.NotDeterminable,
            < 6 => BackgroundState.Uncertain,
            <= 15 => BackgroundState.Corrected,
            _ => BackgroundState.NotNeeded,
        };
        return state switch
        {
            BackgroundState.NotDeterminable => new Result(null, state),
            BackgroundState.NotNeeded => new Result(totalDb, state),
            _ => new Result(totalDb - CorrectionDb(marginDb), state),
        };
    }

    /// <summary>How much is taken off at a margin above 0, dB.</summary>
    public static double CorrectionDb(double marginDb) => -10 * Math.Log10(1 - Math.Pow(10, -marginDb / 10));
}
