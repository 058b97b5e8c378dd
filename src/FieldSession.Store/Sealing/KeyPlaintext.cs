using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Store.Sealing;

/// <summary>
/// The key as the bytes that get locked: JSON, padded with spaces to one length for every study, so that the length of the
/// file tells nothing of the names. These bytes never touch a disk.
/// </summary>
internal static class KeyPlaintext
{
    /// <summary>Length of the padded bytes: nine names of 60 characters fit in even where JSON escapes each with 12 bytes.</summary>
    public const int PaddedBytes = 8192;

    /// <summary>The padded bytes; the caller wipes them.</summary>
    public static byte[] Of(KeySheet key)
    {
        ArrayBufferWriter<byte> bytes = new(PaddedBytes);
        using (Utf8JsonWriter json = new(bytes, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            Write(json, key);
        }

        byte[] padded = new byte[PaddedBytes];
        padded.AsSpan().Fill((byte)' ');
        bytes.WrittenSpan.CopyTo(padded);
        bytes.Clear();
        return padded;
    }

    /// <summary>The key that unlocked bytes hold; null where they hold none.</summary>
    public static KeySheet? Parse(byte[] padded)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(padded);
            JsonElement root = document.RootElement;
            List<KeyLine> places = [.. root.GetProperty("places").EnumerateArray()
                .Select(place => new KeyLine(new SpecCode(Word(place, "code")), Word(place, "spec")))];
            string control = places.First(place => place.Code.Digits == Word(root, "control")).Spec;
            return new KeySheet(Word(root, "study"), places, control, Word(root, "nonce"));
        }
        catch (Exception broken) when (broken is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    private static void Write(Utf8JsonWriter json, KeySheet key)
    {
        json.WriteStartObject();
        json.WriteString("study", key.StudyName);
        json.WriteString("control", key.ControlCode.Digits);
        json.WriteString("nonce", key.Nonce);
        json.WriteStartArray("places");
        foreach (KeyLine place in key.Places)
        {
            json.WriteStartObject();
            json.WriteString("code", place.Code.Digits);
            json.WriteString("spec", place.Spec);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Word(JsonElement element, string member) => element.GetProperty(member).GetString() ?? "";
}
