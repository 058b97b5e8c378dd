using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using FieldSession.Acoustics;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Recordings;

/// <summary>How a recording was calibrated.</summary>
/// <param name="GainDb">Level = 10 lg of the mean square + gain, dB.</param>
/// <param name="Tone">The calibrator's tone in the recording; null: the gain was given.</param>
/// <param name="DriftDb">The tone's level in a second recording minus that in this one, dB; null: there is no second one.</param>
public sealed record RecordingCalibration(double GainDb, CalibratorTone? Tone, double? DriftDb);

/// <summary>What a recording held, outside any study.</summary>
/// <param name="Format">How its samples are written.</param>
/// <param name="Levels">Its levels; with the gain added where it is calibrated.</param>
/// <param name="Calibration">Its calibration; null: levels are re full scale, good for differences only.</param>
/// <param name="Decays">Decay of the ring by segment, in the order of the list; null: not determinable.</param>
/// <param name="Remarks">What is odd about it.</param>
public sealed record MeteredRecording(
    SoundFormat Format,
    RecordingLevels Levels,
    RecordingCalibration? Calibration,
    ImmutableArray<(string Segment, RingDecayTime? Decay)> Decays,
    ImmutableArray<string> Remarks
);

/// <summary>What a recording held, as JSON for other programs. dB and seconds, unrounded; unknown is null.</summary>
public static class LevelsJson
{
    /// <summary>One JSON object, indented.</summary>
    public static string Of(MeteredRecording recording)
    {
        ArgumentNullException.ThrowIfNull(recording);
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, JsonNumbers.Layout))
        {
            json.WriteStartObject();
            json.Count("rate_hz", recording.Format.RateHz);
            json.Count("bits", recording.Format.Bits);
            json.Count("channels", recording.Format.Channels);
            json.Figure("seconds", recording.Levels.Seconds);
            json.Texts("remarks", recording.Remarks);
            json.Part("calibration", recording.Calibration, calibration => Calibration(json, calibration));
            json.Count("clip_events", recording.Levels.ClipEvents);
            json.Parts("windows", recording.Levels.Windows, window => Window(json, window));
            json.WriteStartObject("decays");
            foreach ((string segment, RingDecayTime? decay) in recording.Decays)
            {
                json.Part(segment, decay, known => Decay(json, known));
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Calibration(Utf8JsonWriter json, RecordingCalibration calibration)
    {
        json.Figure("gain_db", calibration.GainDb);
        json.Figure("drift_db", calibration.DriftDb);
        json.Figure("tone_start_s", calibration.Tone?.FromS);
        json.Figure("tone_end_s", calibration.Tone?.ToS);
    }

    private static void Window(Utf8JsonWriter json, WindowLevels window)
    {
        json.Figure("from_s", window.Window.FromS);
        json.Figure("to_s", window.Window.ToS);
        json.Figure("heard_s", window.HeardS);
        json.Figure("laeq_db", window.LAeqDb);
        json.Figure("lceq_db", window.LCeqDb);
        json.Figure("lzeq_db", window.LZeqDb);
        json.Figure("lafmax_db", window.LAFmaxDb);
        json.Figure("lafmin_db", window.LAFminDb);
        json.Figure("lasmax_db", window.LASmaxDb);
        json.Figure("l5_db", window.L5Db);
        json.Figure("l10_db", window.L10Db);
        json.Figure("l50_db", window.L50Db);
        json.Figure("l90_db", window.L90Db);
        json.Figure("l95_db", window.L95Db);
        json.WriteStartObject("bands_db");
        foreach (BandLevel band in window.Bands)
        {
            json.Figure(Math.Round(band.MiddleHz).ToString("0", CultureInfo.InvariantCulture), band.LevelDb);
        }

        json.WriteEndObject();
        json.Figure("ring_db", window.RingDb);
        json.Figure("ring_median_db", window.RingMedianDb);
        json.Figure("prominence_db", window.ProminenceDb);
        json.Count("clip_events", window.ClipEvents);
    }

    private static void Decay(Utf8JsonWriter json, RingDecayTime decay)
    {
        json.Figure("t60_s", decay.T60S);
        json.Figure("lo_s", decay.LowS);
        json.Figure("hi_s", decay.HighS);
        json.Count("events", decay.Events);
    }
}
