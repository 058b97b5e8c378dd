using System.Globalization;
using System.Text;
using System.Text.Json;
using FieldSession.Archiving;
using FieldSession.Revealing;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Archiving;

/// <summary>An archive as JSON for other programs: its studies, how well runs and readings repeat in them, the predictions together. dB, unrounded; unknown is null.</summary>
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
