namespace FieldSession.Comparing;

/// <summary>What is said beside the ear's and the recorder's figures.</summary>
internal static class EarRemarkWords
{
    // Recordings
    public const string ChainsNotCalibrated = "two chains are compared only if both are calibrated";

    public static string ChainDrifted(double driftDb) => $"the chain drifted by {driftDb:+0.0;-0.0} dB";

    public static string AutomaticGainSuspected(double slope) =>
        $"automatic gain suspected: {slope:0.00} dB of the recorder for each typed dB";

    // The ear
    public const string LevelAt200Hz = "dB at 200 Hz";
    public const string LevelAt250Hz = "dB at 250 Hz";
    public const string TooFewForTest = "too few for a test";
    public const string NoDifferenceShown = "no difference shown";
}
