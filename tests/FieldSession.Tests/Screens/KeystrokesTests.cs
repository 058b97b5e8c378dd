using System.Text;
using System.Text.RegularExpressions;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

/// <summary>How many keys each act takes, counted while the act is done; docs/keystrokes.md is printed from it.</summary>
public sealed partial class KeystrokesTests
{
    private static readonly Counted[] Road =
    [
        new(
            "a range, and the next segment is up",
            "5860<Enter>",
            5,
            study => Last(study) is { } r && $"{r.Levels}" == "58-60" && study.NextSegment!.Number == 3
        ),
        new("a range with tenths", "585605<Enter>", 7, study => $"{Last(study)!.Levels}" == "58.5-60.5"),
        new("one peak on an impact segment", "714<Enter>", 4, study => $"{Last(study)!.Levels}" == "71.4"),
        new(
            "a range that traffic spoilt, flagged before Enter",
            "5860t<Enter>",
            6,
            study => Last(study)!.Spoilt!.Cause == SpoiltCause.Traffic
        ),
        new("flag on the last reading", "t", 1, study => Last(study)!.Spoilt!.Cause == SpoiltCause.Traffic),
        new("flag on the last reading, on the keypad", "+", 1, study => Last(study)!.Spoilt!.Cause == SpoiltCause.Traffic),
        new("missed, and the next segment is up", "m", 1, study => study.NextSegment!.Number == 3),
        new("undo", "u", 1, study => study.RunOn!.Passages.Count == 0),
        new("a phrase of the plan as note", ";1", 2, study => study.Notes.Count == 1),
        new("the same, and whose words it was", ";1d", 3, study => study.Notes[0].Who == "Ro"),
    ];

    private static readonly Counted[] Stop =
    [
        new("the next run, protocol confirmed", "<Enter>", 1, study => study.RunOn?.Number == 2),
        new("the stop opens and marks the newest reading", "parked<Enter>", 7, study => study.RunOn is null, Shows: ">  2 Quarry road"),
        new("the next doubtful reading is marked", "<Tab>", 1, study => study.RunOn is null, InStop: true, Shows: ">  1 Mill lane"),
        new("the doubtful reading is right", "<Tab>y", 2, study => study.Runs[0].Readings.First().Confirmed, InStop: true),
        new(
            "the doubtful reading is corrected",
            "<Tab>5860<Enter>",
            6,
            study => $"{study.Runs[0].Readings.First().CorrectedFrom}" == "84-86",
            InStop: true
        ),
        new(
            "an off-by-one is put right from the marked reading on, shown first",
            "><Enter>",
            2,
            study => study.Runs[0].Readings.Last().Segment == 3,
            InStop: true
        ),
        new(
            "a segment that was skipped is filled in",
            "<CursorDown>714<Enter>",
            5,
            study => study.Runs[0].Readings.Last().FilledAtStop,
            InStop: true
        ),
        new("a run that ended early gets its cause", "end t<Enter>", 6, study => study.Runs[0].Aborted!.Cause == "traffic", InStop: true),
        new("the next run from there, protocol confirmed", "<Enter>", 1, study => study.RunOn?.Number == 2, InStop: true),
    ];

    // Each slip is made first, by keys that are not counted; what is counted is what puts it right.
    private static readonly Counted[] Fixes =
    [
        new("a refused line is put right", "<Backspace><Backspace><Enter>", 3, study => $"{Last(study)!.Levels}" == "58-60")
        {
            Slip = "58601<Enter>",
        },
        new("a refused line is typed again instead", "5860<Enter>", 5, study => $"{Last(study)!.Levels}" == "58-60")
        {
            Slip = "58601<Enter>",
        },
        new(
            "a reading that is wrong, seen at once",
            "u5860<Enter>",
            6,
            study => study.RunOn!.Passages.Count == 2 && $"{Last(study)!.Levels}" == "58-60"
        )
        {
            Slip = "5868<Enter>",
        },
        new("a flag too many, or none after all", "t", 1, study => Last(study)!.Spoilt is null) { Slip = "t" },
        new("missed typed by mistake", "u", 1, study => study.NextSegment!.Number == 2) { Slip = "m" },
        new("an undo too many", "6163<Enter>", 5, study => $"{Last(study)!.Levels}" == "61-63") { Slip = "u" },
        new("a key that bounced or was held down", "", 0, study => study.NextSegment!.Number == 3) { Burst = "mmmm" },
        new(
            "words without a sign, dropped",
            "<Esc>",
            1,
            study => study.RunOn!.Passages.Count == 1 && study.Notes.Count == 0 && Last(study)!.Spoilt is null
        )
        {
            Burst = "truck",
        },
        new("words without a sign, kept as a note", "<Enter>", 1, study => study.Notes.Count == 1 && Last(study)!.Spoilt is null)
        {
            Burst = "truck",
        },
        new("the Enter of a reading forgotten, seen", "<Enter>", 1, study => $"{Last(study)!.Levels}" == "58-60") { Slip = "5860" },
        new("a phrase that the plan does not have", "", 0, study => study.Notes.Count == 0 && study.NextSegment!.Number == 2)
        {
            Slip = ";9",
        },
        new("a note too many, or on the wrong segment", "u", 1, study => study.Notes.Count == 0) { Slip = ";1" },
        new("a jump to the wrong segment", "u", 1, study => study.NextSegment!.Number == 2) { Slip = ":seg 3<Enter>" },
        new("a run ended by mistake", "u", 1, study => study.RunOn is not null) { Slip = ":end<Enter>" },
    ];

