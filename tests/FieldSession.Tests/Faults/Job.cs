using System.Collections.Immutable;

namespace FieldSession.Tests.Faults;

/// <summary>A command that is tried while the disk fails.</summary>
/// <param name="Name">What it is called in a table.</param>
/// <param name="Stage">How far the day has come.</param>
/// <param name="Words">The command and its words.</param>
/// <param name="Typed">What it can read.</param>
/// <param name="Makes">The folder or file whose files are all old or all new afterwards; empty: none.</param>
/// <param name="Done">What it says when it was asked to do again what is done already; empty: it just does it again.</param>
/// <param name="OnlyReads">Whether it may write nothing at all.</param>
internal sealed record Job(
    string Name, Stage Stage, ImmutableArray<string> Words, string Typed = "", string Makes = "", string Done = "", bool OnlyReads = false)
{
    /// <summary>The study it works on.</summary>
    public string Study { get; init; } = "day.study";

    /// <summary>The kinds of lines it adds where nothing is typed.</summary>
    public ImmutableArray<string> Adds { get; init; } = [];

    /// <summary>Whether its answers tell acts, one 'ok NUMBER' or 'no NUMBER' for each typed line.</summary>
    public bool TakesActs => Words[0] == "enter";

    /// <summary>Whether it is meant to tell who is who.</summary>
    public bool Reveals => Stage == Stage.Revealed || Words[0] is "reveal";

    /// <summary>What is typed to 'enter', line by line.</summary>
    public string[] TypedLines => Typed.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Runs it.</summary>
    public ProgramRun Run(ALaidStage laid, CallFault? fault = null) =>
        ProgramRun.In(laid.Path, [.. Words], Typed, CallFaults.Words(laid.Path, fault, laid.Record));

    /// <summary>Every command that writes, and the ones that must not.</summary>
    public static ImmutableArray<Job> All(Stages stages)
    {
        string code = $"{stages.Codes[0]}";
        string acts = $"run {code}\n5860\n; a lorry\n6365\n71\nrun {stages.Codes[1]}\n5961\n; act ten\n6264\n";
        return
        [
            new("start", Stage.Planned, ["start", "plan", "day.study"], Done: "lies there already") { Adds = ["plan"] },
            new("seal", Stage.Started, ["seal", "day.study", "--specs", "specs.txt", "--key", "b.key"], Done: "already") { Adds = ["sealed"] },
            new("seal --paper", Stage.Started, ["seal", "day.study", "--paper"], Done: "already") { Adds = ["sealed"] },
            new("enter", Stage.Ready, ["enter", "day.study"], acts),
            new("enter --backup", Stage.Ready, ["enter", "day.study", "--backup", "stick"], acts),
            new("predict", Stage.Driven, ["predict", "day.study", "--lock", $"Ro feature={code} sure=4"], Done: "locked") { Adds = ["prediction"] },
            new("reveal", Stage.Predicted, stages.RevealWords, Done: "open") { Adds = ["opened"] },
            new("report", Stage.Revealed, ["report", "day.study", "--out", "report"], Makes: "report"),
            new("export", Stage.Driven, ["export", "day.study", "--out", "tables"], Makes: "tables"),
            new("merge", Stage.Driven, ["merge", "day.study", "other/day.study"]),
            new("archive", Stage.Driven, ["archive", "."]),
            new("rescue", Stage.Driven, ["rescue", "damaged/day.study", "--out", "saved.study"], Done: "lies there already") { Study = "saved.study" },
            new("orders --take", Stage.Planned, ["orders", "plan", "--take", "1"], Makes: "plan"),
            new("tyre --plan", Stage.Planned, ["tyre", "225/45R18", "--plan", "plan"], Makes: "plan"),
            new("demo --out", Stage.Planned, ["demo", "--replay", "--out", "demo"], Done: "lies there already") { Study = "demo/quillmere.study", Adds = [.. EntryKinds.All.Select(kind => kind.Name)] },
            new("report --template-out", Stage.Planned, ["report", "--template-out", "page.html"], Done: "there"),
            new("review", Stage.Driven, ["review", "day.study"], OnlyReads: true),
            new("compare", Stage.Driven, ["compare", "day.study", "--json"], OnlyReads: true),
            new("verify", Stage.Driven, ["verify", "day.study"], OnlyReads: true),
        ];
    }

    public override string ToString() => Name;
}
