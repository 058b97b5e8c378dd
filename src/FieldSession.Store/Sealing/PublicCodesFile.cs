using System.Text.Json;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Disks;

namespace FieldSession.Store.Sealing;

/// <summary>What came of reading a file of public codes: the codes, or why not and what to do.</summary>
/// <param name="Codes">What it holds; null where it is refused.</param>
/// <param name="Refusal">Why it is refused; null where it is taken.</param>
public sealed record PublicCodesRead(PublicCodes? Codes, Objection? Refusal);

/// <summary>
/// The small public file that the crew takes into the study where the fitting was sealed elsewhere: one JSON object of codes and
/// commitment, with what they were drawn for. Anybody may read it.
/// </summary>
public static class PublicCodesFile
{
    /// <summary>Name of the form, version included.</summary>
    public const string Format = "fieldsession-codes-1";

    private static string[] Members => ["format", "study", "plan", "fitting", "codes", "commitment", "check"];

    /// <summary>Writes the file, whole or not at all, never over another.</summary>
    /// <exception cref="IOException">It could not be written; nothing was left behind.</exception>
    public static void Write(string path, PublicCodes codes)
    {
        ArgumentNullException.ThrowIfNull(codes);
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteString("study", codes.StudyName);
            json.WriteString("plan", codes.PlanDigest);
            json.WriteNumber("fitting", codes.Fitting);
            json.WriteString("codes", string.Join(' ', codes.Codes));
            json.WriteString("commitment", codes.Commitment);
            json.WriteString("check", codes.Check());
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        PrivateFile.Write(path, bytes.ToArray());
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        }
    }

    /// <summary>Reads a file that may be anything.</summary>
    /// <exception cref="NotAFileException">It is a pipe or a device.</exception>
    /// <exception cref="IOException">It can't be read.</exception>
    public static PublicCodesRead Read(string path)
    {
        FileKind.RefuseSpecial(path);
        return Of(SmallText.Read(path));
    }

    /// <summary>Reads the text of such a file.</summary>
    internal static PublicCodesRead Of(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = 2 });
            return InObject(document.RootElement);
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException or FormatException)
        {
            return Refused(KeyFileWords.IsNoPublicFile);
        }
    }

    private static PublicCodesRead InObject(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.EnumerateObject().Select(member => member.Name).SequenceEqual(Members))
        {
            return Refused(KeyFileWords.IsNoPublicFile);
        }

        if (root.GetProperty("format").GetString() != Format)
        {
            return Refused(KeyFileWords.PublicFileIsOfOtherFormat);
        }

        string[] words = Word(root, "codes").Split(' ');
        PublicCodes codes = new(
            Word(root, "study"),
            Word(root, "plan"),
            root.GetProperty("fitting").GetInt32(),
            [.. words.Select(SpecCode.Parse).OfType<SpecCode>()],
            Word(root, "commitment")
        );
        bool isWhole = codes.Codes.Count == words.Length && codes.Check() == Word(root, "check");
        return isWhole ? new PublicCodesRead(codes, null) : Refused(KeyFileWords.PublicFileWasChanged);
    }

    private static PublicCodesRead Refused(string what) => new(null, new Objection(what, KeyFileWords.TakeCustodiansPublicFile));

    private static string Word(JsonElement root, string member) => root.GetProperty(member).GetString() ?? "";
}
