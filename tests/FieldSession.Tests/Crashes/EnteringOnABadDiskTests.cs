using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// What the crew meets when the disk does not take an act: it is told, nothing before is lost, and the next act is taken as soon as the
/// disk is well.
/// </summary>
public sealed class EnteringOnABadDiskTests
{
    private readonly MemoryDisk _disk = new();

    public EnteringOnABadDiskTests()
    {
        using StudyFile study = CrashDay.Create(_disk);
        foreach (Line line in new ADay().Ready().Typed("run 417").Journal.Lines)
        {
            study.Append(line);
        }
    }

    [Fact]
    public void On_a_full_disk_an_act_is_not_acknowledged_and_entry_goes_on_by_itself_once_there_is_room()
    {
        AssertToldAndGoesOn(
            "the disk is full",
            "Make room",
            breaks: () => _disk.Room = _disk.Used,
            heals: () => _disk.Room = long.MaxValue
        );
    }

    [Fact]
    public void A_drive_that_was_pulled_out_is_taken_up_again_when_it_is_back()
    {
        AssertToldAndGoesOn("the drive fails or is gone", "Bring it back", _disk.PullOut, _disk.PlugIn);
    }

    [Theory]
    [InlineData(110, "Connection timed out", "the drive does not answer", "Check its cable or network")]
    [InlineData(37, "No locks available", "the share does not lock files", "Make its server lock files again")]
    [InlineData(116, "Stale file handle", "the drive is gone", "Bring it back")]
    public void A_network_share_that_was_away_takes_the_next_act_when_it_is_back(int number, string systemWords, string why, string remedy)
    {
        AssertToldAndGoesOn(
            why,
            remedy,
            breaks: () => _disk.IsAway = () => new IOException(systemWords, number),
            heals: () => _disk.IsAway = null
        );
    }

    [Fact]
    public void Another_file_in_the_place_of_the_pulled_out_one_is_left_alone()
    {
        byte[] other = "somebody else's\n"u8.ToArray();
        Outside outside = new(Between("5860", () => Swap(other), "5961"));

        int code = Enter(outside);

        Assert.Equal(ExitCode.Damaged, code);
        Assert.StartsWith("no 2: not saved: the drive fails or is gone", outside.Answers[1], StringComparison.Ordinal);
        Assert.Equal(other, _disk[CrashDay.Paths.Journal]);
    }

    [Fact]
    public void A_second_program_on_the_same_study_is_sent_away_with_words_that_name_it()
    {
        using Folder folder = new();
        EndlessDay day = new(folder);
        day.Begin();
        using RunningProgram first = new("enter", folder.Study);
        first.Type(["; first"]);
        first.WaitForAnswers(1);

        using RunningProgram second = new("enter", folder.Study);
        second.EndInput();

        Assert.Equal(ExitCode.Damaged, second.WaitForEnd());
        string told = string.Join(' ', second.Messages);
        Assert.Contains(folder.Study, told, StringComparison.Ordinal);
        Assert.Contains("Close it there, then open it here", told, StringComparison.Ordinal);
        first.Type(["; still first"]);
        first.EndInput();
        Assert.Equal(0, first.WaitForEnd());
        day.AssertHolds(first.Acknowledged, "the first program");
        Assert.Equal(2, first.Acknowledged.Count);
    }

    private void AssertToldAndGoesOn(string why, string remedy, Action breaks, Action heals)
    {
        Outside outside = new(Between("5860", breaks, "; while it was broken", heals, "5961", "; well again"));

        int code = Enter(outside);

        Assert.Equal(ExitCode.Damaged, code);
        Assert.Equal(["ok", "no", "ok", "ok"], outside.Answers.Select(answer => answer[..2]));
        Assert.StartsWith(
            $"no 2: not saved: {why}: line 7 is not in {CrashDay.Paths.Journal}; every line before it is. {remedy}",
            outside.Answers[1],
            StringComparison.Ordinal
        );
        // a transaction LiteDB left behind would end the whole test run here
        GC.Collect();
        GC.WaitForPendingFinalizers();
        JournalCheck check = JournalCheck.Of(_disk, CrashDay.Paths);
        Assert.True(check.Holds && check.StoreBehindLines == 0, $"{check}");
        using StudyFile again = CrashDay.Open(_disk);
        Assert.Empty(again.Repaired);
        Assert.Equal(["reading", "reading", "note"], again.Lines.TakeLast(3).Select(line => line.Kind));
        Assert.DoesNotContain(again.Lines, line => line.Json.Contains("while it was broken", StringComparison.Ordinal));
    }

    private int Enter(Outside outside)
    {
        using StudyFile study = CrashDay.Open(_disk);
        return EnterCommand.Run(Logbook.Open(study, outside.Clock, "00000000000000aa"), outside.World);
    }

    private void Swap(byte[] other)
    {
        _disk.PullOut();
        _disk[CrashDay.Paths.Journal] = other;
        _disk.PlugIn();
    }

    private static IEnumerable<string> Between(params object[] steps)
    {
        foreach (object step in steps)
        {
            if (step is string line)
            {
                yield return line;
            }
            else
            {
                ((Action)step)();
            }
        }
    }
}
