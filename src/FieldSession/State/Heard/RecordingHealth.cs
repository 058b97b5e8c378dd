using System.Globalization;
using FieldSession.Aligning;

namespace FieldSession.State;

/// <summary>Whether a run's recording can be used, without a level of it: what may be shown at a stop.</summary>
/// <param name="Recording">The recording.</param>
/// <param name="Calibration">How its chain is calibrated.</param>
/// <param name="Slope">The recorder's level on the typed ones; null: too few readings to tell.</param>
public sealed record RecordingHealth(RunRecording Recording, ChainCalibration Calibration, GainSlope? Slope)
{
    /// <summary>Readings that it holds.</summary>
    public int Heard => Recording.Segments.Count;

    /// <summary>Of these, windows in which the recorder clipped.</summary>
    public int Overloaded => Recording.Segments.Count(heard => heard.IsOverloaded);

    /// <summary>Of these, windows with voices for more than half of the time.</summary>
    public int WithSpeech => Recording.Segments.Count(heard => heard.HasSpeech);

    /// <summary>The health of every recording, in the order of the runs.</summary>
    public static IEnumerable<RecordingHealth> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Recordings.OrderBy(recording => recording.Run).Select(recording => Of(study, recording));
    }

    /// <summary>The health of one recording.</summary>
    public static RecordingHealth Of(Study study, RunRecording recording)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(recording);
        return new(recording, ChainCalibration.Of(study, recording.Chain), GainSlope.Of([.. Pairs(study, recording)]));
    }

    /// <summary>Middle typed, dB(A), and the recorder's LAeq over the same seconds, of the steady readings that count.</summary>
    public static IEnumerable<(double TypedDb, double RecorderDb)> Pairs(Study study, RunRecording recording)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(recording);
        return from reading in study.Runs[recording.Run - 1].Readings
            let heard = recording.During(reading)
            where
                heard is { LAeqDb: not null, IsOverloaded: false }
                && !reading.LeftOut
                && !study.Plan!.Route[reading.Segment - 1].Kind.IsImpact
            select (reading.Levels.MidpointDb, heard.LAeqDb!.Value);
    }
}

/// <summary>How a recording is, in the crew's words: never a level.</summary>
public static class HealthWords
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
            $"run {health.Recording.Run}: {health.Heard} of {asked} readings heard, clock by "
                + $"{Source(health.Recording.ClockBy)} within {health.Recording.HalfRangeS:0.0} s"
        );
        yield return Calibrated(health.Calibration);
        foreach (string doubt in Doubts(health))
        {
            yield return $"! {doubt}";
        }
    }

    /// <summary>What a clock is known by.</summary>
    public static string Source(ClockSource source) =>
        source switch
        {
            ClockSource.Marks => "marks",
            ClockSource.FileTime => "file time",
            ClockSource.Given => "what was given",
            _ => "typed levels",
        };

    private static string Calibrated(ChainCalibration chain) =>
        chain switch
        {
            { GainDb: null } => $"chain {chain.Chain} is not calibrated: good for differences only",
            { DriftDb: { } drift } => string.Create(
                CultureInfo.InvariantCulture,
                $"chain {chain.Chain} calibrated, drift {drift:+0.00;-0.00;0.00} dB"
            ),
            _ => $"chain {chain.Chain} calibrated once; record the tone after the last run too",
        };

    private static IEnumerable<string> Doubts(RecordingHealth health)
    {
        if (Math.Abs(health.Calibration.DriftDb ?? 0) > DriftWarnsDb)
        {
            yield return Math.Abs(health.Calibration.DriftDb!.Value) > DriftVoidsDb
                ? "over 0.5 dB of drift its levels don't count"
                : "over 0.3 dB of drift: look for the cause";
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
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"automatic gain suspected: {health.Slope.Slope:0.00} dB for each typed dB"
            );
        }
    }
}
