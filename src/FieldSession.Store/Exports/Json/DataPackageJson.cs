using System.Buffers;
using System.Security.Cryptography;
using System.Text.Json;
using FieldSession.Journal;

namespace FieldSession.Store.Exports;

/// <summary>A file of an export with its bytes.</summary>
/// <param name="File">The file.</param>
/// <param name="Bytes">Its bytes.</param>
internal sealed record ExportedFile(ExportFile File, byte[] Bytes);

/// <summary>
/// The descriptor of an export: a Data Package (datapackage.org, Data Package 2.0) that lists every file with its size and hash, and
/// of every table the columns with type, unit and meaning, the key and the links to other tables.
/// </summary>
internal static class DataPackageJson
{
    /// <summary>The descriptor's file name, fixed by the standard.</summary>
    public const string FileName = "datapackage.json";

    /// <summary>The property that says which program made a descriptor; not of the standard, which allows further ones.</summary>
    public const string MakerProperty = "made_by";

    /// <summary>What is in it.</summary>
    public const string Maker = "fieldsession";

    private const string Profile = "https://datapackage.org/profiles/2.0/datapackage.json";

    /// <summary>The descriptor's bytes.</summary>
    /// <param name="source">What the export was drawn from.</param>
    /// <param name="files">The files that it lists.</param>
    /// <param name="leftOut">Files that are left out, and why, a sentence each.</param>
    public static byte[] BytesOf(ExportSource source, IReadOnlyList<ExportedFile> files, IReadOnlyList<string> leftOut)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, JsonNumbers.Layout))
        {
            string study = source.Study.Plan?.StudyName ?? "study";
            json.WriteStartObject();
            json.WriteString("$schema", Profile);
            json.WriteString("name", Slug(study));
            json.WriteString(
                "title",
                source.Study.Plan?.Question is { Length: > 0 } question ? $"Study {study}: {question}" : $"Study {study}"
            );
            json.WriteString("description", Description(source, leftOut));
            json.WriteString(MakerProperty, Maker);
            json.WriteString("study", source.Identity?.Hash);
            json.WriteNumber("journal_lines", source.Lines.Count);
            json.WriteString("journal_head", source.Lines.Count == 0 ? Line.NoHash : source.Lines[^1].Hash);
            json.Parts("resources", files, file => Resource(json, file));
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private static string Description(ExportSource source, IReadOnlyList<string> leftOut) =>
        string.Join(
            ' ',
            (string[])
                [
                    ExportWords.PackageDescription,
                    source.Key is null ? ExportWords.KeyIsNotOpen : ExportWords.KeyIsOpen,
                    ExportWords.ApostropheGuardsFormulas,
                    .. leftOut.Select(why => $"Left out: {why}."),
                ]
        );

    private static void Resource(Utf8JsonWriter json, ExportedFile file)
    {
        json.WriteString("name", Path.GetFileNameWithoutExtension(file.File.Name));
        json.WriteString("path", file.File.Name);
        json.WriteString("description", file.File.Description);
        json.WriteString("format", Path.GetExtension(file.File.Name)[1..]);
        json.WriteString("mediatype", file.File.MediaType);
        json.WriteString("encoding", "utf-8");
        json.WriteNumber("bytes", file.Bytes.Length);
        json.WriteString("hash", $"sha256:{Convert.ToHexStringLower(SHA256.HashData(file.Bytes))}");
        if (file.File is ExportTable table)
        {
            json.WriteString("type", "table");
            json.Part("dialect", table, _ => Dialect(json));
            json.Part("schema", table, bound => TableSchemaJson.Write(json, bound));
        }
    }

    private static void Dialect(Utf8JsonWriter json)
    {
        json.WriteString("$schema", "https://datapackage.org/profiles/2.0/tabledialect.json");
        json.WriteString("delimiter", ",");
        json.WriteString("lineTerminator", "\r\n");
        json.WriteString("quoteChar", "\"");
        json.WriteBoolean("doubleQuote", true);
        json.WriteBoolean("header", true);
    }

    // letters, figures, '.', '_' and '-' only, so that it can be in an address
    private static string Slug(string study)
    {
        string slug = string.Concat(study.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '_' or '-' ? c : '-'));
        return slug.Any(char.IsAsciiLetterOrDigit) ? slug : "study";
    }
}

/// <summary>A table's columns, key and links as a Table Schema (datapackage.org, Table Schema 2.0).</summary>
internal static class TableSchemaJson
{
    private const string Profile = "https://datapackage.org/profiles/2.0/tableschema.json";

    /// <summary>Writes the schema into an open object.</summary>
    public static void Write(Utf8JsonWriter json, ExportTable table)
    {
        json.WriteString("$schema", Profile);
        json.Parts("fields", table.Fields, field => Field(json, field));
        json.Texts("missingValues", [""]);
        json.Texts("primaryKey", table.FullKey);
        if (LinksOf(table) is { Length: > 0 } links)
        {
            json.Parts("foreignKeys", links, link => Link(json, link));
        }
    }

    private static void Field(Utf8JsonWriter json, ExportField field)
    {
        json.WriteString("name", field.Name);
        json.WriteString("type", Word(field.Type));
        json.WriteString("description", field.Unit is null ? field.Description : $"{field.Description}; {field.Unit}");
        if (field.Unit is { } unit)
        {
            json.WriteString("unit", unit);
        }

        if (field.IsRequired || field.IsUnique || field.Words.Length > 0)
        {
            json.Part("constraints", field, bound => Constraints(json, bound));
        }
    }

    private static void Constraints(Utf8JsonWriter json, ExportField field)
    {
        if (field.IsRequired)
        {
            json.WriteBoolean("required", true);
        }

        if (field.IsUnique)
        {
            json.WriteBoolean("unique", true);
        }

        if (field.Words.Length > 0)
        {
            json.Texts("enum", field.Words);
        }
    }

    // every table names the study; the study itself names nothing
    private static TableLink[] LinksOf(ExportTable table) =>
        table.Table == ExportTable.StudyColumn
            ? []
            : [new TableLink(ExportTable.StudyColumn, ExportTable.StudyColumn, ExportTable.StudyColumn), .. table.Links];

    private static void Link(Utf8JsonWriter json, TableLink link)
    {
        bool isToStudy = link.Table == ExportTable.StudyColumn;
        json.Texts("fields", isToStudy ? [link.Field] : [ExportTable.StudyColumn, link.Field]);
        json.WriteStartObject("reference");
        json.WriteString("resource", link.Table);
        json.Texts("fields", isToStudy ? [link.OtherField] : [ExportTable.StudyColumn, link.OtherField]);
        json.WriteEndObject();
    }

    private static string Word(FieldType type) =>
        type switch
        {
            FieldType.Text => "string",
            FieldType.Count => "integer",
            FieldType.Number => "number",
            FieldType.YesNo => "boolean",
            _ => "datetime",
        };
}
