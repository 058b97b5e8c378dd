using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FieldSession.Journal;

/// <summary>
/// One line of the journal, as it stands on disk for ever.
/// <para>
/// Text form: 64 lower-case hex digits, one space, one JSON object without line breaks. The digits are the SHA-256 of
/// the JSON's UTF-8 bytes, exactly as they stand; the JSON is never written anew. Its members, in this order:
/// <c>seq</c> (1, 2, 3, ... within the strand), <c>prev</c> (the digits of the strand's line before; 64 zeros in
/// its first), <c>at</c> (UTC, ISO 8601), <c>strand</c> (16 hex digits, drawn by lot when a laptop writes its first line),
/// <c>kind</c> and <c>v</c> (the kind of entry and its version), <c>body</c> (the entry).
/// </para>
/// <para>
/// A line is valid if and only if its digits are the hash of its JSON. A strand is valid if and only if its lines are
/// valid, are numbered 1, 2, 3, ... and each names the digits of the line before it as <c>prev</c>.
/// </para>
/// </summary>
/// <param name="Number">Number within the strand, from 1.</param>
/// <param name="PreviousHash">Hash of the strand's line before, 64 hex digits; zeros in the first.</param>
/// <param name="At">When it was written, UTC.</param>
/// <param name="Strand">The laptop's own chain, 16 hex digits.</param>
/// <param name="Kind">Kind of entry, as named on disk.</param>
/// <param name="Version">Version of that kind.</param>
/// <param name="Json">The exact JSON text that is hashed.</param>
/// <param name="Hash">SHA-256 of <paramref name="Json"/>, 64 lower-case hex digits.</param>
public sealed record Line(
    int Number, string PreviousHash, DateTimeOffset At, string Strand, string Kind, int Version, string Json, string Hash)
{
    /// <summary>The hash that the first line of a strand names as the one before it.</summary>
    public const string NoHash = "0000000000000000000000000000000000000000000000000000000000000000";

    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.Default };

    /// <summary>Makes the next line of a strand.</summary>
    /// <param name="number">Number within the strand, from 1.</param>
    /// <param name="previousHash">Hash of the line before, or <see cref="NoHash"/>.</param>
    /// <param name="at">When it is written.</param>
    /// <param name="strand">The strand it belongs to.</param>
    /// <param name="kind">Kind of entry, as named on disk.</param>
    /// <param name="version">Version of that kind.</param>
    /// <param name="writeBody">Writes the entry as one JSON value.</param>
    public static Line Make(
        int number, string previousHash, DateTimeOffset at, string strand, string kind, int version, Action<Utf8JsonWriter> writeBody)
    {
        ArgumentNullException.ThrowIfNull(writeBody);
        ArrayBufferWriter<byte> bytes = new(256);
        using (Utf8JsonWriter json = new(bytes, Plain))
        {
            json.WriteStartObject();
            json.WriteNumber("seq", number);
            json.WriteString("prev", previousHash);
            json.WriteString("at", at.UtcDateTime);
            json.WriteString("strand", strand);
            json.WriteString("kind", kind);
            json.WriteNumber("v", version);
            json.WritePropertyName("body");
            writeBody(json);
            json.WriteEndObject();
        }

        return new Line(
            number, previousHash, at.ToUniversalTime(), strand, kind, version,
            Encoding.UTF8.GetString(bytes.WrittenSpan), HashOf(bytes.WrittenSpan));
    }

    /// <summary>Reads a line's text form; null where it is no valid line.</summary>
    public static Line? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length > 66 && text[64] == ' ' ? FromParts(text[..64], text[65..]) : null;
    }

    /// <summary>Reads a line from its hash and its JSON; null where they do not fit each other or the JSON is no line.</summary>
    public static Line? FromParts(string hash, string json)
    {
        if (HashOf(Encoding.UTF8.GetBytes(json)) != hash)
        {
            return null;
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            JsonElement root = document.RootElement;
            return new Line(
                root.GetProperty("seq").GetInt32(),
                root.GetProperty("prev").GetString() ?? NoHash,
                root.GetProperty("at").GetDateTimeOffset(),
                root.GetProperty("strand").GetString() ?? "",
                root.GetProperty("kind").GetString() ?? "",
                root.GetProperty("v").GetInt32(),
                json,
                hash);
        }
        catch (Exception notALine) when (notALine is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    /// <summary>The text form, without a line break.</summary>
    public override string ToString() => $"{Hash} {Json}";

    /// <summary>Whether this line follows another of the same strand; null: whether it is a strand's first line.</summary>
    public bool Follows(Line? previous) => previous is null
        ? Number == 1 && PreviousHash == NoHash
        : Number == previous.Number + 1 && PreviousHash == previous.Hash && Strand == previous.Strand;

    private static string HashOf(ReadOnlySpan<byte> json) => Convert.ToHexStringLower(SHA256.HashData(json));
}
