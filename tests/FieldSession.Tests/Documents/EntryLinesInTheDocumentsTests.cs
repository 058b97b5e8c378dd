using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>Every entry line that a page gives as an example is one that the program understands.</summary>
public sealed partial class EntryLinesInTheDocumentsTests
{
    private static readonly ImmutableArray<string> Pages =
    [
        "docs/handbook.md",
        "docs/entry-lines.md",
        "docs/blind.md",
        "docs/checks.md",
        "docs/files.md",
        "docs/team.md",
        "docs/first-day.md",
    ];

    // Shapes, not examples: what is there is to be filled in.
    private static readonly ImmutableArray<string> Shapes = ["WHAT=VALUE", "FL FR", "= ", "class="];

    [Fact]
    public void Every_example_of_an_entry_line_is_understood()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt").Typed("quillmere/energy.txt");
        (string Page, string Line)[] examples = [.. Pages.SelectMany(page => Examples(page).Select(line => (page, line)))];
        Assert.True(examples.Length > 25, $"only {examples.Length} examples were found");
        TheHouse.NoneOf(
            from example in examples
            let parsed = EntryText.Parse(example.Line, day.Book.Study)
            where parsed.Entry is null
            select $"{example.Page}: {example.Line}: {parsed.Objection}",
            "an example of an entry line is one that the program understands"
        );
    }

    private static IEnumerable<string> Examples(string page)
    {
        string text = File.ReadAllText(Path.Combine(Repository.Root, page));
        return Spans()
            .Matches(text)
            .Select(match => match.Groups[1].Value.TrimStart(':'))
            .Concat(Indented().Matches(text).Select(match => match.Groups[1].Value))
            .Where(line => Verb().IsMatch(line) && !Shapes.Any(shape => $"{line} ".Contains(shape, StringComparison.Ordinal)))
            .Distinct();
    }

    [GeneratedRegex("`([^`\n]+)`")]
    private static partial Regex Spans();

    [GeneratedRegex(@"(?m)^    (leg [^\n]+?)(?:   +[^\n]*)?$")]
    private static partial Regex Indented();

    [GeneratedRegex(
        "^(calibration (before|after)|weather|trials|choose|choice|leg|rerun|override|rate|ratings|extra|run(?= "
            + "[0-9])|predict|amend|check|seg) [^ ]"
    )]
    private static partial Regex Verb();
}
