using System.Globalization;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>Reads TOML (toml.io, version 1) into words with their places.</summary>
internal static class PlanToml
{
    /// <summary>The words; null with troubles where the text is no TOML.</summary>
    public static PlanWords? Parse(string text, Troubles troubles)
    {
        DocumentSyntax document;
        try
        {
            document = SyntaxParser.Parse(text, PlanFile.Plan, true);
        }
        catch (TomlException)
        {
            troubles.Refuse(PlanFile.Plan, null, null, PlanFolderWords.NestedTooDeep, PlanFolderWords.WriteLessDeep);
            return null;
        }
        catch (ArgumentOutOfRangeException)
        {
            // Tomlyn 2.10.2 throws this where the file ends behind a backslash in a text, and can't say in which line
            troubles.Refuse(PlanFile.Plan, text.TrimEnd().Count('\n') + 1, null, PlanFolderWords.TextDoesNotEnd, PlanFolderWords.LineForm);
            return null;
        }

        foreach (DiagnosticMessage wrong in document.Diagnostics.Where(wrong => wrong.Kind == DiagnosticMessageKind.Error))
        {
            troubles.Refuse(
                PlanFile.Plan,
                wrong.Span.Start.Line + 1,
                (wrong.Span.Start.Column + 1).ToString(CultureInfo.InvariantCulture),
                wrong.Message,
                PlanFolderWords.LineForm
            );
        }

        return document.HasErrors ? null : WordsOf(document);
    }

    /// <summary>The words that one line makes.</summary>
    public static IEnumerable<PlanWord> WordsOf(string table, KeyValueSyntax pair) =>
        pair.Key is { } key && pair.Value is { } value ? [PlanWord.Of(table + NameOf(key), value)] : [];

    /// <summary>The name of a word as it is written, dots and all.</summary>
    public static string NameOf(KeyValueSyntax pair) => pair.Key is { } key ? NameOf(key) : "";

    /// <summary>The name of a table.</summary>
    public static string NameOf(TableSyntaxBase table) => table.Name is { } key ? NameOf(key) : "";

    private static PlanWords WordsOf(DocumentSyntax document)
    {
        List<PlanWord> words = [.. document.KeyValues.SelectMany(pair => WordsOf("", pair))];
        List<PlanTable> repeated = [];
        foreach (TableSyntaxBase table in document.Tables)
        {
            string name = NameOf(table);
            if (table is TableArraySyntax)
            {
                repeated.Add(new PlanTable(name, table.Span.Start.Line + 1, [.. table.Items.SelectMany(pair => WordsOf("", pair))]));
            }
            else
            {
                words.AddRange(table.Items.SelectMany(pair => WordsOf($"{name}.", pair)));
            }
        }

        return new PlanWords(words, repeated);
    }

    private static string NameOf(KeySyntax key) => string.Join('.', key.DotKeys.Select(dot => dot.Key).Prepend(key.Key).Select(NameOf));

    private static string NameOf(BareKeyOrStringValueSyntax? part) =>
        part switch
        {
            BareKeySyntax bare => bare.Key?.Text ?? "",
            StringValueSyntax quoted => quoted.Value ?? "",
            _ => "",
        };
}
