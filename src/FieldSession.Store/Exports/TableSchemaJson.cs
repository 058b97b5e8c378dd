using System.Text.Json;

namespace FieldSession.Store.Exports;

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
    private static TableLink[] LinksOf(ExportTable table) => table.Table == ExportTable.StudyColumn
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

    private static string Word(FieldType type) => type switch
    {
        FieldType.Text => "string",
        FieldType.Count => "integer",
        FieldType.Number => "number",
        FieldType.YesNo => "boolean",
        _ => "datetime",
    };
}
