using System.Text.Json;
using FieldSession.Comparing;

namespace FieldSession.Store.Exports;

/// <summary>The ring of one pair as JSON: the member 'ring' of a comparison. Written only once the ring is uncovered.</summary>
internal static class RingJson
{
    /// <summary>Writes the fields into an open object: those of a class, then what is the ring's own.</summary>
    public static void Write(Utf8JsonWriter json, RingPair pair, RingFinding ring)
    {
        ClassJson.Write(json, pair.Main);
        json.WriteStartArray("band_hz");
        json.WriteNumberValue(ring.Band.LowerHz);
        json.WriteNumberValue(ring.Band.UpperHz);
        json.WriteEndArray();
        json.Figure("ring_margin_db", ring.MarginDb);
        json.WriteStartObject("explored");
        foreach (ExploredBand band in pair.Explored)
        {
            json.WriteStartObject(band.Name);
            ClassJson.Estimate(json, band.Estimate);
            json.Figure("p_holm", band.PHolm);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.Part("decay", pair.Lasting, lasting => Lasting(json, lasting));
        json.WriteBoolean("calibrated", ring.IsCalibrated);
        json.WriteString("no_verdict_because", ring.WhyNone);
        json.WriteBoolean("hangs_on_short_events", pair.HangsOnShortEvents);
        json.Count("runs_heard", ring.RunsHeard);
        json.Figure("ring_found_hz", ring.Found?.PeakHz);
    }

    private static void Lasting(Utf8JsonWriter json, RingLasting lasting)
    {
        json.Figure("ratio", lasting.Ratio);
        json.Figure("lo95", lasting.Low95);
        json.Figure("hi95", lasting.High95);
        json.Figure("p", lasting.P);
        json.Count("runs", lasting.Runs);
    }
}
