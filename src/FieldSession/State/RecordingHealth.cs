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
               where heard is { LAeqDb: not null, IsOverloaded: false } && !reading.LeftOut && !study.Plan!.Route[reading.Segment - 1].Kind.IsImpact
               select (reading.Levels.MidpointDb, heard.LAeqDb!.Value);
    }
}
