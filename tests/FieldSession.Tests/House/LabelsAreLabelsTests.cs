using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// What is said to people is for people: no rule compares it, searches it or cuts it, or rewording a sentence would change what the
/// program does. No rule asks for a namespace or the name of a type either: folders may be renamed.
/// </summary>
[Collection(HouseRules.Name)]
public sealed class LabelsAreLabelsTests(TheHouse house)
{
    // Members that hold sentences or labels, beside everything in files of words.
    private static readonly ImmutableHashSet<string> Said =
    [
        "Objection.Why",
        "Objection.Instead",
        "Echo.Words",
        "Echo.Doubt",
        "Undoable.Words",
        "Reading.Doubt",
        "Run.Doubt",
        "Outcome.NotSavedBecause",
        "Study.ReadOnlyBecause",
        "KeyRow.Label",
        "KeyRow.Words",
        "ScreenRow.Words",
        "Verb.Does",
        "Verb.Example",
        "Exception.Message",
        "Outcome.Echo",
        "QuantityOutOfRangeException.Why",
    ];

    // Words that somebody types as an answer, and so a grammar.
    private static readonly ImmutableHashSet<string> Answers =
    [
        "CustodianWords.Alone",
        "RevealScreenWords.AsRead",
        "RevealScreenWords.Again",
    ];

    private static readonly ImmutableHashSet<string> Searches =
    [
        "StartsWith",
        "EndsWith",
        "Contains",
        "IndexOf",
        "LastIndexOf",
        "Equals",
        "Split",
        "Substring",
        "Replace",
        "Match",
        "IsMatch",
    ];

    [Fact]
    public void No_rule_reads_the_text_of_a_message() =>
        TheHouse.NoneOf(
            from source in house.Program
            let meaning = house.MeaningOf(source)
            from node in source.Tree.GetRoot().DescendantNodes()
            where Read(node).Any(text => IsSaid(text, meaning))
            select $"{source.Place(node)}: {node}",
            "what is said to people is never compared, searched or cut: let the act say in its type what it is"
        );

    [Fact]
    public void No_rule_reads_the_name_of_a_folder() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.Symbol is IPropertySymbol { Name: "Namespace" or "FullName" or "AssemblyQualifiedName" } && use.Namespace == "System"
            select $"{use}",
            "a type says itself what it is: rules ask for no namespace"
        );

    [Theory]
    [InlineData("class A { bool B(System.Exception fault) => fault.Message.StartsWith(\"no\"); }")]
    [InlineData("class A { bool B(System.Exception fault) => fault.Message == \"no\"; }")]
    [InlineData("class A { bool B(System.Exception fault) => fault.Message is \"no\"; }")]
    [InlineData("class A { bool B(System.Exception fault) => \"no\".Contains(fault.Message); }")]
    [InlineData("class A { string B(System.Exception fault) => fault.Message[..3]; }")]
    [InlineData("class A { int B(System.Exception fault) => fault.Message switch { \"no\" => 1, _ => 2 }; }")]
    [InlineData("static class DriveWords { public const string No = \"no\"; } class A { bool B(string typed) => typed == DriveWords.No; }")]
    [InlineData("static class DriveWords { public const string No = \"no\"; } class A { bool B(string typed) => typed is DriveWords.No; }")]
    public void The_rule_sees_each_way_of_reading_a_text(string source)
    {
        SyntaxTree tree = CSharpSyntaxTree.ParseText(source);
        SemanticModel meaning = CSharpCompilation
            .Create("A", [tree], [MetadataReference.CreateFromFile(typeof(object).Assembly.Location)])
            .GetSemanticModel(tree);
        Assert.Contains(tree.GetRoot().DescendantNodes(), node => Read(node).Any(text => IsSaid(text, meaning)));
    }

    // What a piece of code compares, searches or cuts.
    private static IEnumerable<SyntaxNode> Read(SyntaxNode node) =>
        node switch
        {
            InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax call } invocation
                when Searches.Contains(call.Name.Identifier.Text) => invocation
                .ArgumentList.Arguments.Select(argument => (SyntaxNode)argument.Expression)
                .Prepend(call.Expression),
            BinaryExpressionSyntax
            {
                RawKind: (int)SyntaxKind.EqualsExpression or (int)SyntaxKind.NotEqualsExpression or (int)SyntaxKind.IsExpression
            } binary when !IsNull(binary.Left) && !IsNull(binary.Right) => [binary.Left, binary.Right],
            ElementAccessExpressionSyntax element => [element.Expression],
            IsPatternExpressionSyntax pattern when HoldsText(pattern.Pattern) => [pattern.Expression, .. Constants(pattern.Pattern)],
            SwitchExpressionSyntax chosen when chosen.Arms.Any(arm => HoldsText(arm.Pattern)) =>
            [
                chosen.GoverningExpression,
                .. chosen.Arms.SelectMany(arm => Constants(arm.Pattern)),
            ],
            _ => [],
        };

    private static bool IsNull(ExpressionSyntax expression) => expression.IsKind(SyntaxKind.NullLiteralExpression);

    private static bool HoldsText(PatternSyntax pattern) => Constants(pattern).Any();

    private static IEnumerable<SyntaxNode> Constants(PatternSyntax pattern) =>
        pattern
            .DescendantNodesAndSelf()
            .OfType<ConstantPatternSyntax>()
            .Select(constant => constant.Expression)
            .Where(expression => expression.IsKind(SyntaxKind.StringLiteralExpression) || expression is MemberAccessExpressionSyntax);

    private static bool IsSaid(SyntaxNode text, SemanticModel meaning) =>
        meaning.GetSymbolInfo(text).Symbol is { ContainingType: { } type } symbol
        && Text(symbol) is { SpecialType: SpecialType.System_String }
        && (
            Said.Contains($"{type.Name}.{symbol.Name}")
            || (
                type is { IsStatic: true }
                && type.Name.EndsWith("Words", StringComparison.Ordinal)
                && !Answers.Contains($"{type.Name}.{symbol.Name}")
            )
        );

    private static ITypeSymbol? Text(ISymbol symbol) =>
        symbol switch
        {
            IPropertySymbol property => property.Type,
            IFieldSymbol field => field.Type,
            IMethodSymbol method => method.ReturnType,
            _ => null,
        };
}
