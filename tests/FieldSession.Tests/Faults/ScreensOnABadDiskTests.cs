using FieldSession.Tests.Ptys;

namespace FieldSession.Tests.Faults;

/// <summary>
/// The screens of the real program in a terminal, while calls on their files fail. FIELDSESSION_SCREEN_FAULTS sets how many faults each
/// gets.
/// </summary>
[Collection(Pty.Collection)]
public sealed class ScreensOnABadDiskTests(Stages stages, ITestOutputHelper output) : IClassFixture<Stages>
{
    private const string Quit = "\x11";

    // run 1 and its three readings; a number typed into a cell of the plan, written by Ctrl+S
    private static readonly (Job Job, string Begun, string[] Keys)[] Screens =
    [
        (new Job("drive", DayStage.Ready, ["drive", "day.study"]), "T-7", ["\r", "5860\r", "6365\r", "71\r"]),
        (new Job("plan", DayStage.Planned, ["plan", "plan"], Makes: "plan"), "T-7", ["T-8\r", "\x13"]),
    ];

    [NativeFaultFact]
    public void The_disk_says_no_under_a_screen_and_nothing_is_lost_torn_or_told_wrongly()
    {
        int each = FaultTests.Number("FIELDSESSION_SCREEN_FAULTS", 2);
        List<string> broken = [];
        int failed = 0;
        foreach ((Job job, string begun, string[] keys) in Screens)
        {
            using ALaidStage well = stages.Lay(job.Stage);
            Tried whole = Try(well, job, begun, keys, fault: null);
            Assert.Equal((0, ""), (whole.Code, whole.NotGivenBack));
            HashSet<string> entries = [.. EntriesIn(well, job)];
            CallFault[] faults = [.. CallFault.Of(whole.Calls.Where(call => call.Kind is not ("say" or "tell")))];
            new Random(1).Shuffle(faults);
            foreach (CallFault fault in faults.Take(each))
            {
                using ALaidStage laid = stages.Lay(job.Stage);
                Dictionary<string, string> before = laid.Files(job.Makes);
                Tried tried = Try(laid, job, begun, keys, fault);
                failed += tried.Calls.Count(call => call.IsFailed);
                broken.AddRange(
                    BrokenIn(tried, laid, job, entries, before, well.Files(job.Makes), fault.Kills)
                        .Select(word => $"{job}: {fault}: {word}")
                );
            }

            output.WriteLine($"{job}: {Math.Min(each, faults.Length)} of {faults.Length} faults, {failed} calls failed");
        }

        Assert.True(broken.Count == 0, string.Join('\n', broken));
    }

    private IEnumerable<string> BrokenIn(
        Tried tried,
        ALaidStage laid,
        Job job,
        HashSet<string> entries,
        Dictionary<string, string> before,
        Dictionary<string, string> after,
        bool isKilled
    ) =>
        [
            .. isKilled ? [] : BrokenAtTheEnd(tried),
            .. job.Makes.Length > 0 ? TornIn(laid.Files(job.Makes), before, after) : [],
            .. LostOrForeign(tried, [.. EntriesIn(laid, job)], entries),
            .. tried.Everything.Contains(Stages.HiddenName, StringComparison.Ordinal)
                ? ["NAMED: a spec's name was shown"]
                : Array.Empty<string>(),
            .. job.Stage == DayStage.Planned ? [] : Trial.EnteredAgain(job, laid),
        ];

    private static string[] BrokenAtTheEnd(Tried tried) =>
        tried is { Code: >= 0 and <= 3, NotGivenBack: "" }
            ? []
            : [$"it ended with {tried.Code}, not given back: {tried.NotGivenBack}\n{tried.Screen}"];

    private static IEnumerable<string> TornIn(
        Dictionary<string, string> now,
        Dictionary<string, string> before,
        Dictionary<string, string> after
    ) =>
        from file in now
        where !file.Key.EndsWith(".unfinished", StringComparison.Ordinal)
        where file.Value != before.GetValueOrDefault(file.Key) && file.Value != after.GetValueOrDefault(file.Key)
        select $"TORN: {file.Key}";

    private static IEnumerable<string> LostOrForeign(Tried tried, HashSet<string> stored, HashSet<string> entries)
    {
        foreach (string foreign in stored.Where(entry => !entries.Contains(entry)))
        {
            yield return $"FOREIGN: {foreign}";
        }

        if (tried.Code == 0 && !tried.Everything.Contains("NOT SAVED", StringComparison.Ordinal) && stored.Count < entries.Count)
        {
            yield return $"LOST: {stored.Count} of {entries.Count} acts are there, and no word of it:\n{tried.Screen}";
        }
    }

    private IEnumerable<string> EntriesIn(ALaidStage laid, Job job)
    {
        using ALaidStage begun = stages.Lay(job.Stage);
        int before = Invariant.LinesOf(begun.Here(job.Study)).Count;
        return [.. Invariant.LinesOf(laid.Here(job.Study)).Skip(before).Select(line => $"{EntryKinds.EntryIn(line)}")];
    }

    private static Tried Try(ALaidStage laid, Job job, string begun, string[] keys, CallFault? fault)
    {
        using PtyTerminal terminal = new();
        terminal.Start(
            [.. CallFaults.Words(laid.Path, fault, laid.Record), ProgramInATerminal.Path, job.Words[0], laid.Here(job.Words[1])],
            PtyTerminal.Plainly,
            ("XDG_STATE_HOME", laid.Here("state"))
        );
        _ = terminal.IsShown(begun);
        string everything = "";
        foreach (string key in keys)
        {
            everything += terminal.TypeIfItRuns(key).Settled();
        }

        for (int tries = 0; terminal.IsRunning && tries < 20; tries++)
        {
            everything += terminal.TypeIfItRuns(Quit).Settled();
        }

        return new Tried(
            terminal.Ended(),
            terminal.NotGivenBack,
            terminal.Screen,
            everything + terminal.Screen,
            CallMade.ReadAll(laid.Record)
        );
    }

    private sealed record Tried(int Code, string NotGivenBack, string Screen, string Everything, List<CallMade> Calls);
}
