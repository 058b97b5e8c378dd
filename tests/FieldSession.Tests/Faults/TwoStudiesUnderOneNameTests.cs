using FieldSession.Tests.Making;

namespace FieldSession.Tests.Faults;

/// <summary>The real program meets the journal of one study beside the LiteDB file of another, both called day.study.</summary>
[Collection(FaultTests.Collection)]
public sealed class TwoStudiesUnderOneNameTests(Stages stages) : IClassFixture<Stages>
{
    [Theory]
    [InlineData("review day.study")]
    [InlineData("enter day.study")]
    [InlineData("export day.study --out out")]
    [InlineData("report day.study --out out")]
    [InlineData("score day.study")]
    [InlineData("compare day.study")]
    [InlineData("predict day.study --lock Ro=no")]
    [InlineData("seal day.study --paper")]
    [InlineData("merge day.study whole/day.study")]
    [InlineData("merge whole/day.study day.study")]
    public void Every_command_names_both_and_changes_nothing(string words)
    {
        using ALaidStage laid = Fused();
        Dictionary<string, string> before = FilesOf(laid);
        ProgramRun run = ProgramRun.In(laid.Path, words.Split(' '), "; an act\n");

        Assert.True(run.Code is 2 or 3, $"{run.Code}: {run.Said}");
        Assert.Contains("two studies", run.Said, StringComparison.Ordinal);
        Assert.Contains("day.journal", run.Said, StringComparison.Ordinal);
        Assert.Contains("day.study", run.Said, StringComparison.Ordinal);
        Assert.Equal(before, FilesOf(laid));
    }

    [Fact]
    public void A_check_does_not_hold_and_changes_nothing()
    {
        using ALaidStage laid = Fused();
        Dictionary<string, string> before = laid.Files();
        ProgramRun run = ProgramRun.In(laid.Path, ["verify", "day.study"]);

        Assert.True(run.Code == 1, $"{run.Code}: {run.Said}");
        Assert.Contains("does NOT hold", run.Said, StringComparison.Ordinal);
        Assert.DoesNotContain("freeze hold", run.Said, StringComparison.Ordinal);
        Assert.Equal(before, laid.Files());
    }

    // the study that is whole is opened for the merge, and its LiteDB file is brought up to its text
    private static Dictionary<string, string> FilesOf(ALaidStage laid) =>
        laid.Files()
            .Where(file => !file.Key.StartsWith("state/", StringComparison.Ordinal) && file.Key != "whole/day.study")
            .ToDictionary();

    // yesterday's text beside today's LiteDB file; the one that is whole lies in a folder beside them
    private ALaidStage Fused()
    {
        ALaidStage laid = stages.Lay(DayStage.Driven);
        using AtThePrompt yesterday = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(2);
        Directory.CreateDirectory(laid.Here("whole"));
        File.Copy(laid.Here("day.study"), laid.Here("whole/day.study"));
        File.Copy(laid.Here("day.journal"), laid.Here("whole/day.journal"));
        File.Copy(yesterday.Here("day.journal"), laid.Here("day.journal"), overwrite: true);
        return laid;
    }
}
