using System.Text.RegularExpressions;
using FieldSession.Tests.Making;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed partial class WordsTests(TheHouse house)
{
    // Put together here, so that this file does not hold what it looks for.
    private static readonly Regex Unfinished = new(@"\b(TO" + "DO|FIX" + "ME|HA" + "CK)\\b|NotImpl" + "emented");

    private static readonly Regex OfOneMachine = new(
        @"(?<![\w.])/(work|root|home)" + @"/\w|\b[A-Z]:\\Users|\b(METHOD|DOMAIN|DESIGN|STORE|CONTRACT|TUI|STYLE)" + @"\.md"
    );

    [Fact]
    public void Nothing_is_left_for_later() =>
        TheHouse.NoneOf(
            LinesThat(Unfinished, house.Sources.Select(source => source.Path)),
            "what is to be done is done, or is in nobody's code"
        );

    [Fact]
    public void No_file_speaks_of_one_machine() =>
        TheHouse.NoneOf(
            LinesThat(OfOneMachine, house.Files.Where(IsText)),
            "a file names no folder of somebody's machine and no document that is not here"
        );

    [Fact]
    public void No_type_has_a_name_that_says_nothing() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from type in source.Tree.GetRoot().DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
            where SaysNothing().IsMatch(type.Identifier.Text)
            select $"{source.Place(type)}: {type.Identifier}",
            "a type is named for what it is in the job"
        );

    [Fact]
    public void No_file_has_a_name_that_says_nothing() =>
        TheHouse.NoneOf(
            house.Sources.Select(source => source.Path).Where(path => SaysNothing().IsMatch(Path.GetFileNameWithoutExtension(path))),
            "a file is named for what it tells"
        );

    [Fact]
    public void A_file_tells_the_type_it_is_named_for() =>
        TheHouse.NoneOf(
            from source in house.Program
            let types = source.Types.Select(NameOf).OfType<string>().ToArray()
            where types.Length > 0 && !types.Contains(Path.GetFileNameWithoutExtension(source.Path).Split('.')[0])
            select $"{source.Path}: {string.Join(", ", types)}",
            "a file has the name of the type it tells"
        );

    [Fact]
    public void One_name_means_one_type_over_all_assemblies() =>
        TheHouse.NoneOf(
            from source in house.Sources
            from type in source.Types
            group source.Place(type) by NameOf(type) into named
            where named.Skip(1).Any()
            select $"{named.Key}: {string.Join(", ", named)}",
            "one name is one thing"
        );

    [GeneratedRegex("(Helper|Helpers|Util|Utils|Manager|Service|Common|Info|Data|Base|Impl)$")]
    private static partial Regex SaysNothing();

    private static string? NameOf(MemberDeclarationSyntax member) =>
        member switch
        {
            BaseTypeDeclarationSyntax type => type.Identifier.Text,
            DelegateDeclarationSyntax type => type.Identifier.Text,
            _ => null,
        };

    private static bool IsText(string path) =>
        Path.GetExtension(path) is not (".gif" or ".png" or ".jpg" or ".svg" or ".webp" or ".db" or ".zip" or ".wav" or ".flac");

    private static IEnumerable<string> LinesThat(Regex offend, IEnumerable<string> paths) =>
        from path in paths
        from line in File.ReadLines(Path.Combine(Repository.Root, path)).Index()
        where offend.IsMatch(line.Item)
        select $"{path}:{line.Index + 1}: {line.Item.Trim()}";
}
