using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed partial class TopLevelTests(TheHouse house)
{
    private static readonly ImmutableArray<string> TopLevel =
    [
        "README.md",
        "DEVELOPERS.md",
        "FieldSession.sln",
        "src",
        "tests",
        "demo",
        "docs",
    ];

    [Fact]
    public void At_the_top_lies_what_a_newcomer_looks_for_and_nothing_else()
    {
        string[] lying = [.. house.Files.Select(path => path.Split('/')[0]).Where(name => name[0] != '.').Distinct()];
        Assert.Equal(TopLevel.Order(StringComparer.Ordinal), lying.Order(StringComparer.Ordinal));
    }

    public static TheoryData<string> PagesWithPointers =>
        [
            .. Directory
                .GetFiles(Path.Combine(Repository.Root, "docs"), "*.md")
                .Select(path => $"docs/{Path.GetFileName(path)}")
                .Order(StringComparer.Ordinal),
            "README.md",
            "DEVELOPERS.md",
        ];

    [Theory]
    [MemberData(nameof(PagesWithPointers))]
    public void What_a_page_points_to_is_there(string page)
    {
        string[] pointed = [.. PathsIn(File.ReadAllText(Path.Combine(Repository.Root, page)))];
        TheHouse.NoneOf(pointed.Where(path => !Lies(path)).Select(path => $"{page}: {path}"), "a path that a page names exists");
    }

    [Fact]
    public void Every_package_has_its_reason_in_the_architecture()
    {
        string reasons = File.ReadAllText(Path.Combine(Repository.Root, "docs/architecture.md"));
        TheHouse.NoneOf(
            PackageName()
                .Matches(File.ReadAllText(Path.Combine(Repository.Root, ".build/packages.props")))
                .Select(match => match.Groups[1].Value)
                .Where(name => !Regex.IsMatch(reasons, $@"(?m)^\|[^|]*(?<![\w.]){Regex.Escape(name)}(?![\w.])[^|]*\|")),
            "a package is taken for a reason that docs/architecture.md says"
        );
    }

    [Fact]
    public void The_guide_for_developers_fits_one_page()
    {
        string[] lines = File.ReadAllLines(Path.Combine(Repository.Root, "DEVELOPERS.md"));
        Assert.InRange(lines.Length, 30, 90);
    }

    [Fact]
    public void The_paths_of_a_page_are_found() =>
        Assert.Equal(["src/A/", "docs/b.md", ".ci/run"], PathsIn("see `src/A/`, [b](docs/b.md) and bash .ci/run; not and/or"));

    private static IEnumerable<string> PathsIn(string text) => Pointer().Matches(text).Select(match => match.Value).Distinct();

    private bool Lies(string path) =>
        house.Files.Any(file => file == path || file.StartsWith(path.TrimEnd('/') + "/", StringComparison.Ordinal));

    [GeneratedRegex("PackageVersion Include=\"([^\"]+)\"")]
    private static partial Regex PackageName();

    [GeneratedRegex(@"(?<![\w/.<])(src|tests|demo|docs|\.ci|\.build)/[\w./-]*[\w/]")]
    private static partial Regex Pointer();
}
