using FieldSession.Journal;

namespace FieldSession.Tests.Faults;

/// <summary>The real program, whose flushes fail while it takes acts: none of them may be answered 'ok' and be gone.</summary>
[Collection(FaultTests.Collection)]
public sealed class AFlushThatFailsTests(Stages stages) : IClassFixture<Stages>
{
    private static readonly string[] Typed = [.. Enumerable.Range(1, 12).Select(act => $"; act {act}")];

    [CallFaultFact]
    public void Where_every_flush_from_the_third_on_fails_no_further_act_is_answered_ok_and_each_is_kept_in_a_second_place()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        IReadOnlyList<Line> before = Invariant.LinesOf(laid.Here("day.study"));
        ProgramRun run = Enter(laid, new CallFault("fsync", 3, 0, CallFault.InputOutput, ".journal"));

        Assert.Equal(3, run.Code);
        string[] refused = [.. run.Answers.Where(answer => answer.StartsWith("no ", StringComparison.Ordinal))];
        Assert.InRange(refused.Length, Typed.Length - 2, Typed.Length);
        Assert.All(refused, answer => Assert.Contains("not saved", answer, StringComparison.Ordinal));
        Assert.Contains("NOT SAVED", run.Messages, StringComparison.Ordinal);
        string kept = File.ReadAllText(Assert.Single(Directory.GetFiles(laid.Here("state"), "*.unsaved", SearchOption.AllDirectories)));
        Assert.All(Typed[^refused.Length..], act => Assert.Contains(act, kept, StringComparison.Ordinal));
        Assert.Empty(BrokenIn(laid, before, run));
    }

    [CallFaultFact]
    public void Where_one_flush_fails_the_text_is_read_back_and_written_again_and_the_act_counts()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        IReadOnlyList<Line> before = Invariant.LinesOf(laid.Here("day.study"));
        ProgramRun run = Enter(laid, new CallFault("fsync", 3, 1, CallFault.InputOutput, ".journal"));

        Assert.Equal(0, run.Code);
        Assert.Equal(Typed.Length, run.Answers.Count(answer => answer.StartsWith("ok ", StringComparison.Ordinal)));
        Assert.Empty(BrokenIn(laid, before, run));
    }

    private static ProgramRun Enter(ALaidStage laid, CallFault fault) =>
        ProgramRun.In(
            laid.Path,
            ["enter", "day.study"],
            string.Concat(Typed.Select(act => $"{act}\n")),
            CallFaults.Words(laid.Path, fault, laid.Record)
        );

    private static IEnumerable<string> BrokenIn(ALaidStage laid, IReadOnlyList<Line> before, ProgramRun run)
    {
        Assert.Equal(0, ProgramRun.In(laid.Path, ["enter", "day.study"]).Code);
        Assert.Equal(0, ProgramRun.In(laid.Path, ["verify", "day.study"]).Code);
        return new Invariant(before).BrokenInStudy(
            Invariant.LinesOf(laid.Here("day.study")),
            Typed,
            run.Answers,
            run.Said,
            line => line.Kind == EntryKinds.Joined
        );
    }
}
