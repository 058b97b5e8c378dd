using FieldSession.Aligning;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>Whether a verdict can rest on the recordings of a day as a whole.</summary>
internal static class RecordingsTrusted
{
    /// <summary>Why none can; null: it can.</summary>
    public static string? WhyNot(Study study)
    {
        ChainCalibration[] chains = [.. study.Recordings.Select(recording => recording.Chain).Distinct().Select(chain => ChainCalibration.Of(study, chain))];
        if (chains.Length > 1 && Array.Exists(chains, chain => chain.GainDb is null))
        {
            return EarRemarkWords.ChainsNotCalibrated;
        }

        if (Array.Find(chains, chain => Math.Abs(chain.DriftDb ?? 0) > study.Plan!.Limits.CalibrationDriftVoidDb) is { } drifted)
        {
            return EarRemarkWords.ChainDrifted(drifted.DriftDb!.Value);
        }

        GainSlope? slope = GainSlope.Of(
        [
            .. from recording in study.Recordings
               let gain = Array.Find(chains, chain => chain.Chain == recording.Chain)!.GainDb ?? 0
               from pair in RecordingHealth.Pairs(study, recording)
               select (pair.TypedDb, pair.RecorderDb + gain),
        ]);
        return slope?.IsSuspect == true ? EarRemarkWords.AutomaticGainSuspected(slope.Slope) : null;
    }
}
