using FieldSession.Journal;

namespace FieldSession.Tests.Faults;

/// <summary>One wrong line at the reveal of the real program ends no evening.</summary>
[Collection(FaultTests.Collection)]
public sealed class ASlipAtTheRealRevealTests(Stages stages) : IClassFixture<Stages>
{
    [Fact]
    public void A_mistyped_mark_stores_nothing_and_the_right_one_opens_the_key()
    {
        using ALaidStage laid = stages.Lay(DayStage.Predicted);
        int before = Invariant.LinesOf(laid.Here("day.study")).Count;
        string[] right = [.. stages.RevealWords];
        int mark = Array.IndexOf(right, "--mark") + 1;
        ProgramRun mistyped = ProgramRun.In(laid.Path, [.. right[..mark], right[mark][..4] + "PALEGRAY", .. right[(mark + 1)..]]);

        Assert.True(mistyped.Code is 1 or 2, $"{mistyped.Code}: {mistyped.Said}");
        Assert.DoesNotContain(Stages.HiddenName, mistyped.Said, StringComparison.Ordinal);
        Assert.Equal(before, Invariant.LinesOf(laid.Here("day.study")).Count);
        Assert.Equal(0, ProgramRun.In(laid.Path, right).Code);
    }

    [Fact]
    public void A_paper_key_is_refused_where_a_commitment_was_made_and_the_key_file_still_opens()
    {
        using ALaidStage laid = stages.Lay(DayStage.Predicted);
        int before = Invariant.LinesOf(laid.Here("day.study")).Count;
        string[] paper =
        [
            .. stages
                .Codes.Zip(["ONE", "TWO"])
                .Select(line => $"{line.First}={line.Second}")
                .SelectMany(line => new[] { "--paper", line, "--mark", line }),
        ];
        ProgramRun refused = ProgramRun.In(
            laid.Path,
            ["reveal", "day.study", .. paper, "--control", "ONE", "--reader", "Ro", "--reader", "Ilse"]
        );

        Assert.True(refused.Code is 1 or 2, $"{refused.Code}: {refused.Said}");
        Assert.Equal(before, Invariant.LinesOf(laid.Here("day.study")).Count);
        Assert.Equal(0, ProgramRun.In(laid.Path, [.. stages.RevealWords]).Code);
    }

    [Fact]
    public void Marks_are_read_again_as_an_act_of_their_own_and_both_readings_stay()
    {
        using ALaidStage laid = stages.Lay(DayStage.Revealed);
        IReadOnlyList<Line> before = Invariant.LinesOf(laid.Here("day.study"));
        ProgramRun again = ProgramRun.In(laid.Path, ["reveal", "day.study", "--again", .. stages.MarkWords]);
        IReadOnlyList<Line> after = Invariant.LinesOf(laid.Here("day.study"));

        Assert.True(again.Code == 0, again.Said);
        Assert.Equal(before.Select(line => line.Hash), after.Take(before.Count).Select(line => line.Hash));
        Assert.Contains(after.Skip(before.Count), line => line.Kind == "marks");
        Assert.Contains(after, line => line.Kind == "opened");
    }

    [Fact]
    public void A_control_sequence_typed_as_a_mark_reaches_no_terminal_and_no_file()
    {
        using ALaidStage laid = stages.Lay(DayStage.Predicted);
        string[] right = [.. stages.RevealWords];
        int mark = Array.IndexOf(right, "--mark") + 1;
        ProgramRun run = ProgramRun.In(
            laid.Path,
            [.. right[..mark], right[mark][..4] + "\u001b[2J\u001b]0;x\a", .. right[(mark + 1)..], "--as-read"]
        );
        ProgramRun review = ProgramRun.In(laid.Path, ["review", "day.study"]);
        ProgramRun export = ProgramRun.In(laid.Path, ["export", "day.study", "--out", "tables"]);

        Assert.DoesNotContain('\u001b', run.Said + review.Said + export.Said);
        Assert.All(Directory.GetFiles(laid.Here("tables")), file => Assert.DoesNotContain('\u001b', File.ReadAllText(file)));
    }
}
