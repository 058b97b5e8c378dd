using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

// The rules are those of the published standard, version 2.0: https://datapackage.org/standard/data-package/, .../data-resource/,
// .../table-schema/ (chapters Properties, Field Types, Field Constraints).
public sealed class DataPackageTests
{
    private static Dictionary<string, string> TypesWithConstraints =>
        new()
        {
            ["string"] = "required unique enum minLength maxLength pattern",
            ["integer"] = "required unique enum minimum maximum exclusiveMinimum exclusiveMaximum",
            ["number"] = "required unique enum minimum maximum exclusiveMinimum exclusiveMaximum",
            ["boolean"] = "required unique enum",
            ["datetime"] = "required unique enum minimum maximum exclusiveMinimum exclusiveMaximum",
        };

    [Fact]
    public void The_descriptor_of_the_demo_day_is_the_approved_one()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        Golden.Approve(
            "tests/FieldSession.Tests/Exports/demo-datapackage.json",
            ExportedDay.WithoutHashes(exported.Text("datapackage.json"))
        );
    }

    [Fact]
    public void The_descriptor_keeps_the_rules_of_the_standard()
    {
        using ExportedDay exported = new(Revealed());
        using JsonDocument package = Descriptor(exported);
        JsonElement[] resources = [.. package.RootElement.GetProperty("resources").EnumerateArray()];
        string[] names = [.. resources.Select(resource => Text(resource, "name"))];
        Assert.NotEmpty(resources);
        Assert.Equal(names.Distinct(), names);
        Assert.Matches("^[-a-z0-9._/]+$", Text(package.RootElement, "name"));
        foreach (JsonElement resource in resources)
        {
            Assert.Matches(@"^[^./~\\][^\\]*$", Text(resource, "path"));
            Assert.False(resource.TryGetProperty("data", out _));
            Assert.Equal("utf-8", Text(resource, "encoding"));
            byte[] bytes = File.ReadAllBytes(exported.Path(Text(resource, "path")));
            Assert.Equal(bytes.Length, resource.GetProperty("bytes").GetInt32());
            Assert.Equal("sha256:" + Convert.ToHexStringLower(SHA256.HashData(bytes)), Text(resource, "hash"));
            if (Text(resource, "path").EndsWith(".csv", StringComparison.Ordinal))
            {
                Assert.Equal("table", Text(resource, "type"));
                KeepsTableSchema(resource.GetProperty("schema"), names);
            }
        }
    }

    [Fact]
    public void Every_file_is_described_and_every_file_described_is_there()
    {
        using ExportedDay exported = new(Revealed());
        using JsonDocument package = Descriptor(exported);
        IEnumerable<string> paths = package
            .RootElement.GetProperty("resources")
            .EnumerateArray()
            .Select(resource => Text(resource, "path"));
        Assert.Equal(exported.Names, paths.Append("datapackage.json").Order(StringComparer.Ordinal));
        Assert.Equal(exported.Day.Book.HeadHash, Text(package.RootElement, "journal_head"));
    }

    [Fact]
    public void Every_table_holds_what_its_schema_says()
    {
        foreach (ADay day in (ADay[])[ExportedDay.Demo(), ExportedDay.Untidy(), Revealed()])
        {
            using ExportedDay exported = new(day);
            using JsonDocument package = Descriptor(exported);
            JsonElement[] tables =
            [
                .. package
                    .RootElement.GetProperty("resources")
                    .EnumerateArray()
                    .Where(resource => resource.TryGetProperty("schema", out _)),
            ];
            Dictionary<string, List<Dictionary<string, string>>> rows = tables.ToDictionary(
                table => Text(table, "name"),
                table => exported.Rows(Text(table, "name"))
            );
            foreach (JsonElement table in tables)
            {
                HoldsSchema(table, exported, rows);
            }
        }
    }

    private static void KeepsTableSchema(JsonElement schema, string[] resources)
    {
        JsonElement[] fields = [.. schema.GetProperty("fields").EnumerateArray()];
        string[] names = [.. fields.Select(field => Text(field, "name"))];
        Assert.Equal(names.Distinct(), names);
        Assert.Equal([""], Texts(schema.GetProperty("missingValues")));
        Assert.NotEmpty(Texts(schema.GetProperty("primaryKey")));
        Assert.Subset(names.ToHashSet(), Texts(schema.GetProperty("primaryKey")).ToHashSet());
        foreach (JsonElement field in fields)
        {
            Assert.NotEmpty(Text(field, "description"));
            string[] allowed = TypesWithConstraints[Text(field, "type")].Split(' ');
            if (field.TryGetProperty("constraints", out JsonElement constraints))
            {
                Assert.Subset(allowed.ToHashSet(), constraints.EnumerateObject().Select(constraint => constraint.Name).ToHashSet());
            }
        }

        if (schema.TryGetProperty("foreignKeys", out JsonElement links))
        {
            Assert.All(
                links.EnumerateArray(),
                link =>
                {
                    Assert.Subset(names.ToHashSet(), Texts(link.GetProperty("fields")).ToHashSet());
                    Assert.Contains(Text(link.GetProperty("reference"), "resource"), resources);
                    Assert.Equal(
                        link.GetProperty("fields").GetArrayLength(),
                        link.GetProperty("reference").GetProperty("fields").GetArrayLength()
                    );
                }
            );
        }
    }

    private static void HoldsSchema(JsonElement table, ExportedDay exported, Dictionary<string, List<Dictionary<string, string>>> all)
    {
        string name = Text(table, "name");
        JsonElement schema = table.GetProperty("schema");
        string[] fields = [.. schema.GetProperty("fields").EnumerateArray().Select(field => Text(field, "name"))];
        Assert.Equal(fields, Rfc4180.Read(exported.Text(Text(table, "path")))[0]);
        string[] keys = [.. all[name].Select(row => string.Join('|', Texts(schema.GetProperty("primaryKey")).Select(field => row[field])))];
        Assert.Equal(keys.Distinct(), keys);
        foreach (JsonElement field in schema.GetProperty("fields").EnumerateArray())
        {
            Assert.All(
                all[name],
                row => Assert.True(Fits(row[Text(field, "name")], field), $"{name}: {Text(field, "name")} '{row[Text(field, "name")]}'")
            );
        }

        foreach (JsonElement link in schema.TryGetProperty("foreignKeys", out JsonElement links) ? links.EnumerateArray().ToArray() : [])
        {
            JsonElement there = link.GetProperty("reference");
            HashSet<string> known = [.. all[Text(there, "resource")].Select(row => row[Texts(there.GetProperty("fields"))[0]]), ""];
            Assert.All(all[name], row => Assert.Contains(row[Texts(link.GetProperty("fields"))[0]], known));
        }
    }

    private static bool Fits(string cell, JsonElement field)
    {
        JsonElement constraints = field.TryGetProperty("constraints", out JsonElement found) ? found : JsonDocument.Parse("{}").RootElement;
        if (cell.Length == 0)
        {
            return !constraints.TryGetProperty("required", out _);
        }

        bool isAllowed = !constraints.TryGetProperty("enum", out JsonElement words) || Texts(words).Contains(cell);
        return isAllowed
            && Text(field, "type") switch
            {
                "integer" => int.TryParse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _),
                "number" => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
                    && double.IsFinite(number),
                "boolean" => cell is "true" or "false",
                "datetime" => DateTimeOffset.TryParseExact(
                    cell,
                    "yyyy-MM-dd'T'HH:mm:ss.FFF'Z'",
                    CultureInfo.InvariantCulture,
                    DateTimeStyles.AssumeUniversal,
                    out _
                ),
                _ => true,
            };
    }

    private static ADay Revealed()
    {
        ADay day = ExportedDay
            .Demo()
            .Typed("predict Tam feature=862 sure=3", "predict Ro feature=417 sure=5 quieter=862 pay=yes because=seen");
        Assert.True(day.Book.Write(ExportedDay.Opened(day)).IsWritten);
        return day.Typed("; after the reveal");
    }

    private static JsonDocument Descriptor(ExportedDay exported) => JsonDocument.Parse(exported.Text("datapackage.json"));

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static string[] Texts(JsonElement array) => [.. array.EnumerateArray().Select(text => text.GetString()!)];
}
