using FieldSession.Journal;
using FieldSession.Tests.Crashes;

namespace FieldSession.Tests.Faults;

/// <summary>Several programs at one study at the same time. They mostly wait for each other, so other tests run beside them.</summary>
public sealed class TwoProgramsTests(Stages stages) : IClassFixture<Stages>
{
    private static readonly int Rounds = FaultTests.Number("FIELDSESSION_ROUNDS", 2);

    [Fact]
    public async Task While_one_program_enters_others_look_or_are_sent_away_and_no_act_is_lost()
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        string study = laid.Here("day.study");
        IReadOnlyList<Line> before = Invariant.LinesOf(study);
        using RunningProgram first = new("enter", study);
        List<string> typed = [];
        for (int round = 1; round <= Rounds; round++)
        {
            string[] acts = [.. Enumerable.Range(1, 10).Select(act => $"; round {round}, act {act}")];
            typed.AddRange(acts);
            first.Type(acts);
            first.WaitForAnswers(typed.Count);
            Task<ProgramRun> entering = Task.Run(() => ProgramRun.In(laid.Path, ["enter", "day.study"], "; from the second window\n"));
            Task<ProgramRun> joining = Task.Run(() => ProgramRun.In(laid.Path, ["merge", "day.study", "day.study"]));
            ProgramRun looking = ProgramRun.In(laid.Path, ["verify", "day.study"]);
            (ProgramRun second, ProgramRun merging) = (await entering, await joining);

            Assert.Equal((3, 3), (second.Code, merging.Code));
            Assert.Contains("open in another window", second.Said, StringComparison.Ordinal);
            Assert.Empty(second.Answers);
            Assert.DoesNotContain("LOST", looking.Said.ToUpperInvariant(), StringComparison.Ordinal);
        }

        first.EndInput();
        Assert.Equal(0, first.WaitForEnd());
        Assert.Equal(typed.Count, first.Acknowledged.Count);
        Assert.Empty(
            new Invariant(before).BrokenInStudy(
                Invariant.LinesOf(study),
                [.. typed],
                [.. first.Answers],
                "",
                line => line.Kind == EntryKinds.Joined
            )
        );
        Assert.Equal(0, ProgramRun.In(laid.Path, ["verify", "day.study"]).Code);
    }

    [CallFaultFact]
    public void Where_every_call_takes_as_long_as_on_a_share_far_away_each_act_is_answered_and_there_and_others_can_look()
    {
        foreach (string call in new[] { "write", "fsync", "open" })
        {
            using ALaidStage laid = stages.Lay(DayStage.Ready);
            IReadOnlyList<Line> before = Invariant.LinesOf(laid.Here("day.study"));
            string[] typed = ["; far away", "; and slow", "; but safe"];
            CallFault slow = new(call, 1, 0, "slow");
            string lines = string.Concat(typed.Select(act => $"{act}\n"));
            Task<ProgramRun> first = Task.Run(() =>
                ProgramRun.In(laid.Path, ["enter", "day.study"], lines, CallFaults.Words(laid.Path, slow, laid.Record))
            );
            bool HasAnswered() => File.Exists(laid.Record) && CallMade.ReadAll(laid.Record).Any(made => made.Name == "say");
            Assert.True(SpinWait.SpinUntil(() => first.IsCompleted || HasAnswered(), TimeSpan.FromSeconds(60)));
            ProgramRun looking = ProgramRun.In(laid.Path, ["review", "day.study"]);

            Assert.Equal((0, 0), (first.Result.Code, looking.Code));
            Assert.Equal(3, first.Result.Answers.Count(answer => answer.StartsWith("ok ", StringComparison.Ordinal)));
            IReadOnlyList<Line> after = Invariant.LinesOf(laid.Here("day.study"));
            Assert.Empty(
                new Invariant(before).BrokenInStudy(after, typed, first.Result.Answers, "", line => line.Kind == EntryKinds.Joined)
            );
        }
    }
}