    private static readonly Counted[] FixesAtStop =
    [
        new(
            "a segment that was skipped: the readings behind it move by one",
            "><Enter>",
            2,
            study => HasOnly(study, 1, 2, 4, 6, 7),
            InStop: true
        )
        {
            Slip = ToThird,
        },
        new("two segments that were skipped", ">><Enter>", 3, study => HasOnly(study, 1, 2, 5, 6, 7), InStop: true) { Slip = ToThird },
        new("a shift taken by mistake", "u", 1, study => HasOnly(study, 1, 2, 3, 6, 7), InStop: true) { Slip = ToThird + "><Enter>" },
        new("a doubtful reading kept by mistake", "u", 1, study => !First(study).Confirmed, InStop: true) { Slip = "<Tab>y" },
        new("a correction that was wrong", "u", 1, study => $"{First(study).Levels}" == "84-86", InStop: true)
        {
            Slip = "<Tab>5860<Enter>",
        },
        new("a flag on the wrong reading", "u", 1, study => study.Runs[0].Readings.All(reading => reading.Spoilt is null), InStop: true)
        {
            Slip = "t<Enter>",
        },
        new("a refused line is put right", "<Backspace><Backspace><Enter>", 3, study => $"{First(study).Levels}" == "58-60", InStop: true)
        {
            Slip = "<Tab>58601<Enter>",
        },
        new("a word that begins with an act, dropped", "<Esc>", 1, study => !First(study).Confirmed, InStop: true)
        {
            Slip = "<Tab>",
            Burst = "yes",
        },
        new("a run started by mistake", "u", 1, study => study.RunOn is null, InStop: true) { Slip = "<Enter>" },
    ];

    private const string ToThird = "<CursorUp><CursorUp><CursorUp><CursorUp>";

    [Fact]
    public void The_table_of_keystrokes_is_what_the_acts_take()
    {
        StringBuilder text = new(
            "# Keystrokes\n\nFor whoever asks how much typing a day costs. Here you can look up how many keys each act "
                + "takes, and what a slip takes to put right.\n\n"
                + "Printed by a test that does each act and counts its keys. A reading has a budget of five keys. One thought and "
                + "five keys take about\n"
                + "four seconds in a quiet chair and five to seven in a car (keystroke-level model of Card, Moran and Newell). A "
                + "segment lasts five to ten.\n"
        );
        Print(text, "While a run is on", Road, () => new ADay().Ready().Typed("run 417", "6163"));
        Print(text, "What a slip costs", Fixes, () => new ADay().Ready().Typed("run 417", "6163"));
        Print(
            text,
            "What a slip costs at a stop",
            FixesAtStop,
            () =>
                new ADay(ARoute.Plan with { Route = ARoute.Plan.Route.SetItem(0, ARoute.Plan.Route[0] with { NominalDb = 55 }) })
                    .Ready()
                    .Typed("run 417", "8486", "6062", "6265", "seg 6", "6166", "732", "end")
        );
        Print(text, "At a stop", Stop, () => new ADay().Ready().Typed("run 417", "8486", "6365", "end"));
        Golden.Approve("docs/keystrokes.md", text.ToString());
    }

    private static void Print(StringBuilder text, string where, Counted[] acts, Func<ADay> made)
    {
        text.Append($"\n## {where}\n\n| act | keys | how many |\n|---|---|---|\n");
        foreach (Counted act in acts)
        {
            ADay day = made();
            using Tui tui = new(day);
            tui.Keys(act.InStop ? "parked<Enter>" : "").Keys(act.Slip);
            foreach (char key in act.Burst)
            {
                tui.After(100, key);
            }

            tui.Keys(act.Keys);
            Assert.True(act.IsDone(day.Study), $"{act.Words}:\n{tui.Screen}");
            Assert.Contains(act.Shows, tui.Screen, StringComparison.Ordinal);
            Assert.Equal(act.Budget, Named().Count(act.Keys));
            text.Append($"| {act.Words} | {(act.Budget == 0 ? "none" : Shown(act.Keys))} | {act.Budget} |\n");
        }
    }

    private static string Shown(string keys) =>
        string.Join(
            ' ',
            Named()
                .Matches(keys)
                .Select(key =>
                    $"`{key.Value.Trim('<', '>').Replace("CursorDown", "Down", StringComparison.Ordinal)}`".Replace(
                        "``",
                        "`>`",
                        StringComparison.Ordinal
                    )
                )
        );

    private static Reading First(Study study) => study.Runs[0].Readings.First();

    private static bool HasOnly(Study study, params int[] segments) =>
        study.Runs[0].Readings.Select(reading => reading.Segment).SequenceEqual(segments);

    private static Reading? Last(Study study) => study.RunOn!.LastReading;

    [GeneratedRegex("<[^>]+>|.")]
    private static partial Regex Named();

    private sealed record Counted(string Words, string Keys, int Budget, Func<Study, bool> IsDone, bool InStop = false, string Shows = "")
    {
        public string Slip { get; init; } = "";

        public string Burst { get; init; } = "";
    }
}
