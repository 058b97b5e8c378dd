using System.Text.Json;
using FieldSession.Archiving;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Archiving;

/// <summary>What the index keeps of a study for the questions of a test department.</summary>
internal static class ArchiveDetailsJson
{
    /// <summary>Writes it into an open object.</summary>
    public static void Write(Utf8JsonWriter json, ArchivedDetails details)
    {
        json.WriteString("car", details.Car);
        json.WriteString("meter", details.Meter);
        json.Parts(
            "segments",
            details.Segments,
            one =>
            {
                json.WriteNumber("number", one.Number);
                json.WriteString("segment", one.Segment);
                json.WriteString("kind", one.Kind);
                json.Figure("seconds", one.Seconds);
                json.WriteNumber("taken", one.Taken);
                json.WriteNumber("counted", one.Counted);
                json.WriteNumber("missed", one.Missed);
                json.Figure("nu", one.Nu);
                json.Figure("sd_db", one.SdDb);
            }
        );
        json.Parts(
            "words",
            details.Words,
            one =>
            {
                json.WriteNumber("line", (int)one.Line);
                json.WriteString("word", one.Word);
            }
        );
        json.Parts(
            "flags",
            details.Flags,
            one =>
            {
                json.WriteString("driver", one.Driver);
                json.WriteString("cause", one.Cause?.Word());
                json.WriteNumber("readings", one.Readings);
            }
        );
        json.Parts(
            "drifts",
            details.Drifts,
            one =>
            {
                json.Figure("drift_db", one.DriftDb);
                json.Figure("air_c", one.AirC);
            }
        );
    }

    /// <summary>Reads it.</summary>
    public static ArchivedDetails Read(JsonElement json) =>
        new(
            json.GetProperty("car").GetString(),
            json.GetProperty("meter").GetString(),
            [
                .. json.GetProperty("segments")
                    .EnumerateArray()
                    .Select(one => new ArchivedSegment(
                        one.GetProperty("number").GetInt32(),
                        one.GetProperty("segment").GetString()!,
                        one.GetProperty("kind").GetString()!,
                        one.GetProperty("seconds").GetDouble(),
                        one.GetProperty("taken").GetInt32(),
                        one.GetProperty("counted").GetInt32(),
                        one.GetProperty("missed").GetInt32(),
                        one.GetProperty("nu").GetDouble(),
                        Figure(one, "sd_db")
                    )),
            ],
            [
                .. json.GetProperty("words")
                    .EnumerateArray()
                    .Select(one => new ArchivedWord(
                        (VerdictLineKind)one.GetProperty("line").GetInt32(),
                        one.GetProperty("word").GetString()!
                    )),
            ],
            [
                .. json.GetProperty("flags")
                    .EnumerateArray()
                    .Select(one => new ArchivedFlags(
                        one.GetProperty("driver").GetString()!,
                        Cause(one.GetProperty("cause").GetString()),
                        one.GetProperty("readings").GetInt32()
                    )),
            ],
            [
                .. json.GetProperty("drifts")
                    .EnumerateArray()
                    .Select(one => new ArchivedDrift(one.GetProperty("drift_db").GetDouble(), Figure(one, "air_c"))),
            ]
        );

    private static SpoiltCause? Cause(string? word) => word is null ? null : SpoiltCauses.All.Single(cause => cause.Word == word).Cause;

    private static double? Figure(JsonElement json, string name) =>
        json.GetProperty(name) is { ValueKind: JsonValueKind.Number } figure ? figure.GetDouble() : null;
}
