using System.Globalization;
using FieldSession.Aligning;

namespace FieldSession.State;

/// <summary>How a recording is, in the crew's words: never a level.</summary>
public static class RecordingWords
{
    private const double DriftWarnsDb = 0.3;
    private const double DriftVoidsDb = 0.5;

    /// <summary>What is said of a file that holds the calibrator's tone and no run.</summary>
    public const string ToneAlone = "the calibrator's tone, and no run";

    /// <summary>The health of a recording, a line for each thing.</summary>
    public static IEnumerable<string> Of(RecordingHealth health)
    {
        ArgumentNullException.ThrowIfNull(health);
        int asked = health.Heard + health.Recording.NotHeard;
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"run {health.Recording.Run}: {health.Heard} of {asked} readings heard, clock by {Source(health.Recording.ClockBy)} within {health.Recording.HalfRangeS:0.0} s");
        yield return Calibrated(health.Calibration);
        foreach (string doubt in Doubts(health))
        {
            yield return $"! {doubt}";
        }
    }

    /// <summary>What a clock is known by.</summary>
    public static string Source(ClockSource source) => source switch
    {
        ClockSource.Marks => "marks",
        ClockSource.FileTime => "file time",
        ClockSource.Given => "what was given",
        _ => "typed levels",
    };

    private static string Calibrated(ChainCalibration chain) => chain switch
    {
        { GainDb: null } => $"chain {chain.Chain} is not calibrated: good for differences only",
        { DriftDb: { } drift } => string.Create(CultureInfo.InvariantCulture, $"chain {chain.Chain} calibrated, drift {drift:+0.00;-0.00;0.00} dB"),
        _ => $"chain {chain.Chain} calibrated once; record the tone after the last run too",
    };

    private static IEnumerable<string> Doubts(RecordingHealth health)
    {
        if (Math.Abs(health.Calibration.DriftDb ?? 0) > DriftWarnsDb)
        {
            yield return Math.Abs(health.Calibration.DriftDb!.Value) > DriftVoidsDb ? "over 0.5 dB of drift its levels don't count" : "over 0.3 dB of drift: look for the cause";
        }

        if (health.Overloaded > 0)
        {
            yield return $"{health.Overloaded} overloaded; these don't count, record with less gain";
        }

        if (health.WithSpeech > 0)
        {
            yield return $"{health.WithSpeech} with voices; keep silent in windows";
        }

        if (health.Slope?.IsSuspect == true)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"automatic gain suspected: {health.Slope.Slope:0.00} dB for each typed dB");
        }
    }
}
