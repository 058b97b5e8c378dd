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
    string Name,
    Stage Stage,
    ImmutableArray<string> Words,
    string Typed = "",
    string Makes = "",
    string Done = "",
    bool OnlyReads = false
)
{
    private const string LiesThere = "is there already";

    /// <summary>The study it works on.</summary>
    public string Study { get; init; } = "day.study";

    /// <summary>The kinds of lines it adds where nothing is typed.</summary>
    public ImmutableArray<string> Adds { get; init; } = [];

    /// <summary>Whether it names specs because they are made up.</summary>
    public bool IsDemo { get; init; }

    /// <summary>Whether its answers tell acts, one 'ok NUMBER' or 'no NUMBER' for each typed line.</summary>
    public bool TakesActs => Words[0] == "enter";

    /// <summary>Whether it is meant to tell who is who.</summary>
    public bool Reveals => Stage == Stage.Revealed || Words[0] is "reveal" || IsDemo;

    /// <summary>What is typed to 'enter', line by line.</summary>
    public string[] TypedLines => Typed.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Runs it.</summary>
    public ProgramRun Run(ALaidStage laid, CallFault? fault = null) =>
        ProgramRun.In(laid.Path, [.. Words], Typed, CallFaults.Words(laid.Path, fault, laid.Record));

    /// <summary>Every command that writes, and the ones that must not.</summary>
    public static ImmutableArray<Job> All(Stages stages) =>
        [.. BeforeTheRoad(stages), .. OnTheRoad(stages), .. InTheEvening(stages), .. ThatOnlyRead(stages)];

    private static IEnumerable<Job> BeforeTheRoad(Stages stages) =>
        [
            new("start", Stage.Planned, ["start", "plan", "day.study"], Done: LiesThere) { Adds = ["plan"] },
            new("orders --take", Stage.Planned, ["orders", "plan", "--take", "1"], Makes: "plan"),
            new("tyre --plan", Stage.Planned, ["tyre", "225/45R18", "--plan", "plan"], Makes: "plan"),
            new(
                "seal --public",
                Stage.Planned,
                ["seal", "plan", "--specs", "specs.txt", "--key", "b.key", "--public", "b.codes"],
                Done: "already there"
            ),
            new("demo --out", Stage.Planned, ["demo", "--replay", "--out", "demo"], Done: LiesThere)
            {
                Study = "demo/quillmere.study",
                Adds = [.. EntryKinds.All.Select(kind => kind.Name)],
                IsDemo = true,
            },
            new("report --template-out", Stage.Planned, ["report", "--template-out", "page.html"], Done: "there"),
            new("seal", Stage.Started, ["seal", "day.study", "--specs", "specs.txt", "--key", "b.key"], Done: "already")
            {
                Adds = ["sealed"],
            },
            new(
                "seal --draw-marks",
                Stage.Started,
                ["seal", "day.study", "--specs", "specs.txt", "--key", "b.key", "--draw-marks"],
                Done: "already"
            )
            {
                Adds = ["sealed"],
            },
            new("seal --paper", Stage.Started, ["seal", "day.study", "--paper"], Done: "already") { Adds = ["sealed"] },
            new("codes", Stage.Started, ["codes", "day.study", "away.codes"], Done: "already") { Adds = ["sealed"] },
            new("fitting --out", Stage.Planned, ["fitting", "a.key", "--out", "secret/list.txt"], Done: "already there"),
        ];

    private static IEnumerable<Job> OnTheRoad(Stages stages)
    {
        string code = $"{stages.Codes[0]}";
        string acts = $"run {code}\n5860\n; a lorry\n6365\n71\nrun {stages.Codes[1]}\n5961\n; act ten\n6264\n";
        return
        [
            new("archive --for", Stage.Ready, ["archive", "past", "--for", "day.study"], Done: "already") { Adds = ["archive"] },
            new("enter", Stage.Ready, ["enter", "day.study"], acts),
            new("enter --backup", Stage.Ready, ["enter", "day.study", "--backup", "stick"], acts),
            new("legs", Stage.Ready, ["legs", "day.study", "legs.csv"], Done: "no ") { Adds = ["leg"] },
            new("slip", Stage.Ready, ["slip", "day.study", "--for", "Tam"]) { Adds = ["slip"] },
        ];
    }

    private static IEnumerable<Job> InTheEvening(Stages stages) =>
        [
            new("predict", Stage.Driven, ["predict", "day.study", "--lock", $"Ro feature={stages.Codes[0]} sure=4"], Done: "locked")
            {
                Adds = ["prediction"],
            },
            new("reveal", Stage.Predicted, stages.RevealWords, Done: "open") { Adds = ["opened"] },
            new("reveal --paper", Stage.PredictedOnPaper, stages.PaperRevealWords, Done: "open") { Adds = ["opened"] },
            new("reveal --again", Stage.Revealed, ["reveal", "day.study", "--again", .. stages.MarkWords]) { Adds = ["marks"] },
            new("report", Stage.Revealed, ["report", "day.study", "--out", "report"], Makes: "report"),
            new("export", Stage.Driven, ["export", "day.study", "--out", "tables"], Makes: "tables"),
            new("export, new folder", Stage.Driven, ["export", "day.study", "--out", "new"], Makes: "new"),
            new("export, shared folder", Stage.Driven, ["export", "day.study", "--out", "other"]),
            new("merge", Stage.Driven, ["merge", "day.study", "other/day.study"]),
            new("archive", Stage.Driven, ["archive", "."]),
            new("archive --csv", Stage.Driven, ["archive", ".", "--csv"]),
            new("rescue", Stage.Driven, ["rescue", "damaged/day.study", "--out", "saved.study"], Done: LiesThere) { Study = "saved.study" },
        ];

    private static IEnumerable<Job> ThatOnlyRead(Stages stages) =>
        [
            new("keycheck", Stage.Ready, ["keycheck", "a.key", "--study", "day.study"], OnlyReads: true),
            new("review", Stage.Driven, ["review", "day.study"], OnlyReads: true),
            new("compare", Stage.Driven, ["compare", "day.study", "--json"], OnlyReads: true),
            new(
                "compare, readings",
                Stage.Driven,
                ["compare", "tables/readings.csv", "--reference", $"{stages.Codes[0]}"],
                OnlyReads: true
            ),
            new("score", Stage.Revealed, ["score", "day.study"], OnlyReads: true),
            new("verify", Stage.Driven, ["verify", "day.study"], OnlyReads: true),
            new("man", Stage.Planned, ["man"], OnlyReads: true),
        ];

    public override string ToString() => Name;
}
