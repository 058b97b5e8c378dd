using System.Text.Json;
using FieldSession.Archiving;
using FieldSession.State;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Archiving;

/// <summary>The answers of an archive as JSON. Unknown is null.</summary>
internal static class ArchiveAnswersJson
{
    /// <summary>Writes them into an open object.</summary>
    public static void Write(Utf8JsonWriter json, ArchiveAnswers answers)
    {
        json.Parts("segments", answers.Segments, one =>
        {
            json.WriteString("segment", one.Segment);
            json.WriteString("kind", one.Kind);
            json.WriteNumber("studies", one.Studies);
            json.WriteNumber("taken", one.Taken);
            json.Figure("spoilt_share", one.SpoiltShare);
            json.Figure("reading_sd", one.ReadingSdDb);
            json.Figure("nu_e", one.Nu);
            json.Figure("per_db2_minute", one.PerDb2Minute);
        });
        json.Parts("verdicts", answers.Words, one =>
        {
            json.WriteString("line", FormatWords.Line(one.Line));
            json.WriteString("word", one.Word);
            json.WriteNumber("verdicts", one.Verdicts);
        });
        Calibration(json, answers);
        json.Parts("flags", answers.Flags, one =>
        {
            json.WriteString("driver", one.Driver);
            json.WriteNumber("readings", one.Readings);
            json.Parts("by_cause", one.Flags, flag =>
            {
                json.WriteString("cause", flag.Cause.Word());
                json.WriteNumber("readings", flag.Readings);
            });
        });
    }

    private static void Calibration(Utf8JsonWriter json, ArchiveAnswers answers)
    {
        json.Parts("calibration", answers.Calibration, one =>
        {
            json.Figure("stated_from", one.From);
            json.WriteNumber("predictions", one.Predictions);
            json.Figure("stated", one.Stated);
            json.Figure("came_true", one.CameTrue);
        });
        json.Parts("drifts", answers.Drifts, one =>
        {
            json.WriteString("meter", one.Meter);
            json.WriteNumber("sessions", one.Sessions);
            json.Figure("drift_db", one.DriftDb);
            json.Figure("db_per_degree", one.DbPerDegree);
        });
    }
}
