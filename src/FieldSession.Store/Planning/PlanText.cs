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
        DocumentSyntax document = SyntaxParser.Parse(toml, PlanFile.Plan, true);
        foreach (KeyValueSyntax pair in document.KeyValues)
        {
            if (pair.Key?.ToString().Trim().Trim('"', '\'') == name && pair.Value is { } written)
            {
                return value is null
                    ? WithoutLines(toml, pair.Span.Start.Offset, written.Span.End.Offset)
                    : string.Concat(toml.AsSpan(0, written.Span.Start.Offset), value, toml.AsSpan(written.Span.End.Offset + 1));
            }
        }

        return value is null ? toml : WithNewLine(toml, document, $"{name} = {value}\n");
    }

    /// <summary>A text as TOML writes it.</summary>
    public static string Quoted(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder quoted = new("\"");
        foreach (char letter in text)
        {
            quoted.Append(letter switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                _ => char.IsControl(letter) ? $"\\u{(int)letter:x4}" : letter.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>A list of texts as TOML writes it.</summary>
    public static string Listed(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(Quoted))}]";

    /// <summary>A number as TOML writes it.</summary>
    public static string Number(double number)
    {
        string written = number.ToString("R", CultureInfo.InvariantCulture);
        return written.Contains('.', StringComparison.Ordinal) || written.Contains('E', StringComparison.Ordinal) ? written : written + ".0";
    }

    // a word of the first level has to stand before the first table
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
