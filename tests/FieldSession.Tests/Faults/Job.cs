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
    DayStage Stage,
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
    public bool Reveals => Stage == DayStage.Revealed || Words[0] is "reveal" || IsDemo;

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
            new("start", DayStage.Planned, ["start", "plan", "day.study"], Done: LiesThere) { Adds = ["plan"] },
            new("orders --take", DayStage.Planned, ["orders", "plan", "--take", "1"], Makes: "plan"),
            new("tyre --plan", DayStage.Planned, ["tyre", "225/45R18", "--plan", "plan"], Makes: "plan"),
            new(
                "seal --public",
                DayStage.Planned,
                ["seal", "plan", "--specs", "specs.txt", "--key", "b.key", "--public", "b.codes"],
                Done: "already there"
            ),
            new("demo --out", DayStage.Planned, ["demo", "--replay", "--out", "demo"], Done: LiesThere)
            {
                Study = "demo/quillmere.study",
                Adds = [.. EntryKinds.All.Select(kind => kind.Name)],
                IsDemo = true,
            },
            new("report --template-out", DayStage.Planned, ["report", "--template-out", "page.html"], Done: "there"),
            new("seal", DayStage.Started, ["seal", "day.study", "--specs", "specs.txt", "--key", "b.key"], Done: "already")
            {
                Adds = ["sealed"],
            },
            new(
                "seal --draw-marks",
                DayStage.Started,
                ["seal", "day.study", "--specs", "specs.txt", "--key", "b.key", "--draw-marks"],
                Done: "already"
            )
            {
                Adds = ["sealed"],
            },
            new("seal --paper", DayStage.Started, ["seal", "day.study", "--paper"], Done: "already") { Adds = ["sealed"] },
            new("codes", DayStage.Started, ["codes", "day.study", "away.codes"], Done: "already") { Adds = ["sealed"] },
            new("fitting --out", DayStage.Planned, ["fitting", "a.key", "--out", "secret/list.txt"], Done: "already there"),
        ];

    private static IEnumerable<Job> OnTheRoad(Stages stages)
    {
        string code = $"{stages.Codes[0]}";
        string acts = $"run {code}\n5860\n; a lorry\n6365\n71\nrun {stages.Codes[1]}\n5961\n; act ten\n6264\n";
        return
        [
            new("archive --for", DayStage.Ready, ["archive", "past", "--for", "day.study"], Done: "already") { Adds = ["archive"] },
            new("enter", DayStage.Ready, ["enter", "day.study"], acts),
            new("enter --backup", DayStage.Ready, ["enter", "day.study", "--backup", "stick"], acts),
            new("legs", DayStage.Ready, ["legs", "day.study", "legs.csv"], Done: "no ") { Adds = ["leg"] },
            new("slip", DayStage.Ready, ["slip", "day.study", "--for", "Tam"]) { Adds = ["slip"] },
        ];
    }

    private static IEnumerable<Job> InTheEvening(Stages stages) =>
        [
            new("predict", DayStage.Driven, ["predict", "day.study", "--lock", $"Ro feature={stages.Codes[0]} sure=4"], Done: "locked")
            {
                Adds = ["prediction"],
            },
            new("reveal", DayStage.Predicted, stages.RevealWords, Done: "open") { Adds = ["opened"] },
            new("reveal --paper", DayStage.PredictedOnPaper, stages.PaperRevealWords, Done: "open") { Adds = ["opened"] },
            new("reveal --again", DayStage.Revealed, ["reveal", "day.study", "--again", .. stages.MarkWords]) { Adds = ["marks"] },
            new("report", DayStage.Revealed, ["report", "day.study", "--out", "report"], Makes: "report"),
            new("export", DayStage.Driven, ["export", "day.study", "--out", "tables"], Makes: "tables"),
            new("export, new folder", DayStage.Driven, ["export", "day.study", "--out", "new"], Makes: "new"),
            new("export, shared folder", DayStage.Driven, ["export", "day.study", "--out", "other"]),
            new("merge", DayStage.Driven, ["merge", "day.study", "other/day.study"]),
            new("archive", DayStage.Driven, ["archive", "."]),
            new("archive --csv", DayStage.Driven, ["archive", ".", "--csv"]),
            new("rescue", DayStage.Driven, ["rescue", "damaged/day.study", "--out", "saved.study"], Done: LiesThere)
            {
                Study = "saved.study",
            },
        ];

    private static IEnumerable<Job> ThatOnlyRead(Stages stages) =>
        [
            new("keycheck", DayStage.Ready, ["keycheck", "a.key", "--study", "day.study"], OnlyReads: true),
            new("review", DayStage.Driven, ["review", "day.study"], OnlyReads: true),
            new("compare", DayStage.Driven, ["compare", "day.study", "--json"], OnlyReads: true),
            new(
                "compare, readings",
                DayStage.Driven,
                ["compare", "tables/readings.csv", "--reference", $"{stages.Codes[0]}"],
                OnlyReads: true
            ),
            new("score", DayStage.Revealed, ["score", "day.study"], OnlyReads: true),
            new("verify", DayStage.Driven, ["verify", "day.study"], OnlyReads: true),
            new("man", DayStage.Planned, ["man"], OnlyReads: true),
        ];

    public override string ToString() => Name;
}
