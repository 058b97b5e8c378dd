using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// What is said to people is in files of words, a few for each room, so that it can be read, weighed and translated in one
/// place. A sentence is a text of three words or more; faults of programming are not said to people.
/// </summary>
[Collection(HouseRules.Name)]
public sealed partial class SentencesTests(TheHouse house)
{
    private const int FewestWords = 3;

    private static readonly ImmutableHashSet<string> FaultsOfProgramming =
        ["ArgumentException", "ArgumentOutOfRangeException", "InvalidOperationException", "UnreachableException", "NotSupportedException"];

    // Lists of rows whose words are the row: a key, a column, a field of the plan, a limit, a command, a step of the scale.
    private static readonly ImmutableArray<string> Lists = [
        "Keys.cs", "KeyTable.cs", "Table.cs", "Columns.cs", "Fields.cs", "Limits.cs", "Command.cs", "RatingSteps.cs", "CompletionScripts.cs"];

    [Fact]
    public void Sentences_stand_in_files_of_words() => TheHouse.NoneOf(
        from source in house.Program
        where !IsOfWords(source)
        from node in source.Tree.GetRoot().DescendantNodes(Descends)
        where TextOf(node) is { } text && text.Contains(' ', StringComparison.Ordinal) && Word().Count(text) >= FewestWords
        select $"{source.Place(node)}: {node}",
        "what is said to people stands in a file of words of its room");

    private static bool IsOfWords(SourceFile source) =>
        source.Path.EndsWith("Words.cs", StringComparison.Ordinal) || Lists.Any(end => source.Path.EndsWith(end, StringComparison.Ordinal));

    private static bool Descends(SyntaxNode node) => node switch
    {
        InterpolatedStringExpressionSyntax or AttributeSyntax => false,
        ObjectCreationExpressionSyntax made => !FaultsOfProgramming.Contains(made.Type.ToString()),
        _ => true,
    };

    private static string? TextOf(SyntaxNode node) => node switch
    {
        LiteralExpressionSyntax { Token.Value: string text } literal when !literal.IsKind(SyntaxKind.Utf8StringLiteralExpression) => text,
        InterpolatedStringExpressionSyntax text => string.Join('_', text.Contents.OfType<InterpolatedStringTextSyntax>().Select(part => part.TextToken.ValueText)),
        _ => null,
    };

    [GeneratedRegex(@"(?<![\w/.-])\p{L}['\p{L}]+(?![\w/-])")]
    private static partial Regex Word();
}
