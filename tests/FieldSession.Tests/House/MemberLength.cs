using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// How long a member is, by what it says and not by how it is wrapped: lines with lone brackets do not count, and what is made in one
/// go, such as a row of a table or an option of a command, counts once however many lines it takes.
/// </summary>
internal static class MemberLength
{
    /// <summary>Its lines, without attributes and doc comments.</summary>
    public static int Of(SourceFile source, SyntaxNode member) =>
        member
            .DescendantTokens(node => node is not AttributeListSyntax)
            .Where(token => token.Text.Any(letter => !"()[]{};,".Contains(letter, StringComparison.Ordinal)))
            .Select(token => LineOf(source, RowOf(token, member) is { } row ? row : (SyntaxNodeOrToken)token))
            .Distinct()
            .Count();

    // the thing made around it, with nothing else made inside
    private static BaseObjectCreationExpressionSyntax? RowOf(SyntaxToken token, SyntaxNode member) =>
        token
            .Parent?.AncestorsAndSelf()
            .TakeWhile(node => node != member)
            .OfType<BaseObjectCreationExpressionSyntax>()
            .FirstOrDefault(made => !made.DescendantNodes().OfType<BaseObjectCreationExpressionSyntax>().Any());

    private static int LineOf(SourceFile source, SyntaxNodeOrToken piece) => source.Tree.GetLineSpan(piece.Span).StartLinePosition.Line;
}
