using FieldSession.Acoustics;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>What has to be said about the levels of a recording.</summary>
internal static class LevelsRemarks
{
    private const double ShortS = 1.28;
    private const double DriftWarnsDb = 0.3;
    private const double DriftVoidsDb = 0.5;

    /// <summary>The remarks, most important first.</summary>
    public static IEnumerable<string> Of(MeteredRecording recording, AskedLevels asked, bool hasPistonphone, CalibratorTone? after) =>
    [
        .. Calibration(recording.Calibration, asked, hasPistonphone, after),
        .. recording.Format.RateHz < WeightingFilters.LowestRateHz ? [LevelsWords.NoWeightings(recording.Format.RateHz)] : Array.Empty<string>(),
        .. recording.Levels.Windows.SelectMany(window => InWindow(window, recording.Levels.Seconds)),
    ];

    private static IEnumerable<string> Calibration(RecordingCalibration? calibration, AskedLevels asked, bool hasPistonphone, CalibratorTone? after)
    {
        if (asked.ToneDb is not null && calibration is null)
        {
            yield return hasPistonphone ? LevelsWords.Pistonphone : LevelsWords.NoTone;
        }

        if (calibration is null)
        {
            yield return LevelsWords.DifferencesOnly;
        }

        if (asked.After is { } path && after is null)
        {
            yield return LevelsWords.NoToneAfter(path);
        }

        if (Math.Abs(calibration?.DriftDb ?? 0) > DriftWarnsDb)
        {
            yield return LevelsWords.Drifted(calibration!.DriftDb!.Value, Math.Abs(calibration.DriftDb.Value) > DriftVoidsDb);
        }
    }

    private static IEnumerable<string> InWindow(WindowLevels window, double seconds)
    {
        if (window.HeardS < window.Window.Seconds - 0.001)
        {
            yield return LevelsWords.BeyondTheEnd(window.Window, seconds);
        }

        if (window is { LZeqDb: null, HeardS: > 0 })
        {
            yield return LevelsWords.Silence(window.Window);
        }

        if (window.HeardS < ShortS)
        {
            yield return LevelsWords.TooShortForBands(window.Window);
        }

        if (window.IsOverloaded)
        {
            yield return LevelsWords.Clipped(window.Window, window.ClipEvents);
        }

        if (window.IsLikeSpeech)
        {
            yield return LevelsWords.LikeSpeech(window.Window);
        }
    }
}
