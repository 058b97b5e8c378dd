using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

public sealed class BackupTests : IDisposable
{
    private readonly Folder _folder = new();
    private readonly Folder _stick = new();

    public BackupTests() => new EndlessDay(_folder).Begin();

    public void Dispose()
    {
        _folder.Dispose();
        _stick.Dispose();
    }

    [Fact]
    public void A_copy_lies_on_the_stick_after_each_run_and_at_the_end()
    {
        Outside outside = new(Lines());

        int code = outside.Run("enter", _folder.Study, "--backup", _stick.Path);

        Assert.Equal(ExitCode.Done, code);
        Assert.Empty(outside.Messages);
        Assert.Equal(File.ReadAllBytes(_folder.Text), File.ReadAllBytes(_stick.Text));
        Assert.True(JournalCheck.Of(_stick.Study).Holds);
        using StudyFile copy = _stick.Open();
        Assert.Empty(copy.Repaired);

        IEnumerable<string> Lines()
        {
            foreach (string line in new[] { "run 417", "5860", "5961", "72" })
            {
                yield return line;
            }

            Assert.True(SpinWait.SpinUntil(() => File.Exists(_stick.Study), TimeSpan.FromSeconds(20)), "no copy after the run");
            // three that were laid, the note of this laptop on them, and what was typed
            Assert.Equal(9, File.ReadLines(_stick.Text).Count());
            yield return "; good road";
        }
    }

    [Fact]
    public void A_missing_stick_is_said_at_once_and_once_for_each_run_and_entry_goes_on()
    {
        string missing = _stick["pulled out"];
        Outside outside = new("run 417", "5860", "5961", "72", "run 862", "5860", "5961", "72");

        int code = outside.Run("enter", _folder.Study, "--backup", missing);

        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(8, outside.Answers.Count(answer => answer.StartsWith("ok ", StringComparison.Ordinal)));
        Assert.Equal(
            [
                $"no copies yet: {missing} is not there; plug the stick in, or name another folder with '--backup'",
                $"run 1 is not copied to {missing}: there is no such folder",
                $"run 2 is not copied to {missing}: there is no such folder",
            ],
            outside.Messages
        );
    }

    [Fact]
    public void Another_study_on_the_stick_is_left_alone()
    {
        File.WriteAllText(_stick.Text, "another study");
        Outside outside = new("run 417", "end");

        Assert.Equal(ExitCode.Done, outside.Run("enter", _folder.Study, "--backup", _stick.Path));

        Assert.Contains(
            "another study, or a newer state of this one, is there already",
            Assert.Single(outside.Messages),
            StringComparison.Ordinal
        );
        Assert.Equal("another study", File.ReadAllText(_stick.Text));
    }

    [Fact]
    public async Task Runs_are_copied_while_lines_are_appended()
    {
        using StudyFile study = StudyFile.Create(_stick["other.study"], new StoppedClock());
        List<FieldSession.Journal.Line> lines = SomeLines.Of(300);
        using Folder second = new();
        Task copying = Task.Run(() =>
        {
            for (int i = 0; i < 10; i++)
            {
                study.CopyTo(second.Path);
            }
        });

        lines.ForEach(study.Append);
        await copying;

        JournalCheck copy = JournalCheck.Of(second["other.study"]);
        Assert.True(copy.Holds, $"{copy}");
    }
}
