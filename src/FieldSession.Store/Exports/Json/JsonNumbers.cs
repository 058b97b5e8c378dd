using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using FieldSession.Comparing;

namespace FieldSession.Store.Exports;

/// <summary>
/// JSON as other programs get it: numbers unrounded (shortest text that reads back to the same double), unknown is null, never NaN.
/// </summary>
internal static class JsonNumbers
{
    /// <summary>How every JSON output is laid out. The relaxed encoder keeps names readable; the output is no HTML.</summary>
    public static JsonWriterOptions Layout =>
        new()
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

/// <summary>The number of runs that a difference needs, as JSON for other programs. dB, unrounded; unknown is null.</summary>
public static class SizeJson
{
    /// <summary>The answer as one JSON object, indented.</summary>
    /// <param name="size">The answer.</param>
    /// <param name="asked">A number of runs per code that was asked for; null: none.</param>
    /// <param name="assumed">Names of the repeatability figures that nobody gave.</param>
    public static string Of(DaySize size, SizeRow? asked, IReadOnlyList<string> assumed)
    {
        ArgumentNullException.ThrowIfNull(size);
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, JsonNumbers.Layout))
        {
            json.WriteStartObject();
            Terms(json, size.Terms);
            json.Texts("assumed", assumed);
            json.Count("runs_per_code_for_difference", size.RunsForDifference);
            json.Count("runs_per_code_for_difference_with_drift", size.RunsForDifferenceWithDrift);
            json.Count("runs_per_code_for_equivalence", size.RunsForEquivalence);
            json.Part("asked", asked, row => Row(json, row));
            json.Parts("runs", size.Rows, row => Row(json, row));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Terms(Utf8JsonWriter json, SizeTerms terms)
    {
        json.Figure("run_sd", terms.RunSdDb);
        json.Figure("reading_sd", terms.ReadingSdDb);
        json.Count("segments", terms.Segments);
        json.Figure("run_mean_sd", terms.RunMeanSdDb);
        json.Figure("difference_db", terms.DifferenceDb);
        json.Figure("margin_db", terms.MarginDb);
        json.Figure("power_wanted", terms.Power);
        json.Figure("alpha", terms.Alpha);
    }

    private static void Row(Utf8JsonWriter json, SizeRow row)
    {
        json.Count("runs_per_code", row.Runs);
        json.Figure("mdd", row.SmallestDifferenceDb);
        json.Figure("power", row.Power);
        json.Figure("equivalence_power", row.EquivalencePower);
        json.Figure("mdd_with_drift", row.SmallestWithDriftDb);
        json.Figure("power_with_drift", row.PowerWithDrift);
    }
}
