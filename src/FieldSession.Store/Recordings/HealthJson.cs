using System.Text;
using System.Text.Json;
using FieldSession.State;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Recordings;

/// <summary>How the recordings of a study are, as JSON: runs, clocks and counts, never a level and never a code.</summary>
public static class HealthJson
{
    /// <summary>One JSON object, indented.</summary>
    public static string Of(Study study)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, JsonNumbers.Layout))
        {
            json.WriteStartObject();
            json.Parts("recordings", RecordingHealth.Of(study), health => Health(json, health));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Health(Utf8JsonWriter json, RecordingHealth health)
    {
        RunRecording recording = health.Recording;
        json.Count("run", recording.Run);
        json.Count("recording", recording.Ordinal);
        json.WriteString("sha256", recording.Sha256);
        json.WriteString("chain", recording.Chain);
        json.WriteString("begun", recording.BegunAt);
        json.Figure("half_range_s", recording.HalfRangeS);
        json.WriteString("clock", State.HealthWords.Source(recording.ClockBy));
        json.Count("heard", health.Heard);
        json.Count("not_heard", recording.NotHeard);
        json.Count("overloaded", health.Overloaded);
        json.Count("with_speech", health.WithSpeech);
        json.Figure("slope", health.Slope?.Slope);
        json.WriteBoolean("calibrated", health.Calibration.GainDb is not null);
        json.Figure("drift_db", health.Calibration.DriftDb);
    }
}
