using System.Buffers;
using System.Globalization;
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
    /// <summary>
    /// Length of the padded bytes: nine names of 60 characters fit in even where JSON escapes each with 12 bytes, beside an order of
    /// 500 runs shared by two cars.
    /// </summary>
    public const int PaddedBytes = 16384;

    /// <summary>Length of the padded bytes in the first form, which knew no order.</summary>
    public const int PaddedBytesOfFirstFormat = 8192;

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
            List<KeyLine> places =
            [
                .. root.GetProperty("places")
                    .EnumerateArray()
                    .Select(place => new KeyLine(new SpecCode(Word(place, "code")), Word(place, "spec"), Optional(place, "mark"))),
            ];
            string control = places.First(place => place.Code.Digits == Word(root, "control")).Spec;
            return new KeySheet(Word(root, "study"), places, control, Word(root, "nonce"), PlanIn(root));
        }
        catch (Exception broken)
            when (broken is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentException or FormatException)
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
            WriteOptional(json, "mark", place.Mark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (key.Plan is { } plan)
        {
            Write(json, plan);
        }

        json.WriteEndObject();
    }

    // Cars are named once and then counted: an order may have hundreds of runs.
    private static void Write(Utf8JsonWriter json, FittingPlan plan)
    {
        json.WriteNumber("fitting", plan.Number);
        json.WriteString("plan", plan.PlanDigest);
        json.WriteString("order", string.Join(' ', plan.Order));
        json.WriteNumber("firstRun", plan.FirstRun);
        json.WriteString("earlier", string.Join(' ', plan.EarlierCodes));
        if (plan.CarOrder is { } carOrder)
        {
            List<string> cars = [.. carOrder.Distinct()];
            json.WriteStartArray("cars");
            cars.ForEach(json.WriteStringValue);
            json.WriteEndArray();
            json.WriteString(
                "carOrder",
                string.Join(' ', carOrder.Select(car => cars.IndexOf(car).ToString(CultureInfo.InvariantCulture)))
            );
        }

        json.WriteStartArray("onCars");
        foreach (SetOnCar set in plan.OnCars)
        {
            json.WriteStartObject();
            WriteOptional(json, "car", set.Car);
            json.WriteString("code", set.Code.Digits);
            WriteOptional(json, "spec", set.Spec);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static FittingPlan? PlanIn(JsonElement root)
    {
        if (!root.TryGetProperty("plan", out JsonElement digest))
        {
            return null;
        }

        string[] cars = root.TryGetProperty("cars", out JsonElement named)
            ? [.. named.EnumerateArray().Select(car => car.GetString() ?? "")]
            : [];
        return new FittingPlan(
            root.GetProperty("fitting").GetInt32(),
            digest.GetString() ?? "",
            [.. Words(root, "order").Select(word => word == "R" ? Place.Reference : new Place(Number(word)))],
            cars.Length > 0
                ? [.. Words(root, "carOrder").Select(word => cars.ElementAtOrDefault(Number(word)) ?? throw new FormatException())]
                : null
        )
        {
            FirstRun = Math.Max(1, root.GetProperty("firstRun").GetInt32()),
            EarlierCodes = [.. Words(root, "earlier").Select(word => new SpecCode(word))],
            OnCars =
            [
                .. root.GetProperty("onCars")
                    .EnumerateArray()
                    .Select(set => new SetOnCar(Optional(set, "car"), new SpecCode(Word(set, "code")), Optional(set, "spec"))),
            ],
        };
    }

    private static void WriteOptional(Utf8JsonWriter json, string member, string? word)
    {
        if (word is not null)
        {
            json.WriteString(member, word);
        }
    }

    private static string? Optional(JsonElement element, string member) =>
        element.TryGetProperty(member, out JsonElement word) ? word.GetString() : null;

    private static string[] Words(JsonElement element, string member) =>
        Word(element, member).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static int Number(string word) => int.Parse(word, NumberStyles.None, CultureInfo.InvariantCulture);

    private static string Word(JsonElement element, string member) => element.GetProperty(member).GetString() ?? "";
}
