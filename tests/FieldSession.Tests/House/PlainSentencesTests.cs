using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// The program speaks as an engineer speaks aloud: everyday words, short sentences on screens, one name for one thing, no pointer into
/// nothing.
/// </summary>
[Collection(HouseRules.Name)]
public sealed partial class PlainSentencesTests(TheHouse house)
{
    // House rule: whoever reads a screen in a car reads no more at once.
    private const int MostWordsOnAScreen = 15;

    // Pages of documents, and the report and its tables, which are read at a desk.
    private static readonly ImmutableArray<string> ReadAtADesk = ["KeysWords", "/Reporting/", "/Exports/"];

    // Another word for a thing of docs/glossary.md, and the glossary's.
    private static readonly ImmutableDictionary<string, string> OtherNames = new Dictionary<string, string>
    {
        ["lap"] = "run",
        ["laps"] = "runs",
        ["password"] = "passphrase",
        ["baseline"] = "control",
        ["variant"] = "spec",
        ["variants"] = "specs",
        ["stage of the route"] = "segment",
        ["road section"] = "segment",
        ["navigator"] = "co-driver",
        ["passenger seat reader"] = "co-driver",
        ["unblinding"] = "reveal",
        ["unblind"] = "reveal",
        ["tolerance"] = "margin",
        ["significant"] = "shown",
        ["insignificant"] = "not shown",
    }.ToImmutableDictionary(StringComparer.OrdinalIgnoreCase);

    [Fact]
    public void The_program_uses_the_words_that_an_engineer_says_aloud() =>
        TheHouse.NoneOf(
            from source in house.Program
            from text in TextsIn(source)
            from Match word in Stilted().Matches(text.Words)
            select $"{text.Place}: '{word.Value}' in: {text.Words}",
            "is, needs, fix, expected, calculated, again, ready: not 'stands', 'bears', 'mend', 'let expect', 'reckon', 'anew', 'at hand'"
        );

    [Fact]
    public void Comments_and_names_use_them_too() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from line in source.Text.Split('\n').Index()
            let comment = CommentIn(line.Item)
            let names = string.Join(' ', Pieces().Matches(Member().Match(line.Item).Value).Select(piece => piece.Value))
            where Stilted().IsMatch(comment) || Stilted().IsMatch(names)
            select $"{source.Path}:{line.Index + 1}: {line.Item.Trim()}",
            "a comment and a name say it in everyday words"
        );

    [Fact]
    public void A_sentence_on_a_screen_has_at_most_fifteen_words() =>
        TheHouse.NoneOf(
            from source in house.Program
            from text in TextsIn(source)
            where
                text.Type.EndsWith("Words", StringComparison.Ordinal)
                && !ReadAtADesk.Any(part => $"{source.Folder}/{text.Type}".Contains(part, StringComparison.Ordinal))
            from sentence in SentenceEnd().Split(Quoted().Replace(text.Words, "X"))
            let words = Word().Count(sentence)
            where words > MostWordsOnAScreen
            select $"{text.Place}: {words} words: {sentence.Trim()}",
            $"a sentence on a screen has at most {MostWordsOnAScreen} words; what is in quotes counts as one"
        );

    [Fact]
    public void One_thing_has_one_name() =>
        TheHouse.NoneOf(
            from source in house.Program
            from text in TextsIn(source)
            where text.Type.EndsWith("Words", StringComparison.Ordinal)
            from other in OtherNames
            where Regex.IsMatch(text.Words, $@"\b{other.Key}\b", RegexOptions.IgnoreCase)
            select $"{text.Place}: '{other.Key}' is called '{other.Value}': {text.Words}",
            "a thing is called what docs/glossary.md calls it"
        );

    [Fact]
    public void A_command_or_a_topic_that_a_sentence_names_is_there()
    {
        ImmutableHashSet<string> commands = [.. CommandLine.Make(new Outside().World).Subcommands.Select(command => command.Name)];
        ImmutableHashSet<string> topics = [.. HelpCommand.Topics];
        (string Place, string Command, string Topic)[] named =
        [
            .. from source in house.Program
            from text in TextsIn(source)
            from Match call in Called().Matches(text.Words)
            select (text.Place, call.Groups[1].Value, call.Groups[2].Value),
        ];
        Assert.True(named.Length > 25, $"only {named.Length} commands are named");
        TheHouse.NoneOf(
            from one in named
            where !commands.Contains(one.Command) || (one.Command == "help" && one.Topic.Length > 0 && !topics.Contains(one.Topic))
            select $"{one.Place}: fieldsession {one.Command} {one.Topic}",
            "a sentence names a command of the program, or a topic of its help"
        );
    }

    private static IEnumerable<(string Place, string Words, string Type)> TextsIn(SourceFile source) =>
        from node in source.Tree.GetRoot().DescendantNodes(node => node is not (InterpolatedStringExpressionSyntax or AttributeSyntax))
        let words = TextOf(node)
        where words is not null
        select (source.Place(node), words, node.Ancestors().OfType<BaseTypeDeclarationSyntax>().LastOrDefault()?.Identifier.Text ?? "");

    // what is put in counts as one word
    private static string? TextOf(SyntaxNode node) =>
        node switch
        {
            LiteralExpressionSyntax { Token.Value: string text } literal when !literal.IsKind(SyntaxKind.Utf8StringLiteralExpression) =>
                text,
            InterpolatedStringExpressionSyntax text => string.Concat(
                text.Contents.Select(part => part is InterpolatedStringTextSyntax plain ? plain.TextToken.ValueText : "X")
            ),
            _ => null,
        };

    private static string CommentIn(string line)
    {
        string trimmed = line.TrimStart();
        return trimmed.StartsWith("//", StringComparison.Ordinal) ? trimmed : "";
    }

    [GeneratedRegex(
        @"\b(stands?|stood|bears?|bore|mend|mends|mended|mending|let expect|lets expect|reckon\w*|anew|at hand)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Stilted();

    [GeneratedRegex(@"(?<=\b(public|private|internal|protected)\b[^=(;]*)\b[A-Z]\w+(?=\s*[({=;])")]
    private static partial Regex Member();

    [GeneratedRegex("[A-Z][a-z]*")]
    private static partial Regex Pieces();

    [GeneratedRegex(@"(?<=[.;:!?])\s+|\n")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("'[^']*'")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"[\p{L}\p{N}][^\s]*")]
    private static partial Regex Word();

    [GeneratedRegex("'fieldsession ([a-z]+)(?: ([a-z-]+))?")]
    private static partial Regex Called();
}
