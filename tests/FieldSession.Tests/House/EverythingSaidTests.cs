using FieldSession.Tests.Making;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class EverythingSaidTests(TheHouse house)
{
    [Fact]
    public void Every_public_type_and_member_says_what_it_is() =>
        TheHouse.NoneOf(
            from source in house.Program
            from said in Declared(source)
            where string.IsNullOrWhiteSpace(said.Symbol.GetDocumentationCommentXml())
            select $"{source.Place(said.Node)}: {said.Symbol.ToDisplayString()}",
            "everything public, and everything the terminal program shares between its files, has a doc comment"
        );

    [Fact]
    public void Every_member_of_a_public_record_says_what_it_is() =>
        TheHouse.NoneOf(
            from source in house.Program
            from type in source.Tree.GetRoot().DescendantNodes().OfType<RecordDeclarationSyntax>()
            let symbol = house.MeaningOf(source).GetDeclaredSymbol(type)!
            where IsShared(symbol)
            let words = symbol.GetDocumentationCommentXml() ?? ""
            from parameter in type.ParameterList?.Parameters ?? default
            where !words.Contains($"<param name=\"{parameter.Identifier.Text}\"", StringComparison.Ordinal)
            select $"{source.Place(parameter)}: {type.Identifier}.{parameter.Identifier}",
            "a record's parameters are its members, each described on the type"
        );

    [Fact]
    public void The_compiler_is_not_told_to_keep_silent_about_missing_words() =>
        TheHouse.NoneOf(
            from path in house.Files
            where
                path.StartsWith("src/", StringComparison.Ordinal)
                || path.StartsWith(".build/", StringComparison.Ordinal)
                || path == ".editorconfig"
            from line in File.ReadLines(Path.Combine(Repository.Root, path)).Index()
            where
                line.Item.Contains("1591", StringComparison.Ordinal)
                || line.Item.Contains("#pragma warning disable", StringComparison.Ordinal)
            select $"{path}:{line.Index + 1}: {line.Item.Trim()}",
            "no warning is silenced in src"
        );

    private IEnumerable<(SyntaxNode Node, ISymbol Symbol)> Declared(SourceFile source)
    {
        SemanticModel meaning = house.MeaningOf(source);
        return from node in source.Tree.GetRoot().DescendantNodes().OfType<MemberDeclarationSyntax>()
            where node is not (BaseNamespaceDeclarationSyntax or GlobalStatementSyntax)
            let symbol = meaning.GetDeclaredSymbol(node) ?? FirstOf(node, meaning)
            where symbol is { IsOverride: false } && IsShared(symbol) && !IsASentence(symbol)
            select ((SyntaxNode)node, symbol);
    }

    private static ISymbol? FirstOf(MemberDeclarationSyntax node, SemanticModel meaning) =>
        node is BaseFieldDeclarationSyntax field ? meaning.GetDeclaredSymbol(field.Declaration.Variables[0]) : null;

    // In a file of words the sentence itself says what it is.
    private static bool IsASentence(ISymbol symbol) =>
        symbol.ContainingType is { IsStatic: true, DeclaredAccessibility: Accessibility.Internal } type
        && type.Name.EndsWith("Words", StringComparison.Ordinal);

    // Public, in a type that other files can see; an internal type is the whole program's as much as a public one.
    private static bool IsShared(ISymbol symbol)
    {
        for (ISymbol? at = symbol; at is not (null or INamespaceSymbol); at = at.ContainingSymbol)
        {
            bool isTopType = at is INamedTypeSymbol { ContainingType: null };
            if (at.DeclaredAccessibility != Accessibility.Public && !isTopType)
            {
                return false;
            }
        }

        return true;
    }
}
