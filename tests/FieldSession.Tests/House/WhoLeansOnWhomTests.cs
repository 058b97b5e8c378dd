namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class WhoLeansOnWhomTests(TheHouse house)
{
    private const string Domain = "src/FieldSession/";
    private const string Store = "src/FieldSession.Store/";
    private const string Terminal = "src/FieldSession.Terminal/";

    [Fact]
    public void A_file_s_namespace_is_its_folder_or_the_room_above_it() =>
        TheHouse.NoneOf(
            from folder in house.Program.Where(source => source.Namespace.Length > 0).GroupBy(source => source.Folder)
            let path = folder.Key["src/".Length..].Replace('/', '.')
            let room = path.Contains('.', StringComparison.Ordinal) ? path[..path.LastIndexOf('.')] : path
            from source in folder
            where source.Namespace != folder.First().Namespace || (source.Namespace != path && source.Namespace != room)
            select $"{source.Path}: {source.Namespace}",
            "a namespace is a room, named as its folder; a folder below a room sorts its files by subject, one level deep"
        );

    [Fact]
    public void Every_folder_of_the_domain_is_a_room_of_the_plan() =>
        TheHouse.NoneOf(
            from source in house.Program
            where
                source.LiesIn(Domain)
                && source.Namespace.Length > 0
                && source.Room != Leanings.Hall
                && !Leanings.Rooms.Contains(source.Room)
            select source.Room,
            "a new room of the domain is entered in Leanings and docs/architecture.md first"
        );

    [Fact]
    public void In_the_domain_a_stage_leans_on_earlier_stages_only() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.IsOurs && use.Source.LiesIn(Domain) && !Leanings.May(use.Source.Room, use.Room)
            select $"{use.Place}: {use.Source.Room} leans on {use.Room} ({use.Symbol.Name})",
            "no room leans sideways, on a later stage, or on the hall"
        );

    [Fact]
    public void Screens_know_neither_each_other_nor_the_commands_nor_the_store() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.IsOurs && use.Source.LiesIn(Terminal + "Screens/") && use.Namespace != use.Source.Namespace
            where
                IsIn(use, "FieldSession.Store") || IsIn(use, "FieldSession.Terminal.Commands") || IsIn(use, "FieldSession.Terminal.Screens")
            select use.ToString(),
            "a screen sees the study, the look and itself"
        );

    [Fact]
    public void Looks_know_no_screen_and_no_command() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.IsOurs && use.Source.LiesIn(Terminal + "Look/") && use.Namespace != use.Source.Namespace
            where IsIn(use, "FieldSession.Terminal")
            select use.ToString(),
            "how things look does not depend on where they are shown"
        );

    [Theory]
    [InlineData("MathNet", Domain)]
    [InlineData("Wcwidth", Domain)]
    [InlineData("LiteDB", Store)]
    [InlineData("CsvHelper", Store)]
    [InlineData("Tomlyn", Store)]
    [InlineData("Terminal.Gui", Terminal)]
    [InlineData("System.CommandLine", Terminal)]
    public void A_library_is_known_to_one_assembly(string library, string assembly)
    {
        Use[] uses = [.. house.Uses.Where(use => use.Library.StartsWith(library, StringComparison.Ordinal))];
        Assert.Contains(uses, use => use.Source.LiesIn(assembly));
        TheHouse.NoneOf(
            uses.Where(use => !use.Source.LiesIn(assembly)).Select(use => use.ToString()),
            $"{library} is used in {assembly} only"
        );
    }

    [Theory]
    [InlineData("Driving", "Flagging")]
    [InlineData("Sealing", Leanings.Hall)]
    [InlineData("Statistics", "Measures")]
    [InlineData("Comparing", "Revealing")]
    [InlineData("Checking", "Comparing")]
    [InlineData("Reporting", "Driving")]
    public void A_plan_that_let_everything_pass_would_be_noticed(string room, string other) => Assert.False(Leanings.May(room, other));

    [Theory]
    [InlineData("Driving", "Checking")]
    [InlineData("State", "Measures")]
    [InlineData("Comparing", "Statistics")]
    public void Leanings_that_the_plan_draws_are_found_in_the_source(string room, string other)
    {
        Assert.True(Leanings.May(room, other));
        Assert.Contains(house.Uses, use => use.IsOurs && use.Source.Room == room && use.Room == other);
    }

    private static bool IsIn(Use use, string name) =>
        use.Namespace == name || use.Namespace.StartsWith(name + ".", StringComparison.Ordinal);
}
