using FieldSession.Journal;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Commands;

namespace FieldSession.Tests.Faults;

/// <summary>A command that ran well once: what calls it made, and what it left.</summary>
/// <param name="Job">The command.</param>
/// <param name="Calls">Every call on files of the folder, and what it said.</param>
/// <param name="Changed">The files of what it makes that are others than before.</param>
internal sealed record WellRun(Job Job, List<CallMade> Calls, HashSet<string> Changed)
{
    /// <summary>Runs a command with nothing failing.</summary>
    public static WellRun Of(Job job, Stages stages)
    {
        using ALaidStage laid = stages.Lay(job.Stage);
        Dictionary<string, string> before = laid.Files(job.Makes);
        ProgramRun run = job.Run(laid);
        Assert.True(run.Code == 0, $"{job} ended with {run.Code}: {run.Said}");
        Dictionary<string, string> after = laid.Files(job.Makes);
        HashSet<string> changed = job.Makes.Length == 0 ? [] : [.. after.Keys.Where(file => before.GetValueOrDefault(file) != after[file])];
        return new WellRun(job, CallMade.ReadAll(laid.Record), changed);
    }
}

/// <summary>A command that met a fault, and was asked again when the fault was over.</summary>
/// <param name="Well">How it runs else.</param>
/// <param name="Fault">What failed.</param>
/// <param name="Failed">How many calls failed.</param>
/// <param name="Acknowledged">How many acts were answered 'ok'.</param>
/// <param name="Broken">What was not kept of the invariant.</param>
internal sealed record Trial(WellRun Well, CallFault Fault, int Failed, int Acknowledged, List<string> Broken)
{
    /// <summary>Tries a command with a fault.</summary>
    public static Trial Of(WellRun well, CallFault fault, Stages stages)
    {
        Job job = well.Job;
        using ALaidStage laid = stages.Lay(job.Stage);
        Dictionary<string, string> before = laid.Files(job.Makes);
        IReadOnlyList<Line> linesBefore = Invariant.LinesOf(laid.Here(job.Study));
        Invariant invariant = new(linesBefore);
        HashSet<string> others =
        [
            .. Invariant
                .LinesOf(laid.Here("other/day.study"))
                .Concat(Invariant.LinesOf(laid.Here("damaged/day.study")))
                .Select(line => line.Hash),
        ];
        ProgramRun run = job.Run(laid, fault);
        List<CallMade> calls = CallMade.ReadAll(laid.Record);
        int failed = calls.Count(call => call.IsFailed);
        List<string> broken =
        [
            .. Invariant.BrokenInWords(run, fault.Kills, job.Reveals, canSpeak: fault.Call != "tell"),
            .. Together(well, before, laid),
            .. NamedBeforeReveal(job, laid),
        ];
        broken.AddRange(OpenedAgain(job, laid));
        IReadOnlyList<Line> lines = Invariant.LinesOf(laid.Here(job.Study));
        broken.AddRange(
            invariant.BrokenInStudy(lines, job.TypedLines, run.Answers, run.Said, line => others.Contains(line.Hash) || MayAdd(job, line))
        );
        if (run.Code == 0 && !job.Adds.IsEmpty && !lines.Skip(linesBefore.Count).Any(line => line.Kind == job.Adds[0]))
        {
            broken.Add($"DONE: it ended with 0 and its {job.Adds[0]} is not there");
        }

        if (run.Code == 0 && fault is { Call: "say", IsNoFault: false, Kills: false } && failed > 0)
        {
            broken.Add("DONE: it ended with 0 and what it said did not arrive");
        }

        return new Trial(well, fault, failed, run.Answers.Count(answer => answer.StartsWith("ok ", StringComparison.Ordinal)), broken);
    }

    public override string ToString() => $"{Well.Job}: {Fault}: {string.Join("; ", Broken)}";

    // lines of the check below count too
    public static bool MayAdd(Job job, Line line) =>
        line.Kind == EntryKinds.Joined || job.Adds.Contains(line.Kind) || line.Json.Contains(AllIsWell, StringComparison.Ordinal);

    private static readonly Lazy<string> Laptop = new(() => Surroundings.OfThisProcess().Laptop);

    private const string AllIsWell = "all is well again";

