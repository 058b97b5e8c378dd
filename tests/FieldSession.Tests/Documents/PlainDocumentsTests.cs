using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>
/// Every document says for whom it is and what they can do after it, in sentences that can be read aloud, and points nowhere in vain.
/// </summary>
public sealed partial class PlainDocumentsTests
{
    // House rule: a sentence that is longer is two.
    private const int MostWords = 30;

    // Whom each document is for, as its first words say.
    private static readonly ImmutableSortedDictionary<string, string> Readers = new Dictionary<string, string>
    {
        ["README.md"] = "For a crew that compares tyre specs on public roads",
        ["DEVELOPERS.md"] = "For whoever changes the program",
        ["docs/architecture.md"] = "For whoever changes the program",
        ["docs/benchmarks.md"] = "For whoever asks how fast the program is",
        ["docs/blind.md"] = "For the custodian",
        ["docs/checks.md"] = "For whoever writes the plan",
        ["docs/decisions.md"] = "For whoever changes the program",
        ["docs/entry-lines.md"] = "For the co-driver",
        ["docs/files.md"] = "For whoever reads the program's files with another program",
        ["docs/first-day.md"] = "For anybody who has never used the program",
        ["docs/formulas.md"] = "For the statistician",
        ["docs/glossary.md"] = "For everybody who reads, writes or changes anything here",
        ["docs/handbook.md"] = "For the crew",
        ["docs/install.md"] = "For whoever puts the program on a laptop",
        ["docs/keys.md"] = "For the co-driver",
        ["docs/keystrokes.md"] = "For whoever asks how much typing a day costs",
        ["docs/licences.md"] = "For whoever passes the program on",
        ["docs/method.md"] = "For the crew, and for anybody who reads its report",
        ["docs/own-day.md"] = "For a crew that has tried the demo",
        ["docs/recordings.md"] = "For the crew that takes a recorder along",
        ["docs/reliability.md"] = "For whoever has to trust the program with a day's work",
        ["docs/report.md"] = "For whoever writes, reads or hands over a report",
        ["docs/slips.md"] = "For whoever asks what typing errors do to a day",
        ["docs/team.md"] = "For crews with two cars, several days or several laptops",
        ["docs/why-blind.md"] = "For anybody who will drive such a day",
        ["docs/words.md"] = "For whoever types at the laptop",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static ImmutableArray<Prose> Documents =>
        [
            .. Directory
                .GetFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories)
                .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
                .Concat(["README.md", "DEVELOPERS.md"])
                .Order(StringComparer.Ordinal)
                .Select(file => new Prose(file)),
        ];

    [Fact]
    public void Every_document_begins_with_whom_it_is_for_and_what_they_can_do_after_it()
    {
        Assert.Equal(Readers.Keys.Order(StringComparer.Ordinal), Documents.Select(document => document.Name));
        TheHouse.NoneOf(
            from document in Documents
            let opening = document.Paragraphs[0].Words
            where !opening.StartsWith(Readers[document.Name], StringComparison.Ordinal) || !Able().IsMatch(opening)
            select $"{document.Name}: '{Readers[document.Name]}' begins its first paragraph, which says what 'you can' do: {opening}",
            "a document says first who needs it and what they can do after it"
        );
    }

    [Fact]
    public void No_sentence_of_a_document_has_more_than_thirty_words() =>
        TheHouse.NoneOf(
            from document in Documents
            from sentence in document.Sentences
            let words = Prose.WordsIn(sentence.Words)
            where words > MostWords
            select $"{document.Name}:{sentence.Line}: {words} words: {sentence.Words}",
            $"a sentence has at most {MostWords} words"
        );

    [Fact]
    public void Documents_use_the_words_that_an_engineer_says_aloud() =>
        TheHouse.NoneOf(
            from document in Documents
            from line in document.Written()
            where !line.Text.StartsWith('>') && !line.Text.StartsWith("    ", StringComparison.Ordinal)
            from Match word in Stilted().Matches(Prose.Plain(line.Text))
            select $"{document.Name}:{line.Line}: '{word.Value}' in: {line.Text.Trim()}",
            "is, needs, fix, expected, calculated, again, ready: not 'stands', 'bears', 'mend', 'reckon', 'anew', 'at hand'"
        );

