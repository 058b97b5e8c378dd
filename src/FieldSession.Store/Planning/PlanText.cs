using System.Globalization;
using System.Text;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>
/// Changes single words of a plan's text and leaves everything else as somebody wrote it: remarks, blank lines, the order of lines.
/// </summary>
public static class PlanText
{
    /// <summary>The text with a word of the first level set to a value; a word that is not there yet gets a line of its own.</summary>
    /// <param name="toml">Text of a plan that can be read.</param>
    /// <param name="name">The word, such as "order".</param>
    /// <param name="value">The value as TOML, such as <c>"R 1 R"</c> in quotes; null takes the word away with its line.</param>
    public static string With(string toml, string name, string? value)
    {
        ArgumentNullException.ThrowIfNull(toml);
        ArgumentNullException.ThrowIfNull(name);
        DocumentSyntax document = Read(toml);
        return PairOf(document, name) is { } pair ? Changed(toml, pair, value)
            : value is null ? toml
            : WithNewLine(toml, document, $"{name} = {value}\n");
    }

    /// <summary>The text with a word of a table set to a value; the table's heading is written where there is none.</summary>
    /// <param name="toml">Text of a plan that can be read.</param>
    /// <param name="table">The table, such as "limits" or "limits.reasons".</param>
    /// <param name="name">The word in it.</param>
    /// <param name="value">The value as TOML; null takes the word away with its line.</param>
    public static string With(string toml, string table, string name, string? value)
    {
        ArgumentNullException.ThrowIfNull(toml);
        DocumentSyntax document = Read(toml);
        if (PairOf(document, $"{table}.{name}") is { } pair)
        {
            return Changed(toml, pair, value);
        }

        return value is null ? toml : WithinTable(toml, document, table, name, value);
    }

    /// <summary>A text as TOML writes it.</summary>
    public static string Quoted(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder quoted = new("\"");
        foreach (char letter in text)
        {
            quoted.Append(
                letter switch
                {
                    '"' => "\\\"",
                    '\\' => "\\\\",
                    _ => char.IsControl(letter) ? $"\\u{(int)letter:x4}" : letter.ToString(),
                }
            );
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>A list of texts as TOML writes it.</summary>
    public static string Listed(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(Quoted))}]";

    /// <summary>A number as TOML writes it.</summary>
    public static string Number(double number)
    {
        string written = number.ToString("R", CultureInfo.InvariantCulture);
        return written.Contains('.', StringComparison.Ordinal) || written.Contains('E', StringComparison.Ordinal)
            ? written
            : written + ".0";
    }

    private static DocumentSyntax Read(string toml) => SyntaxParser.Parse(toml, PlanFile.Plan, true);

    private static IEnumerable<(string Name, KeyValueSyntax Pair)> Pairs(DocumentSyntax document) =>
        [
            .. document.KeyValues.Select(pair => (PlanToml.NameOf(pair), pair)),
            .. from table in document.Tables
            where table is TableSyntax
            from pair in table.Items
            select ($"{PlanToml.NameOf(table)}.{PlanToml.NameOf(pair)}", pair),
        ];

    private static KeyValueSyntax? PairOf(DocumentSyntax document, string name) =>
        Pairs(document).FirstOrDefault(pair => pair.Name == name && pair.Pair.Value is not null).Pair;

    private static string Changed(string toml, KeyValueSyntax pair, string? value)
    {
        SourceSpan written = pair.Value!.Span;
        return value is null
            ? WithoutLines(toml, pair.Span.Start.Offset, written.End.Offset)
            : string.Concat(toml.AsSpan(0, written.Start.Offset), value, toml.AsSpan(written.End.Offset + 1));
    }

    // a table that is begun with dotted words can't have a heading too
    private static string WithinTable(string toml, DocumentSyntax document, string table, string name, string value)
    {
        if (document.Tables.FirstOrDefault(one => one is TableSyntax && PlanToml.NameOf(one) == table) is { } found)
        {
            int last = found.Items.LastOrDefault()?.Value?.Span.End.Offset ?? found.Name!.Span.End.Offset;
            return InLineAfter(toml, last, $"{name} = {value}\n");
        }

        (string dotted, KeyValueSyntax? sibling) = Pairs(document)
            .LastOrDefault(pair => pair.Name.StartsWith($"{table}.", StringComparison.Ordinal) && IsDotted(pair.Pair, pair.Name, table));
        if (sibling?.Value is { } beside)
        {
            string written = PlanToml.NameOf(sibling);
            string prefix = written[..(written.Length - (dotted.Length - table.Length - 1))];
            return InLineAfter(toml, beside.Span.End.Offset, $"{prefix}{name} = {value}\n");
        }

        string gap =
            toml.Length == 0 || toml.EndsWith("\n\n", StringComparison.Ordinal) ? ""
            : toml.EndsWith('\n') ? "\n"
            : "\n\n";
        return $"{toml}{gap}[{table}]\n{name} = {value}\n";
    }

    // "reasons.x" in [limits], or "limits.x" at the first level: the written name reaches into the table itself
    private static bool IsDotted(KeyValueSyntax pair, string name, string table) =>
        PlanToml.NameOf(pair).Length > name.Length - table.Length - 1;

    private static string InLineAfter(string toml, int offset, string line)
    {
        int newLine = toml.IndexOf('\n', offset);
        return newLine < 0 ? $"{toml}\n{line}" : string.Concat(toml.AsSpan(0, newLine + 1), line, toml.AsSpan(newLine + 1));
    }

    // a word of the first level has to be before the first table
    private static string WithNewLine(string toml, DocumentSyntax document, string line)
    {
        TableSyntaxBase? table = document.Tables.FirstOrDefault();
        int before = table is null ? toml.Length : StartOfLine(toml, table.Span.Start.Offset);
        string gap = before > 0 && toml[before - 1] != '\n' ? "\n" : "";
        return string.Concat(toml.AsSpan(0, before), gap + line, toml.AsSpan(before));
    }

    private static string WithoutLines(string toml, int start, int end)
    {
        int newLine = toml.IndexOf('\n', end);
        return string.Concat(toml.AsSpan(0, StartOfLine(toml, start)), newLine < 0 ? "" : toml.AsSpan(newLine + 1));
    }

    private static int StartOfLine(string toml, int offset) => offset == 0 ? 0 : toml.LastIndexOf('\n', offset - 1) + 1;
}
