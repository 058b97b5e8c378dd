using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// What is said to people is in types of words, so that it can be read and weighed in one place. A sentence is a text of three words or
/// more; faults of programming are not said to people.
/// </summary>
[Collection(HouseRules.Name)]
public sealed partial class SentencesTests(TheHouse house)
{
    private const int FewestWords = 3;

    private static readonly ImmutableHashSet<string> FaultsOfProgramming =
    [
        "ArgumentException",
        "ArgumentOutOfRangeException",
        "InvalidOperationException",
        "UnreachableException",
        "NotSupportedException",
    ];

    // Words, and lists of rows whose words are the row: a key, a column, a field of the plan, a limit, a command, a step of the scale.
    private static readonly ImmutableArray<string> MaySpeak =
    [
        "Words",
        "Keys",
        "Table",
        "Columns",
        "Fields",
        "Limits",
        "Command",
        "RatingSteps",
        "CompletionScripts",
    ];

    [Fact]
    public void Sentences_are_in_types_of_words() =>
        TheHouse.NoneOf(
            from source in house.Program
            from node in source.Tree.GetRoot().DescendantNodes(Descends)
            where !SourceFile.IsInTypeNamed(node, MaySpeak)
            where TextOf(node) is { } text && text.Contains(' ', StringComparison.Ordinal) && Word().Count(text) >= FewestWords
            select $"{source.Place(node)}: {node}",
            "what is said to people is in a type of words, beside what says it"
        );

    private static bool Descends(SyntaxNode node) =>
        node switch
        {
            InterpolatedStringExpressionSyntax or AttributeSyntax => false,
            ObjectCreationExpressionSyntax made => !FaultsOfProgramming.Contains(made.Type.ToString()),
            _ => true,
        };

    private static string? TextOf(SyntaxNode node) =>
        node switch
        {
            LiteralExpressionSyntax { Token.Value: string text } literal when !literal.IsKind(SyntaxKind.Utf8StringLiteralExpression) =>
                text,
            InterpolatedStringExpressionSyntax text => string.Join(
                '_',
                text.Contents.OfType<InterpolatedStringTextSyntax>().Select(part => part.TextToken.ValueText)
            ),
            _ => null,
        };

    [GeneratedRegex(@"(?<![\w/.-])\p{L}['\p{L}]+(?![\w/-])")]
    private static partial Regex Word();
}
