using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class SmallPiecesTests(TheHouse house)
{
    private const int LongestFile = 300;
    private const int MedianFile = 120;
    private const int LongestMember = 40;
    private const int MostBranches = 8;

    [Fact]
    public void No_file_is_longer_than_300_lines() => TheHouse.NoneOf(
        house.Sources.Where(source => source.Lines > LongestFile).Select(source => $"{source.Path}: {source.Lines} lines"),
        $"a file has at most {LongestFile} lines; one file tells one thing");

    [Fact]
    public void Half_of_the_files_are_shorter_than_120_lines()
    {
        int[] lines = [.. house.Program.Select(source => source.Lines).Order()];
        Assert.InRange(lines[lines.Length / 2], 1, MedianFile - 1);
    }

    [Fact]
    public void No_member_is_longer_than_40_lines() => TheHouse.NoneOf(
        from source in house.Sources
        from member in Members(source)
        let lines = LinesOf(source, member)
        where lines > LongestMember
        select $"{source.Place(member)}: {lines} lines",
        $"a method has at most {LongestMember} lines");

    [Fact]
    public void No_member_has_more_than_8_ways_through_it() => TheHouse.NoneOf(
        from source in house.Sources
        from member in Members(source)
        let ways = Complexity.Of(member)
        where ways > MostBranches
        select $"{source.Place(member)}: complexity {ways}",
        $"a method's complexity is at most {MostBranches}");

    private static IEnumerable<SyntaxNode> Members(SourceFile source) => source.Tree.GetRoot().DescendantNodes().Where(node => node is
        BaseMethodDeclarationSyntax or AccessorDeclarationSyntax or LocalFunctionStatementSyntax or
        PropertyDeclarationSyntax { ExpressionBody: not null } or IndexerDeclarationSyntax { ExpressionBody: not null });

    private static int LinesOf(SourceFile source, SyntaxNode member)
    {
        FileLinePositionSpan span = source.Tree.GetLineSpan(member.Span);
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }
}
