using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.Store.Exports.Tables;

namespace FieldSession.Store.Exports;

/// <summary>
/// Contents page 3: every file of an export, in the order of the job, but for <c>datapackage.json</c>, which describes them.
/// </summary>
public static class Exports
{
    /// <summary>Every file.</summary>
    public static ImmutableArray<ExportFile> All { get; } =
    [
        StudyTable.Table,
        StrandsTable.Table,
        PlanJson.File,
        SegmentsTable.Table,
        CodesTable.Table,
        SessionsTable.Table,
        WeatherTable.Table,
        AmendmentsTable.Table,
        ChecksTable.Table,
        OverridesTable.Table,
        RunsTable.Table,
        RerunsTable.Table,
        ReadingsTable.Table,
        NotesTable.Table,
        ExtraTable.Table,
        BandsTable.Table,
        RatingsTable.Table,
        ChoicesTable.Table,
        LegsTable.Table,
        PredictionsTable.Table,
        OpenedKeyTable.Table,
        ComparisonJson.File,
        ComparisonsTable.Table,
        RepeatabilityTable.Table,
        SegmentYieldTable.Table,
        VerdictTable.Table,
        SummaryText.File,
        JournalLines.File,
    ];
}

/// <summary>The blind summary as plain text, with the head hash that pins it: what 'review' prints.</summary>
internal static class SummaryText
{
    /// <summary>The file of an export.</summary>
    public static ExportFile File { get; } =
        new WrittenFile(
            "summary.txt",
            "text/plain",
            ExportWords.SummaryDescription,
            source => Encoding.UTF8.GetBytes(string.Concat(Lines(source).Select(line => line + "\n")))
        );

    private static IEnumerable<string> Lines(ExportSource source) =>
        [
            .. ComparisonWords.Of(source.Comparison, source.Day),
            .. ChosenAfterWords.Of(source.Study, source.Day),
            .. EarWords.Of(EarFindings.Of(source.Study, StudyTerms.Of(source.Study))),
            .. RingWords.Of(source.Study, source.Ring),
            .. StudyLegs.ComparisonOf(source.Study) is { } energy ? EnergyWords.Of(energy, source.Study.Plan!.Units).Prepend("") : [],
            "",
            ExportWords.JournalHead(source, source.Lines.Count == 0 ? Line.NoHash : source.Lines[^1].Hash),
        ];
}

/// <summary>
/// The journal as JSON lines: per line one object with <c>hash</c> and <c>json</c>. The latter is a string that holds the line's
/// exact text, not an object: only so does any JSON reader give back the very bytes that the hash is the SHA-256 of.
/// </summary>
public static class JournalLines
{
    /// <summary>The file of an export.</summary>
    internal static ExportFile File { get; } =
        new WrittenFile("journal.jsonl", "application/jsonl", ExportWords.JournalDescription, source => BytesOf(source.Lines))
        {
            Hidden = source => source.PredictionsHiddenBecause ?? source.EarHiddenBecause ?? source.RingHiddenBecause,
        };

    /// <summary>The lines as UTF-8, each ended by a line feed.</summary>
    public static byte[] BytesOf(IEnumerable<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArrayBufferWriter<byte> bytes = new();
        using Utf8JsonWriter json = new(bytes, JsonNumbers.Layout with { Indented = false });
        foreach (Line line in lines)
        {
            json.WriteStartObject();
            json.WriteString("hash", line.Hash);
            json.WriteString("json", line.Json);
            json.WriteEndObject();
            json.Flush();
            json.Reset();
            bytes.Write("\n"u8);
        }

        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>The journal line that a line of such a file holds; null: none, or its text does not have its hash.</summary>
    public static Line? Read(string jsonLine)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(jsonLine);
            return
                document.RootElement.GetProperty("hash").GetString() is { } hash
                && document.RootElement.GetProperty("json").GetString() is { } json
                ? Line.FromParts(hash, json)
                : null;
        }
        catch (Exception noLine) when (noLine is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }
}
