using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>A paragraph or an item of a list, as one line of words.</summary>
/// <param name="Line">Its first line in the document, from 1.</param>
/// <param name="Words">What it says.</param>
internal sealed record ProseParagraph(int Line, string Words);

/// <summary>
/// What somebody wrote in a document for somebody else to read: its paragraphs and lists. Left out are headings, tables, code, quotations
/// of others (lines that begin with &gt;) and pictures.
/// </summary>
internal sealed partial class Prose(string file)
{
    private readonly ImmutableArray<string> _lines = [.. File.ReadAllLines(Path.Combine(Repository.Root, file))];

    /// <summary>The document, from the top of the repository.</summary>
    public string Name { get; } = file;

    /// <summary>Its headings, without their marks.</summary>
    public ImmutableArray<string> Headings =>
        [.. Written().Where(line => line.Text.StartsWith('#')).Select(line => line.Text.TrimStart('#').Trim())];

    /// <summary>Its lines with their numbers, without code.</summary>
    public IEnumerable<(int Line, string Text)> Written()
    {
        bool inCode = false;
        foreach ((int index, string line) in _lines.Index())
        {
            bool isFence = line.StartsWith("```", StringComparison.Ordinal);
            inCode ^= isFence;
            if (!inCode && !isFence)
            {
                yield return (index + 1, line);
            }
        }
    }

    /// <summary>Its paragraphs and the items of its lists, in order.</summary>
    public ImmutableArray<ProseParagraph> Paragraphs
    {
        get
        {
            List<ProseParagraph> all = [];
            bool goesOn = false;
            foreach ((int line, string text) in Written())
            {
                string words = text.Trim();
                if (IsNoProse(words) || (!goesOn && text.StartsWith("    ", StringComparison.Ordinal)))
                {
                    goesOn = false;
                }
                else if (goesOn && !Item().IsMatch(words))
                {
                    all[^1] = all[^1] with { Words = $"{all[^1].Words} {words}" };
                }
                else
                {
                    all.Add(new ProseParagraph(line, Item().Replace(words, "")));
                    goesOn = true;
                }
            }

            return [.. all];
        }
    }

    /// <summary>Its sentences: a call, a quotation or a source with its year counts as one word at most.</summary>
    public IEnumerable<ProseParagraph> Sentences =>
        from paragraph in Paragraphs
        from sentence in SentenceEnd().Split(Plain(paragraph.Words))
        select new ProseParagraph(paragraph.Line, sentence);

    /// <summary>How many words a sentence has. Symbols and signs of a formula are none.</summary>
    public static int WordsIn(string sentence) => Between().Split(sentence).Count(word => Word().IsMatch(word));

    /// <summary>Text without what is quoted: calls and what the program says.</summary>
    public static string Plain(string text)
    {
        string plain = Link().Replace(text, "$1");
        plain = Code().Replace(plain, "Code");
        plain = Quotation().Replace(plain, "Quoted");
        return Source().Replace(plain, "").Replace("*", "", StringComparison.Ordinal);
    }

    private static bool IsNoProse(string words) =>
        words.Length == 0
        || "|#>".Contains(words[0], StringComparison.Ordinal)
        || words.StartsWith("<!--", StringComparison.Ordinal)
        || words.StartsWith("![", StringComparison.Ordinal);

    [GeneratedRegex(@"^([-*]|\d+\.) +")]
    private static partial Regex Item();

    [GeneratedRegex(@"(?<=[.!?]['"")]*)\s+(?=['""(\[]*(?:[A-Z0-9<>.]|docs/|src/|tests/))")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"[\s/]+")]
    private static partial Regex Between();

    [GeneratedRegex(@"^['""(]*([A-Za-z][\w'’.-]*\w|[aAI]|\d[\d.,]*)['"").,;:!?]*$")]
    private static partial Regex Word();

    [GeneratedRegex(@"!?\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();

    [GeneratedRegex("`[^`]*`")]
    private static partial Regex Code();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quotation();

    [GeneratedRegex(@"\([^()]*(\([^()]*\)[^()]*)*\b(1[89]|20)\d\d\b[^()]*\)")]
    private static partial Regex Source();
}
