using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// How many ways lead through a piece of code: one, and one more for every branch (McCabe, "A complexity measure", IEEE
/// Transactions on Software Engineering SE-2, 1976). A switch expression is a table: it counts as one branch, and each
/// guard in it as one more. Local functions are counted by themselves.
/// </summary>
internal static class Complexity
{
    public static int Of(SyntaxNode member) =>
        1 + member.DescendantNodes(node => node == member || node is not LocalFunctionStatementSyntax).Count(IsBranch);

    private static bool IsBranch(SyntaxNode node) =>
        node.Kind()
            is SyntaxKind.IfStatement
                or SyntaxKind.ConditionalExpression
                or SyntaxKind.WhileStatement
                or SyntaxKind.DoStatement
                or SyntaxKind.ForStatement
                or SyntaxKind.ForEachStatement
                or SyntaxKind.ForEachVariableStatement
                or SyntaxKind.CaseSwitchLabel
                or SyntaxKind.CasePatternSwitchLabel
                or SyntaxKind.SwitchExpression
                or SyntaxKind.WhenClause
                or SyntaxKind.CatchClause
                or SyntaxKind.LogicalAndExpression
                or SyntaxKind.LogicalOrExpression;
}
