using FieldSession.Journal;
using FieldSession.Tests.Crashes;

namespace FieldSession.Tests.Faults;

/// <summary>The real program on a real file system whose disk goes bad, and what is on the disk when it was mounted again.</summary>
[Collection(FaultTests.Collection)]
public sealed class FailingStickTests(Stages stages, ITestOutputHelper output) : IClassFixture<Stages>
{
    [StickTheory]
    [InlineData("ext2")]
    [InlineData("ext4")]
    public void What_was_answered_on_a_disk_that_goes_bad_is_there_when_it_is_mounted_again(string kind)
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        using FailingStick stick = new(kind);
        string study = Path.Combine(stick.Path, "day", "day.study");
        ALaidStage.Copy(laid.Path, Path.Combine(stick.Path, "day"));
        IReadOnlyList<Line> before = Invariant.LinesOf(study);
        string[] typed = [.. Enumerable.Range(1, 60).Select(act => $"; act {act}, {new string('x', 300)}")];
        using RunningProgram program = RunningProgram.With([("XDG_STATE_HOME", laid.Here("state"))], "enter", study);
        program.Type(typed[..10]);
        program.WaitForAnswers(10);
        stick.Fail();
        program.Type(typed[10..]);
        program.EndInput();
        int code = program.WaitForEnd();

        stick.Remount();
        string[] answers = [.. program.Answers];
        string said = string.Join('\n', program.Messages);
        string[] broken =
        [
            .. new Invariant(before).BrokenInStudy(Opened(study), typed, answers, said, line => line.Kind == EntryKinds.Joined),
        ];
        output.WriteLine(
            $"{kind}: {program.Acknowledged.Count} acts acknowledged, {program.Refused.Count} refused, exit code {code}, "
                + $"{broken.Length} broken"
        );
        Assert.True(broken.Length == 0, string.Join('\n', broken));
        Assert.NotEmpty(program.Refused);
        Assert.Equal(3, code);
        Assert.All(program.Refused, refusal => Assert.Contains("not saved", refusal, StringComparison.Ordinal));
    }

    [StickTheory]
    [InlineData("ext2", false)]
    [InlineData("ext4", false)]
    [InlineData("ext2", true)]
    [InlineData("ext4", true)]
    public void A_stick_pulled_while_copies_are_made_is_said_and_the_day_goes_on(string kind, bool isDetached)
    {
        using ALaidStage laid = stages.Lay(DayStage.Ready);
        using FailingStick stick = new(kind);
        string study = laid.Here("day.study");
        IReadOnlyList<Line> before = Invariant.LinesOf(study);
        string[] typed =
        [
            $"run {stages.Codes[0]}",
            "5860",
            "6365",
            "71",
            $"run {stages.Codes[1]}",
            "5961",
            "6264",
            "72",
            "; after the pull",
        ];
        Directory.CreateDirectory(Path.Combine(stick.Path, "copies"));
        using RunningProgram program = RunningProgram.With(
            [("XDG_STATE_HOME", laid.Here("state"))],
            "enter",
            study,
            "--backup",
            Path.Combine(stick.Path, "copies")
        );
        program.Type(typed[..5]);
        program.WaitForAnswers(5);
        Assert.True(
            SpinWait.SpinUntil(() => File.Exists(Path.Combine(stick.Path, "copies", "day.study")), TimeSpan.FromSeconds(60)),
            "run 1 was not copied"
        );
        (isDetached ? stick.Detach : (Action)stick.Pull)();
        program.Type(typed[5..]);
        program.EndInput();
        _ = program.WaitForEnd();

        string said = string.Join('\n', program.Messages);
        output.WriteLine($"{kind}: {program.Acknowledged.Count} acts acknowledged; said: {said.Trim()}");
        Assert.Empty(program.Refused);
        Assert.True(
            !isDetached || !Directory.EnumerateFileSystemEntries(stick.Path).Any(),
            "a copy was laid into the empty place of the stick"
        );
        Assert.Contains(stick.Path, said, StringComparison.Ordinal);
        Assert.Empty(
            new Invariant(before).BrokenInStudy(Opened(study), typed, [.. program.Answers], said, line => line.Kind == EntryKinds.Joined)
        );
    }

    private static IReadOnlyList<Line> Opened(string study)
    {
        using RunningProgram again = new("enter", study);
        again.EndInput();
        Assert.Equal(0, again.WaitForEnd());
        return Invariant.LinesOf(study);
    }
}
