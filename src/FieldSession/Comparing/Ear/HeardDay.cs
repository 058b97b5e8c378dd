using FieldSession.Aligning;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>
/// Levels that recordings hold, as the comparison sees readings: a cell for each reading that was heard. What was spoilt for the meter is
/// spoilt for the recording; a window in which the recorder clipped is no cell.
/// </summary>
internal static class HeardDay
{
    /// <summary>The cells of a class.</summary>
    /// <param name="study">The study.</param>
    /// <param name="measureClass">Steady segments, or impacts.</param>
    /// <param name="level">What is compared of a window whose chain has a gain, dB; null: not known.</param>
    public static MeasuredDay Of(Study study, MeasureClass measureClass, Func<HeardSegment, double, double?> level)
    {
        MeasuredDay day = StudyReadings.Of(study);
        Dictionary<int, RunRecording> recordings = study.Recordings.ToDictionary(recording => recording.Run);
        Dictionary<string, double> gains = study
            .Recordings.Select(recording => recording.Chain)
            .Distinct()
            .ToDictionary(chain => chain, chain => ChainCalibration.Of(study, chain).GainDb ?? 0);

        // the day's levels are in the order of the runs and their readings
        IEnumerable<MeasuredLevel> levels =
            from pair in day.Levels.Zip(study.Runs.SelectMany(StudyReadings.InRouteOrder))
            where pair.First.Class == measureClass
            let recording = recordings.GetValueOrDefault(pair.First.Run)
            let heard = recording?.During(pair.Second)
            where heard is { IsOverloaded: false }
            let db = level(heard, gains[recording.Chain])
            where db is not null
            select pair.First with
            {
                LowDb = db.Value,
                HighDb = db.Value,
            };
        return day with
        {
            Levels = [.. levels],
            Missed = 0,
            Planned = day.Planned is { } planned ? [.. planned.Where(segment => segment.Class == measureClass)] : null,
        };
    }
}

/// <summary>Whether a verdict can rest on the recordings of a day as a whole.</summary>
internal static class RecordingsTrusted
{
    /// <summary>Why none can; null: it can.</summary>
    public static string? WhyNot(Study study)
    {
        ChainCalibration[] chains =
        [
            .. study.Recordings.Select(recording => recording.Chain).Distinct().Select(chain => ChainCalibration.Of(study, chain)),
        ];
        if (chains.Length > 1 && Array.Exists(chains, chain => chain.GainDb is null))
        {
            return EarRemarkWords.ChainsNotCalibrated;
        }

        if (Array.Find(chains, chain => Math.Abs(chain.DriftDb ?? 0) > study.Plan!.Limits.CalibrationDriftVoidDb) is { } drifted)
        {
            return EarRemarkWords.ChainDrifted(drifted.DriftDb!.Value);
        }

        GainSlope? slope = GainSlope.Of([
            .. from recording in study.Recordings
            let gain = Array.Find(chains, chain => chain.Chain == recording.Chain)!.GainDb ?? 0
            from pair in RecordingHealth.Pairs(study, recording)
            select (pair.TypedDb, pair.RecorderDb + gain),
        ]);
        return slope?.IsSuspect == true ? EarRemarkWords.AutomaticGainSuspected(slope.Slope) : null;
    }
}