    private static IEnumerable<string> Together(WellRun well, Dictionary<string, string> before, ALaidStage laid)
    {
        Dictionary<string, string> after = laid.Files(well.Job.Makes);
        int changed = well.Changed.Count(file => after.GetValueOrDefault(file) is { } now && now != before.GetValueOrDefault(file));
        if (changed > 0 && changed < well.Changed.Count)
        {
            yield return $"MIXED: {changed} of {well.Changed.Count} files are new, the others old";
        }
    }

    private static IEnumerable<string> NamedBeforeReveal(Job job, ALaidStage laid) =>
        job.Reveals
            ? []
            : from file in Directory.GetFiles(laid.Path, "*", SearchOption.AllDirectories)
            where
                Path.GetFileName(file) != "specs.txt"
                && !new[] { "/demo/", "/secret/", "/past/" }.Any(folder => file.Contains(folder, StringComparison.Ordinal))
            where File.ReadAllText(file).Contains(Stages.HiddenName, StringComparison.Ordinal)
            select $"NAMED: {Path.GetFileName(file)} holds a spec's name";

    /// <summary>What is not well when the fault is over: the command is asked again, an act is entered, the study is verified.</summary>
    /// <param name="job">What was done.</param>
    /// <param name="laid">Where.</param>
    /// <param name="isRenameAtomic">No: a power cut may leave the old name beside the new one, as on file systems without a journal; the
    /// file is whole under the new one.</param>
    public static IEnumerable<string> OpenedAgain(Job job, ALaidStage laid, bool isRenameAtomic = true) =>
        job.TakesActs ? EnteredAgain(job, laid) : [.. AskedAgain(job, laid, isRenameAtomic), .. EnteredAgain(job, laid)];

    // a command that refuses, since what it makes is there already, clears nothing up behind a power cut
    private static string[] AskedAgain(Job job, ALaidStage laid, bool isRenameAtomic)
    {
        ProgramRun again = ProgramRun.In(laid.Path, [.. job.Words]);
        return [.. Stuck(job, again), .. isRenameAtomic || again.Code == 0 ? Left(laid, isRenameAtomic) : []];
    }

    private static string[] Stuck(Job job, ProgramRun again)
    {
        bool isDone = again.Code == 0 || (job.Done.Length > 0 && again.Said.Contains(job.Done, StringComparison.Ordinal));
        return isDone ? [] : [$"STUCK: asked again it ended with {again.Code}: {again.Said.Trim()}"];
    }

    private static IEnumerable<string> Left(ALaidStage laid, bool isRenameAtomic) =>
        from left in Directory.GetFiles(laid.Path, "*", SearchOption.AllDirectories).Where(IsLeftOver)
        where isRenameAtomic || !File.Exists(Path.ChangeExtension(left, null))
        select $"LEFT: {Path.GetFileName(left)}";

    /// <summary>What is not well when an act is entered and the study is verified.</summary>
    public static IEnumerable<string> EnteredAgain(Job job, ALaidStage laid)
    {
        if (!File.Exists(Path.ChangeExtension(laid.Here(job.Study), ".journal")) && !File.Exists(laid.Here(job.Study)))
        {
            return [];
        }

        // what was tried with the real program and a failing disk is looked at here in this process, on a disk that is well
        (int entered, string answer) = InThisProcess(laid, $"; {AllIsWell}\n", "enter", laid.Here(job.Study));
        (int verified, string verdict) = InThisProcess(laid, "", "verify", laid.Here(job.Study));
        return entered == 0 && verified == 0
            ? []
            : [$"STUCK: opened again it ended with {entered}, verify with {verified}: {answer.Trim()} {verdict.Trim()}"];
    }

    private static (int Code, string Said) InThisProcess(ALaidStage laid, string typed, params string[] words)
    {
        StringWriter said = new();
        Surroundings outside = new()
        {
            Input = new StringReader(typed),
            Output = said,
            Error = said,
            Clock = TimeProvider.System,
            Lot = new SystemLot(),
            StateFolder = laid.Here("state/fieldsession"),
            Laptop = Laptop.Value,
        };
        return (CommandLine.Run(words, outside), $"{said}");
    }

    private static bool IsLeftOver(string file) => Path.GetFileName(file).EndsWith(".unfinished", StringComparison.Ordinal);
}
