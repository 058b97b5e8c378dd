using System.Buffers;
using System.Text.Json;
using FieldSession.Journal;

namespace FieldSession.Store.Exports;

/// <summary>
/// The journal as JSON lines: per line one object with <c>hash</c> and <c>json</c>. The latter is a string that holds the line's
/// exact text, not an object: only so does any JSON reader give back the very bytes that the hash is the SHA-256 of.
/// </summary>
public static class JournalLines
{
    /// <summary>The file of an export.</summary>
    internal static ExportFile File { get; } = new WrittenFile(
        "journal.jsonl",
        "application/jsonl",
        ExportWords.JournalDescription,
        source => BytesOf(source.Lines))
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
            return document.RootElement.GetProperty("hash").GetString() is { } hash && document.RootElement.GetProperty("json").GetString() is { } json
                ? Line.FromParts(hash, json)
                : null;
        }
        catch (Exception noLine) when (noLine is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }
}
