using System.Diagnostics;
using FieldSession.Driving;
using FieldSession.Journal;

namespace FieldSession.Tests.Faults;

/// <summary>
/// Files and streams that are not what the real program expects: each is told in words a crew can read, nothing is changed, nothing waits
/// for ever.
/// </summary>
[Collection(FaultTests.Collection)]
public sealed class OddFilesTests(Stages stages) : IClassFixture<Stages>
{
    [Fact]
    public void A_start_that_was_cut_short_is_made_again_under_the_same_name()
    {
        using ALaidStage laid = stages.Lay(DayStage.Planned);
        File.WriteAllBytes(laid.Here("day.journal"), []);

        Assert.Equal(0, ProgramRun.In(laid.Path, ["start", "plan", "day.study"]).Code);
        Assert.Equal(0, ProgramRun.In(laid.Path, ["verify", "day.study"]).Code);
        Assert.Equal("plan", Assert.Single(Invariant.LinesOf(laid.Here("day.study"))).Kind);
    }

    [StickTheory]
    [InlineData("review")]
    [InlineData("compare")]
    [InlineData("score")]
    [InlineData("verify")]
    [InlineData("report --out")]
    [InlineData("export --out")]
    public void A_finished_study_on_a_medium_that_can_only_be_read_is_read(string words)
    {
        using ALaidStage laid = stages.Lay(DayStage.Revealed);
        using FailingStick stick = new("ext4");
        File.Copy(laid.Here("day.study"), Path.Combine(stick.Path, "day.study"));
        File.Copy(laid.Here("day.journal"), Path.Combine(stick.Path, "day.journal"));
        stick.MakeReadOnly();
        string[] parts = words.Split(' ');
        string[] where = parts.Length > 1 ? [parts[1], "out"] : [];

        ProgramRun run = ProgramRun.In(laid.Path, [parts[0], Path.Combine(stick.Path, "day.study"), .. where]);
        Assert.True(run.Code == 0, $"{run.Code}: {run.Said}");
        Assert.Equal(where.Length > 0, Directory.Exists(laid.Here("out")));
        ProgramRun enter = ProgramRun.In(laid.Path, ["enter", Path.Combine(stick.Path, "day.study")], "; an act\n");
        Assert.True(enter.Code == 3, $"{enter.Code}: {enter.Said}");
    }

    [Fact]
    public void Control_sequences_in_a_line_with_the_right_hash_reach_neither_terminal_nor_table()
    {
        using ALaidStage laid = stages.Lay(DayStage.Driven);
        Line last = Invariant.LinesOf(laid.Here("day.study"))[^1];
        NoteMade note = new("\u001b[2J\u001b]0;x\a red", Run: 1, Segment: 1);
        Line forged = EntryKinds.Of(note).Write(note, last.Number + 1, last.Hash, last.At, last.Strand);
        File.AppendAllText(laid.Here("day.journal"), $"{forged}\n");
        ProgramRun review = ProgramRun.In(laid.Path, ["review", "day.study"]);
        ProgramRun export = ProgramRun.In(laid.Path, ["export", "day.study", "--out", "new"]);

        Assert.DoesNotContain('\u001b', review.Said + export.Said);
        Assert.True(export.Code is 0 or 3, export.Said);
        Assert.All(laid.Files("new").Keys, file => Assert.DoesNotContain('\u001b', File.ReadAllText(laid.Here(file))));
    }

    [Theory]
    [InlineData("review pipe")]
    [InlineData("enter pipe")]
    [InlineData("verify pipe")]
    [InlineData("compare pipe --reference 417")]
    [InlineData("legs day.study pipe")]
    [InlineData("codes day.study pipe")]
    [InlineData("keycheck pipe")]
    [InlineData("merge day.study pipe")]
    public void A_pipe_in_the_place_of_a_file_is_refused_at_once(string words)
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        using (Process made = Process.Start("mkfifo", laid.Here("pipe")))
        {
            made.WaitForExit();
        }

        ProgramRun run = ProgramRun.In(laid.Path, words.Split(' '));
        Assert.True(run.Code is 1 or 2 or 3, $"{run.Code}: {run.Said}");
        Assert.Empty(Invariant.BrokenInWords(run, wasKilled: false, mayName: false));
    }

    [Theory]
    [InlineData("empty", "no line of it can be read")]
    [InlineData("missing", "there is no study here")]
    public void A_check_of_a_study_that_holds_nothing_says_one_thing_only(string file, string said)
    {
        using ALaidStage laid = stages.Lay(DayStage.Planned);
        if (file == "empty")
        {
            File.WriteAllBytes(laid.Here("empty.study"), []);
            File.WriteAllBytes(laid.Here("empty.journal"), []);
        }

        ProgramRun run = ProgramRun.In(laid.Path, ["verify", $"{file}.study"]);
        Assert.NotEqual(0, run.Code);
        Assert.Contains(said, run.Said, StringComparison.Ordinal);
        Assert.DoesNotContain("freeze hold", run.Said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("review day.study")]
    [InlineData("compare day.study --json")]
    [InlineData("man")]
    public void A_standard_output_that_is_full_is_told_as_such(string words)
    {
        using ALaidStage laid = stages.Lay(DayStage.Driven);
        ProgramRun run = ProgramRun.In(laid.Path, words.Split(' '), "", "/bin/sh", "-c", "exec \"$@\" >/dev/full", "sh");

        Assert.Equal(3, run.Code);
        Assert.Contains("standard output takes no more", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_with_lists_in_lists_without_end_is_refused_in_the_words_of_the_job()
    {
        using ALaidStage laid = stages.Lay(DayStage.Planned);
        File.WriteAllText(laid.Here("plan/plan.toml"), $"x = {new string('[', 3000)}{new string(']', 3000)}\n");
        ProgramRun run = ProgramRun.In(laid.Path, ["start", "plan", "day.study"]);

        Assert.Equal(2, run.Code);
        Assert.Contains("plan.toml", run.Said, StringComparison.Ordinal);
        Assert.DoesNotContain("MaxDepth", run.Said, StringComparison.Ordinal);
        Assert.Empty(Invariant.BrokenInWords(run, wasKilled: false, mayName: false));
    }

    [Fact]
    public void A_weak_passphrase_is_taken_with_a_word_of_warning()
    {
        using ALaidStage laid = stages.Lay(DayStage.Started);
        ProgramRun run = ProgramRun.In(
            laid.Path,
            ["seal", "day.study", "--specs", "specs.txt", "--key", "b.key"],
            "",
            "env",
            "FIELDSESSION_PASSPHRASE=12345678"
        );

        Assert.Equal(0, run.Code);
        Assert.Contains("this passphrase is weak", run.Messages, StringComparison.Ordinal);
    }
}
