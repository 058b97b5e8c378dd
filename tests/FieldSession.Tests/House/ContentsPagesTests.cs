using System.Text.Json.Serialization;
using FieldSession.Journal;
using FieldSession.Terminal;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class ContentsPagesTests(TheHouse house)
{
    private static IEnumerable<Type> Entries =>
        typeof(Entry)
            .Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Entry)) && !type.IsAbstract && type != typeof(EntryByNewerProgram));

    [Fact]
    public void Every_entry_is_in_EntryKinds() =>
        TheHouse.NoneOf(
            Entries.Except(EntryKinds.All.Select(kind => kind.Type)).Select(type => type.FullName!),
            "a fact that stands on no line of EntryKinds can't be written"
        );

    [Fact]
    public void Every_entry_is_in_EntryShapes()
    {
        Type shapes = typeof(EntryKinds).Assembly.GetType("FieldSession.EntryShapes", throwOnError: true)!;
        IEnumerable<object?> named = shapes
            .GetCustomAttributesData()
            .Where(attribute => attribute.AttributeType == typeof(JsonSerializableAttribute))
            .Select(attribute => attribute.ConstructorArguments[0].Value);
        TheHouse.NoneOf(Entries.Except(named.OfType<Type>()).Select(type => type.FullName!), "a fact needs its shape in JSON");
    }

    [Fact]
    public void No_two_kinds_of_entry_share_a_name()
    {
        TheHouse.NoneOf(
            EntryKinds.All.CountBy(kind => kind.Name).Where(name => name.Value > 1).Select(name => name.Key),
            "a name on disk means one thing for ever"
        );
        Assert.Equal(EntryKinds.All.Length, Entries.Count());
    }

    [Fact]
    public void Every_screen_is_in_AllScreens() =>
        TheHouse.NoneOf(
            typeof(Screen)
                .Assembly.GetTypes()
                .Where(type => type.IsSubclassOf(typeof(Screen)) && !type.IsAbstract)
                .Select(type => type.Name)
                .Except(NamesIn("src/FieldSession.Terminal/Frame/AllScreens.cs")),
            "a screen that stands on no line of AllScreens can't be shown"
        );

    [Fact]
    public void Screens_are_made_in_the_order_of_their_keys() =>
        Assert.Equal(ScreenName.InOrder.Select(screen => screen.Name), AllScreens.Rows.Select(row => row.Name));

    [Fact]
    public void No_two_screens_share_a_name() =>
        TheHouse.NoneOf(
            AllScreens.Rows.CountBy(row => row.Name).Where(name => name.Value > 1).Select(name => name.Key),
            "a screen is called by its name"
        );

    [Fact]
    public void Every_command_is_in_CommandLine() =>
        TheHouse.NoneOf(
            typeof(Screen)
                .Assembly.GetTypes()
                .Where(type =>
                    type.Namespace == "FieldSession.Terminal.Commands" && type.Name.EndsWith("Command", StringComparison.Ordinal)
                )
                .Select(type => type.Name)
                .Except(NamesIn("src/FieldSession.Terminal/Commands/CommandLine.cs")),
            "a command that stands on no line of CommandLine can't be given"
        );

    private IEnumerable<string> NamesIn(string path) =>
        house
            .Program.Single(source => source.Path == path)
            .Tree.GetRoot()
            .DescendantNodes()
            .OfType<IdentifierNameSyntax>()
            .Select(name => name.Identifier.Text);
}
