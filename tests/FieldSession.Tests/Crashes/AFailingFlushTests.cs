using FieldSession.Journal;
using FieldSession.Store.Disks;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Journaling;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// A disk that says no to a flush is believed: what was answered is on the disk, and what was dropped is written again or said.
/// </summary>
public sealed class AFailingFlushTests
{
    // A pipe can't be flushed: fsync(2) answers EINVAL, which the runtime's own flush passes over in silence.
    [Fact]
    public void Our_flush_says_no_where_the_runtime_says_nothing()
    {
        using SafeFileHandle device = File.OpenHandle("/dev/null", FileMode.Open, FileAccess.Write);
        RandomAccess.FlushToDisk(device);
        IOException refusal = Assert.Throws<IOException>(() => DiskFlush.File(device, "/dev/null"));
        Assert.Contains("/dev/null", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(22, refusal.HResult);
    }

    [Fact]
    public void A_file_and_a_folder_that_can_be_flushed_are()
    {
        using Folder folder = new();
        using SafeFileHandle file = File.OpenHandle(folder.Text, FileMode.CreateNew, FileAccess.ReadWrite);
        RandomAccess.Write(file, [1, 2, 3], 0);
        DiskFlush.File(file, folder.Text);
        DiskFlush.Folder(folder.Path);
        Assert.Throws<IOException>(() => DiskFlush.Folder(folder["nowhere"]));
    }

    [Fact]
    public void Whichever_flush_fails_every_line_that_was_taken_is_on_the_disk_after_a_power_cut()
    {
        for (int failing = 1; failing <= 60; failing++)
        {
            int flushes = 0;
            int now = failing;
            List<Line> taken = Take(path => path == CrashDay.Paths.Journal && ++flushes >= now && flushes < now + 2, out MemoryDisk disk);
            using StudyFile study = CrashDay.Open(disk.AfterPowerCut());
            Assert.Equal(taken, study.Lines);
        }
    }

    [Fact]
    public void A_line_whose_flush_failed_once_is_written_again_and_taken()
    {
        int flushes = 0;
        List<Line> taken = Take(path => path == CrashDay.Paths.Journal && ++flushes == 5, out _);
        Assert.Equal(30, taken.Count);
    }

    [Fact]
    public void A_disk_that_flushes_no_more_takes_no_more_line()
    {
        int flushes = 0;
        List<Line> taken = Take(path => path == CrashDay.Paths.Journal && ++flushes > 10, out MemoryDisk disk);
        Assert.Equal(10, taken.Count);
        using StudyFile study = CrashDay.Open(disk.AfterPowerCut());
        Assert.Equal(taken, study.Lines);
    }

    [Fact]
    public void A_disk_that_says_yes_to_a_flush_and_has_nothing_takes_no_line()
    {
        int flushes = 0;
        List<Line> taken = Take(
            new MemoryDisk { LiesAtFlush = path => path == CrashDay.Paths.Journal && ++flushes is > 5 and < 9 },
            out MemoryDisk disk
        );
        Assert.InRange(taken.Count, 25, 29);
        using StudyFile study = CrashDay.Open(disk.AfterPowerCut());
        Assert.Equal(taken, study.Lines);
    }

    [Fact]
    public void Lines_that_the_disk_loses_after_it_confirmed_them_are_said_and_written_again()
    {
        List<Line> lines = SomeLines.Of(12);
        bool fails = false;
        MemoryDisk disk = new() { FailsToFlush = path => fails && path == CrashDay.Paths.Journal };
        using (StudyFile study = CrashDay.Create(disk))
        {
            lines[..10].ForEach(study.Append);
            disk.Lose(CrashDay.Paths.Journal, from: TextOnDisk.LengthOf(lines[..7]));
            fails = true;

            LineNotSafeException refusal = Assert.Throws<LineNotSafeException>(() => study.Append(lines[10]));
            Assert.Contains("The disk also lost line 8 and what follows", refusal.Message, StringComparison.Ordinal);

            fails = false;
            study.Append(lines[10]);
            study.Append(lines[11]);
        }

        using StudyFile again = CrashDay.Open(disk.AfterPowerCut());
        Assert.Equal(lines, again.Lines);
    }

    private static List<Line> Take(Func<string, bool> failsToFlush, out MemoryDisk disk) =>
        Take(new MemoryDisk { FailsToFlush = failsToFlush }, out disk);

    private static List<Line> Take(MemoryDisk used, out MemoryDisk disk)
    {
        disk = used;
        List<Line> taken = [];
        using StudyFile study = CrashDay.Create(disk);
        for (int tries = 0; tries < 30; tries++)
        {
            Line line = SomeLines.After(taken.LastOrDefault());
            try
            {
                study.Append(line);
                taken.Add(line);
            }
            catch (LineNotSafeException)
            {
                // not taken, and said so
            }
        }

        return taken;
    }
}
