using System.Buffers;
using System.Globalization;
using System.Text.Json;
using FieldSession.Archiving;
using FieldSession.Merging;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Archiving;

/// <summary>
/// The index of an archive's folder: one JSON file, written whole. An index that can't be read, or is of another version, counts as none.
/// No level of a code and no spec's name is in it.
/// </summary>
internal static class ArchiveIndex
{
    /// <summary>Its name in the folder.</summary>
    public const string FileName = "archive-index.json";

    private const int Version = 3;

    /// <summary>The studies that the index of a folder knows, by path; empty: there is none that can be read.</summary>
    public static Dictionary<string, IndexedStudy> In(string root)
    {
        try
        {
            return Of(new Disk().ReadAll(Path.Combine(root, FileName)));
        }
        catch (Exception none) when (none is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The studies that the bytes of an index know, by path; empty: they can't be read.</summary>
    public static Dictionary<string, IndexedStudy> Of(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using JsonDocument json = JsonDocument.Parse(bytes);
            return json.RootElement.GetProperty("version").GetInt32() == Version
                ? json.RootElement.GetProperty("studies").EnumerateArray().Select(Read).ToDictionary(study => study.Stamp.Path)
                : [];
        }
        catch (Exception none)
            when (none is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            return [];
        }
    }

    /// <summary>Writes the index.</summary>
    /// <returns>Why it could not be written; null: it was.</returns>
    public static string? Write(string root, IEnumerable<IndexedStudy> studies)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, JsonNumbers.Layout with { Indented = false }))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.Parts("studies", studies, study => Write(json, study));
            json.WriteEndObject();
        }

        try
        {
            WholeFile.Write(new Disk(), Path.Combine(root, FileName), bytes.WrittenSpan);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }

    private static void Write(Utf8JsonWriter json, IndexedStudy indexed)
    {
        ArchivedStudy study = indexed.Study;
        json.WriteString("path", indexed.Stamp.Path);
        json.WriteNumber("bytes", indexed.Stamp.Bytes);
        json.WriteNumber("ticks", indexed.Stamp.Ticks);
        json.WriteString("identity", study.Identity.Hash);
        json.Parts(
            "ends",
            indexed.State.Ends,
            end =>
            {
                json.WriteString("strand", end.Strand);
                json.WriteNumber("line", end.Line);
                json.WriteString("hash", end.Hash);
            }
        );
        json.WriteString("study", study.Name);
        json.WriteString("began", study.Began?.ToString("O", CultureInfo.InvariantCulture));
        json.Texts("crew", study.Crew);
        json.WriteString("route", study.Route);
        json.WriteNumber("runs", study.Runs);
        json.WriteBoolean("finished", study.IsFinished);
        json.Parts(
            "scatter",
            study.Scatter,
            one =>
            {
                json.WriteString("group", one.Group);
                json.WriteBoolean("is_kind", one.IsKind);
                json.Figure("nu_run", one.NuRun);
                json.Figure("s_run", one.SRunDb);
                json.Figure("kbar", one.Kbar);
                json.Figure("nu_e", one.NuE);
                json.Figure("s_e", one.SEDb);
            }
        );
        json.Parts(
            "predictions",
            study.Predictions,
            one =>
            {
                json.WriteBoolean("hit", one.Hit);
                json.Figure("chance", one.Chance);
                json.Figure("stated", one.Stated);
            }
        );
        json.Part("details", study.Details, details => ArchiveDetailsJson.Write(json, details));
    }

    private static IndexedStudy Read(JsonElement json)
    {
        StudyIdentity identity = StudyIdentity.WithHash(json.GetProperty("identity").GetString()) ?? throw new FormatException();
        return new IndexedStudy(
            new StudyStamp(
                json.GetProperty("path").GetString()!,
                json.GetProperty("bytes").GetInt64(),
                json.GetProperty("ticks").GetInt64()
            ),
            new StudyState(
                identity,
                [
                    .. json.GetProperty("ends")
                        .EnumerateArray()
                        .Select(one => new StrandEnd(
                            one.GetProperty("strand").GetString()!,
                            one.GetProperty("line").GetInt32(),
                            one.GetProperty("hash").GetString()!
                        )),
                ]
            ),
            Study(json, identity)
        );
    }

    private static ArchivedStudy Study(JsonElement json, StudyIdentity identity) =>
        new(
            identity,
            json.GetProperty("study").GetString()!,
            json.GetProperty("began") is { ValueKind: JsonValueKind.String } began ? began.GetDateTimeOffset() : null,
            [.. json.GetProperty("crew").EnumerateArray().Select(name => name.GetString()!)],
            json.GetProperty("route").GetString()!,
            json.GetProperty("runs").GetInt32(),
            json.GetProperty("finished").GetBoolean(),
            [
                .. json.GetProperty("scatter")
                    .EnumerateArray()
                    .Select(one => new ArchivedScatter(
                        one.GetProperty("group").GetString()!,
                        one.GetProperty("is_kind").GetBoolean(),
                        one.GetProperty("nu_run").GetDouble(),
                        Figure(one, "s_run"),
                        one.GetProperty("kbar").GetDouble(),
                        one.GetProperty("nu_e").GetDouble(),
                        Figure(one, "s_e")
                    )),
            ],
            [
                .. json.GetProperty("predictions")
                    .EnumerateArray()
                    .Select(one => new ScoredPrediction(
                        one.GetProperty("hit").GetBoolean(),
                        one.GetProperty("chance").GetDouble(),
                        one.GetProperty("stated").GetDouble()
                    )),
            ]
        )
        {
            Details = ArchiveDetailsJson.Read(json.GetProperty("details")),
        };

    private static double? Figure(JsonElement json, string name) =>
        json.GetProperty(name) is { ValueKind: JsonValueKind.Number } figure ? figure.GetDouble() : null;
}

/// <summary>By what the index knows that a study is still as it was.</summary>
/// <param name="Path">Its path below the archive's folder, cut by slashes.</param>
/// <param name="Bytes">Length of its text; of its LiteDB file where there is no text.</param>
/// <param name="Ticks">When that file was written last, UTC, in ticks.</param>
internal sealed record StudyStamp(string Path, long Bytes, long Ticks)
{
    /// <summary>The stamp of a study.</summary>
    public static StudyStamp Of(string root, string path)
    {
        FileInfo text = new(System.IO.Path.ChangeExtension(path, ".journal"));
        FileInfo file = text.Exists ? text : new FileInfo(path);
        return new StudyStamp(System.IO.Path.GetRelativePath(root, path).Replace('\\', '/'), file.Length, file.LastWriteTimeUtc.Ticks);
    }
}

/// <summary>A study of the archive as the index keeps it.</summary>
/// <param name="Stamp">How its file was then.</param>
/// <param name="State">How far it goes.</param>
/// <param name="Study">What the archive keeps of it.</param>
internal sealed record IndexedStudy(StudyStamp Stamp, StudyState State, ArchivedStudy Study);
