using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class SmallPiecesTests(TheHouse house)
{
    private const int LongestFile = 300;
    private const int MedianFile = 120;
    private const int LongestMember = 40;
    private const int MostBranches = 8;
    private const int WidestLine = 140;

    [Fact]
    public void No_file_is_longer_than_300_lines() =>
        TheHouse.NoneOf(
            house.Sources.Where(source => source.Lines > LongestFile).Select(source => $"{source.Path}: {source.Lines} lines"),
            $"a file has at most {LongestFile} lines; one file tells one thing"
        );

    [Fact]
    public void Half_of_the_files_are_shorter_than_120_lines()
    {
        int[] lines = [.. house.Program.Select(source => source.Lines).Order()];
        Assert.InRange(lines[lines.Length / 2], 1, MedianFile - 1);
    }

    [Fact]
    public void No_member_is_longer_than_40_lines() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from member in Members(source)
            let lines = MemberLength.Of(source, member)
            where lines > LongestMember
            select $"{source.Place(member)}: {lines} lines",
            $"a method has at most {LongestMember} lines, without lone brackets; what is made in one go counts once"
        );

    [Theory]
    [InlineData("void A()\n{\n    B(\n        1,\n        2\n    );\n}", 4)]
    [InlineData("C[] A() =>\n    [\n        new C(\n            1,\n            2\n        ),\n        new C(3, 4),\n    ];", 3)]
    public void A_member_is_measured_by_what_it_says(string text, int lines)
    {
        SourceFile source = new("a.cs", text, CSharpSyntaxTree.ParseText(text));
        Assert.Equal(lines, MemberLength.Of(source, Members(source).Single()));
    }

    [Fact]
    public void No_line_is_wider_than_140() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from line in source.Tree.GetText().Lines
            where line.Span.Length > WidestLine && !IsInATextAsItIs(source, line.Span)
            select $"{source.Path}:{line.LineNumber + 1}: {line.Span.Length} wide",
            $"a line has at most {WidestLine} columns; patterns and pages that are kept as they are may be wider"
        );

    [Fact]
    public void No_member_has_more_than_8_ways_through_it() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from member in Members(source)
            let ways = Complexity.Of(member)
            where ways > MostBranches
            select $"{source.Place(member)}: complexity {ways}",
            $"a method's complexity is at most {MostBranches}"
        );

    // a raw text, or a pattern of a regular expression
    private static bool IsInATextAsItIs(SourceFile source, TextSpan line) =>
        source
            .Tree.GetRoot()
            .DescendantNodes(line)
            .Any(node =>
                node is LiteralExpressionSyntax or InterpolatedStringExpressionSyntax
                && node.ToString() is ['@', ..] or ['"', '"', '"', ..] or ['$', '"', '"', '"', ..] or ['$', '$', ..]
            );

    private static IEnumerable<SyntaxNode> Members(SourceFile source) =>
        source
            .Tree.GetRoot()
            .DescendantNodes()
            .Where(node =>
                node
                    is BaseMethodDeclarationSyntax
                        or AccessorDeclarationSyntax
                        or LocalFunctionStatementSyntax
                        or PropertyDeclarationSyntax { ExpressionBody: not null }
                        or IndexerDeclarationSyntax { ExpressionBody: not null }
            );
}
