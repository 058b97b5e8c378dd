using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class NothingSharedTests(TheHouse house)
{
    [Fact]
    public void No_static_field_can_be_assigned() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from field in source.Tree.GetRoot().DescendantNodes().OfType<FieldDeclarationSyntax>()
            where Has(field, SyntaxKind.StaticKeyword) && !Has(field, SyntaxKind.ReadOnlyKeyword)
            select $"{source.Place(field)}: {field.Declaration}",
            "a static field is const or readonly"
        );

    [Fact]
    public void No_static_property_can_be_set() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from property in source.Tree.GetRoot().DescendantNodes().OfType<PropertyDeclarationSyntax>()
            where Has(property, SyntaxKind.StaticKeyword)
            where
                property.AccessorList?.Accessors.Any(a =>
                    a.Kind() is SyntaxKind.SetAccessorDeclaration or SyntaxKind.InitAccessorDeclaration
                ) == true
            select $"{source.Place(property)}: {property.Identifier}",
            "a static property can only be read"
        );

    [Fact]
    public void No_static_holds_what_can_be_changed() =>
        TheHouse.NoneOf(
            from source in house.Program
            let meaning = house.MeaningOf(source)
            from held in StaticsOf(source, meaning)
            where IsChangeable(held.Type)
            select $"{source.Path}: {held.Name} is a {held.Type.ToDisplayString()}",
            "what a static holds can't be changed: an Immutable or Frozen collection, not an array, a list or a dictionary"
        );

    private static bool Has(MemberDeclarationSyntax member, SyntaxKind word) => member.Modifiers.Any(word);

    private static IEnumerable<(string Name, ITypeSymbol Type)> StaticsOf(SourceFile source, SemanticModel meaning)
    {
        foreach (MemberDeclarationSyntax member in source.Tree.GetRoot().DescendantNodes().OfType<MemberDeclarationSyntax>())
        {
            if (member is FieldDeclarationSyntax field && Has(field, SyntaxKind.StaticKeyword))
            {
                yield return (field.Declaration.Variables[0].Identifier.Text, meaning.GetTypeInfo(field.Declaration.Type).Type!);
            }
            else if (member is PropertyDeclarationSyntax { ExpressionBody: null } property && Has(property, SyntaxKind.StaticKeyword))
            {
                yield return (property.Identifier.Text, meaning.GetTypeInfo(property.Type).Type!);
            }
        }
    }

    // A collection that offers Add or an indexer that sets, and is none of the two kinds that never change.
    private static bool IsChangeable(ITypeSymbol type) =>
        type is IArrayTypeSymbol
        || (
            type.AllInterfaces.Append(type).Any(i => i.Name is "ICollection" or "IDictionary" or "IList" or "IProducerConsumerCollection")
            && type.ContainingNamespace.ToDisplayString() is not ("System.Collections.Immutable" or "System.Collections.Frozen")
        )
        || type.Name is "StringBuilder" or "Queue" or "Stack" or "Random";
}
