using System.Text.Encodings.Web;
using System.Text.Json;

namespace FieldSession.Store.Exports;

/// <summary>JSON as other programs get it: numbers unrounded (shortest text that reads back to the same double), unknown is null, never NaN.</summary>
internal static class JsonNumbers
{
    /// <summary>How every JSON output is laid out. The relaxed encoder keeps names readable; the output is no HTML.</summary>
    public static JsonWriterOptions Layout => new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>A number, or null where it is unknown or not finite.</summary>
    public static void Figure(this Utf8JsonWriter json, string name, double? figure)
    {
        if (figure is { } known && double.IsFinite(known))
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A whole number, or null where it is unknown.</summary>
    public static void Count(this Utf8JsonWriter json, string name, int? count)
    {
        if (count is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A list of texts.</summary>
    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    /// <summary>An object under a name, or null where there is nothing.</summary>
    public static void Part<T>(this Utf8JsonWriter json, string name, T? part, Action<T> write)
        where T : class
    {
        if (part is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        write(part);
        json.WriteEndObject();
    }

    /// <summary>A list of objects.</summary>
    public static void Parts<T>(this Utf8JsonWriter json, string name, IEnumerable<T> parts, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T part in parts)
        {
            json.WriteStartObject();
            write(part);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
