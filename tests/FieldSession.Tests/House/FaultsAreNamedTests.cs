using System.Collections.Frozen;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class FaultsAreNamedTests(TheHouse house)
{
    // Each with the reason why it must catch whatever comes.
    private static FrozenDictionary<string, string> MayCatchEverything { get; } =
        new Dictionary<string, string>
        {
            ["src/FieldSession.Terminal/Program.cs"] = "the one place where a broken world is told to the crew",
            ["src/FieldSession.Terminal/Guard/TerminalGuard.cs"] = "whatever ends the program, the terminal is given back",
            ["src/FieldSession.Store/Journaling/OnDisk/Attempt.cs"] = "the store's library throws what it likes on a damaged file",
        }.ToFrozenDictionary();

    [Fact]
    public void Nobody_catches_everything_but_the_few_who_must() =>
        TheHouse.NoneOf(
            from source in house.Program
            where !MayCatchEverything.ContainsKey(source.Path)
            from handler in source.Tree.GetRoot().DescendantNodes().OfType<CatchClauseSyntax>()
            where handler.Filter is null && CatchesEverything(handler) && !PassesItOn(handler)
            select source.Place(handler),
            "a fault that is expected has a name; one that is not is nobody's to swallow"
        );

    [Fact]
    public void The_list_of_those_who_must_names_files_that_are_there() =>
        TheHouse.NoneOf(
            MayCatchEverything.Keys.Where(path => house.Program.All(source => source.Path != path)),
            "an exception to a rule is taken off the list with its file"
        );

    private static bool CatchesEverything(CatchClauseSyntax handler) =>
        handler.Declaration?.Type.ToString() is null or "Exception" or "System.Exception";

    // What only tidies up and throws on, swallows nothing.
    private static bool PassesItOn(CatchClauseSyntax handler) =>
        handler.Block.Statements.LastOrDefault() is ThrowStatementSyntax { Expression: null };
}