    [Fact]
    public void Every_link_of_a_document_leads_to_a_file_or_a_heading() =>
        TheHouse.NoneOf(
            from document in Documents
            from line in document.Written()
            from Match link in RelativeLink().Matches(line.Text)
            where !Leads(document.Name, link.Groups[1].Value, link.Groups[2].Value)
            select $"{document.Name}:{line.Line}: {link.Value}",
            "a link leads somewhere"
        );

    [Fact]
    public void Every_section_that_a_document_or_a_comment_names_is_a_heading_of_that_document()
    {
        Dictionary<string, ImmutableArray<string>> headings = Documents.ToDictionary(
            document => document.Name,
            document => document.Headings
        );
        (string Place, string Document, string Section)[] pointers = [.. Named()];
        Assert.True(pointers.Length > 30, $"only {pointers.Length} sections are named");
        TheHouse.NoneOf(
            from pointer in pointers
            where !headings.TryGetValue(pointer.Document, out ImmutableArray<string> there) || !there.Contains(pointer.Section)
            select $"{pointer.Place}: {pointer.Document}, \"{pointer.Section}\"",
            "a section that is named is there"
        );
    }

    [Theory]
    [InlineData("A run is one number, `compare DAY` says so (F. Yates, 1936).", 8)]
    [InlineData("It is a x b = 3 dB at most.", 7)]
    public void Words_are_counted_as_somebody_reads_them_aloud(string sentence, int words) =>
        Assert.Equal(words, Prose.WordsIn(Prose.Plain(sentence)));

    private static bool Leads(string from, string path, string anchor)
    {
        string file =
            path.Length == 0
                ? from
                : Path.GetRelativePath(Repository.Root, Path.Combine(Repository.Root, Path.GetDirectoryName(from)!, path))
                    .Replace('\\', '/');
        bool lies = Path.Exists(Path.Combine(Repository.Root, file));
        return lies && (anchor.Length == 0 || new Prose(file).Headings.Any(heading => AsAnchor(heading) == anchor));
    }

    // As the usual readers of Markdown make it: lower case, blanks to hyphens, no other signs.
    private static string AsAnchor(string heading) => NotInAnchor().Replace(heading.ToLowerInvariant(), "").Replace(' ', '-');

    private static IEnumerable<(string Place, string Document, string Section)> Named() =>
        from path in Documents.Select(document => document.Name).Concat(Sources())
        let text = CommentMark().Replace(File.ReadAllText(Path.Combine(Repository.Root, path)), " ")
        from Match pointer in Section().Matches(text)
        from Capture section in pointer.Groups[2].Captures
        select (path, $"docs/{pointer.Groups[1].Value}", section.Value);

    private static IEnumerable<string> Sources() =>
        from folder in new[] { "src", "tests" }
        from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories)
        select Path.GetRelativePath(Repository.Root, file).Replace('\\', '/');

    [GeneratedRegex(@"\byou( can|'ll be able to| will be able to)\b|\bcan you\b", RegexOptions.IgnoreCase)]
    private static partial Regex Able();

    [GeneratedRegex(@"\b(stand|stands|stood|bear|bears|bore|mend|mends|mended|mending|reckon\w*|anew|at hand)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Stilted();

    [GeneratedRegex(@"\]\((?!https?:)([^)#\s]*)#?([^)\s]*)\)")]
    private static partial Regex RelativeLink();

    [GeneratedRegex(@"[^\w -]")]
    private static partial Regex NotInAnchor();

    [GeneratedRegex(@"\s*\n\s*(///|//)?\s*")]
    private static partial Regex CommentMark();

    [GeneratedRegex("docs/([a-z-]+\\.md)(?:,(?: and)? \"([^\"]+)\")+")]
    private static partial Regex Section();
}
