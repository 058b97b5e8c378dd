using System.Globalization;
using System.Text;
using System.Text.Json;
using FieldSession.Archiving;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Archiving;

/// <summary>
/// An archive as JSON for other programs: its studies, how well runs and readings repeat in them, the predictions together. dB, unrounded;
/// unknown is null.
/// </summary>
public static class ArchiveJson
{
    /// <summary>The archive as one JSON object, indented.</summary>
    public static string Of(IReadOnlyCollection<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(studies);
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, JsonNumbers.Layout))
        {
            json.WriteStartObject();
            json.Parts("studies", studies, study => Study(json, study));
            json.Parts("repeatability", ArchiveSum.Of(studies), sum => Sum(json, sum));
            json.Part("predictions", PredictionScores.Of(studies.SelectMany(study => study.Predictions)), scores => Scores(json, scores));
            json.Part("answers", ArchiveAnswers.Of(studies), answers => ArchiveAnswersJson.Write(json, answers));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Study(Utf8JsonWriter json, ArchivedStudy study)
    {
        json.WriteString("study", study.Name);
        json.WriteString("identity", study.Identity.Hash);
        json.WriteString("began", study.Began?.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
        json.Texts("crew", study.Crew);
        json.WriteString("route", study.RouteInWords);
        json.WriteNumber("runs", study.Runs);
        json.WriteBoolean("finished", study.IsFinished);
    }

    private static void Sum(Utf8JsonWriter json, ArchiveSum sum)
    {
        json.WriteString("by", sum.By);
        json.WriteString("name", sum.Name);
        json.WriteString("group", sum.Group);
        json.WriteNumber("studies", sum.Studies);
        json.Figure("run_sd", sum.RunSdDb);
        json.Figure("nu_run", sum.NuRun);
        json.Figure("reading_sd", sum.ReadingSdDb);
        json.Figure("nu_e", sum.NuE);
    }

    private static void Scores(Utf8JsonWriter json, PredictionScores scores)
    {
        json.WriteNumber("count", scores.Count);
        json.WriteNumber("hits", scores.Hits);
        json.Figure("hits_by_chance", scores.ExpectedHits);
        json.Figure("p_at_least", scores.PAtLeast);
        json.Figure("brier", scores.Brier);
        json.Figure("brier_of_chance", scores.BrierOfChance);
    }
}

/// <summary>
/// The archive as the CSV that 'compare --archive' and a plan read (docs/files.md, "Archive CSV"): a line a study and class.
/// </summary>
public static class ArchiveLinesCsv
{
    /// <summary>The lines, header first, without line breaks.</summary>
    public static IEnumerable<string> Of(IEnumerable<ArchivedStudy> studies) =>
        ArchiveRow.Of(studies).Select(Row).Prepend("day,cls,nu_run,s_run,kbar,nu_e,s_e,study,crew,loop");

    private static string Row(ArchiveRow row)
    {
        EarlierScatter one = row.Scatter;
        return string.Join(
            ',',
            Text(one.Day),
            one.Group,
            Number(one.NuRun),
            Number(one.SRunDb),
            Number(one.Kbar),
            Number(one.NuE),
            Number(one.SEDb),
            one.Study,
            Text(row.Crew ?? ""),
            Text(row.Loop ?? "")
        );
    }

    private static string Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "NA";

    private static string Text(string text) => Quoted(SpreadsheetText.Guarded(VisibleText.OfCell(text)));

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}

/// <summary>The answers of an archive as JSON. Unknown is null.</summary>
internal static class ArchiveAnswersJson
{
    /// <summary>Writes them into an open object.</summary>
    public static void Write(Utf8JsonWriter json, ArchiveAnswers answers)
    {
        json.Parts(
            "segments",
            answers.Segments,
            one =>
            {
                json.WriteString("segment", one.Segment);
                json.WriteString("kind", one.Kind);
                json.WriteNumber("studies", one.Studies);
                json.WriteNumber("taken", one.Taken);
                json.Figure("spoilt_share", one.SpoiltShare);
                json.Figure("reading_sd", one.ReadingSdDb);
                json.Figure("nu_e", one.Nu);
                json.Figure("per_db2_minute", one.PerDb2Minute);
            }
        );
        json.Parts(
            "verdicts",
            answers.Words,
            one =>
            {
                json.WriteString("line", FormatWords.Line(one.Line));
                json.WriteString("word", one.Word);
                json.WriteNumber("verdicts", one.Verdicts);
            }
        );
        Calibration(json, answers);
        json.Parts(
            "flags",
            answers.Flags,
            one =>
            {
                json.WriteString("driver", one.Driver);
                json.WriteNumber("readings", one.Readings);
                json.Parts(
                    "by_cause",
                    one.Flags,
                    flag =>
                    {
                        json.WriteString("cause", flag.Cause.Word());
                        json.WriteNumber("readings", flag.Readings);
                    }
                );
            }
        );
    }

    private static void Calibration(Utf8JsonWriter json, ArchiveAnswers answers)
    {
        json.Parts(
            "calibration",
            answers.Calibration,
            one =>
            {
                json.Figure("stated_from", one.From);
                json.WriteNumber("predictions", one.Predictions);
                json.Figure("stated", one.Stated);
                json.Figure("came_true", one.CameTrue);
            }
        );
        json.Parts(
            "drifts",
            answers.Drifts,
            one =>
            {
                json.WriteString("meter", one.Meter);
                json.WriteNumber("sessions", one.Sessions);
                json.Figure("drift_db", one.DriftDb);
                json.Figure("db_per_degree", one.DbPerDegree);
            }
        );
    }
}
