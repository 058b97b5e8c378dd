using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Journaling;

namespace FieldSession.Tests.Crashes;

public sealed class FullDiskTests
{
    [Fact]
    public void A_full_disk_refuses_the_line_and_the_same_study_goes_on_when_there_is_room()
    {
        List<Line> lines = SomeLines.Of(80);
        MemoryDisk disk = new();
        using StudyFile study = CrashDay.Create(disk);
        lines[..10].ForEach(study.Append);
        disk.Room = disk.Used + 3_000;
        int safe = AppendUntilFull(study, lines, 10);

        LineNotSafeException refusal = Assert.Throws<LineNotSafeException>(() => study.Append(lines[safe]));
        Assert.Contains($"line {safe + 1}", refusal.Message);
        Assert.Contains("day.journal", refusal.Message);

        disk.Room = long.MaxValue;
        lines[safe..].ForEach(study.Append);
        study.Dispose();

        JournalCheck check = JournalCheck.Of(disk, CrashDay.Paths);
        Assert.True(check.Holds);
        Assert.Equal(80, check.Store.LinesHolding);
        using StudyFile again = CrashDay.Open(disk);
        Assert.Equal(lines, again.Lines);
    }

    [Fact]
    public void A_store_without_room_falls_behind_and_says_so_while_the_text_goes_on()
    {
        List<Line> lines = SomeLines.Of(30);
        MemoryDisk disk = new();
        using StudyFile study = CrashDay.Create(disk);
        // room for the lines as text, but not for another page of LiteDB's
        disk.Room = disk.Used + 8_000;
        lines[..10].ForEach(study.Append);

        Assert.True(SpinWait.SpinUntil(() => study.IsStoreBehind, TimeSpan.FromSeconds(20)));
        Assert.Contains("No space left", study.WhyStoreIsBehind);

        disk.Room = long.MaxValue;
        lines[10..].ForEach(study.Append);
        Assert.True(SpinWait.SpinUntil(() => !study.IsStoreBehind, TimeSpan.FromSeconds(20)));
        study.Dispose();
        // a transaction LiteDB left behind would end the whole test run here
        GC.Collect();
        GC.WaitForPendingFinalizers();
        Assert.Equal(30, JournalCheck.Of(disk, CrashDay.Paths).Store.LinesHolding);
    }

    [Theory]
    [InlineData("/road/day.journal")]
    [InlineData("/road/day.study")]
    [InlineData("/road/day-log.study")]
    public void What_may_not_be_written_to_is_said_at_opening(string file)
    {
        MemoryDisk disk = CrashDay.Killed(SomeLines.Of(3), merged: 3);
        disk.Refuses = path => path == file ? new UnauthorizedAccessException($"Access to '{path}' is denied.") : null;

        StudyUnwritableException refusal = Assert.Throws<StudyUnwritableException>(() => CrashDay.Open(disk));

        Assert.Contains(file, refusal.Message);
    }

    private static int AppendUntilFull(StudyFile study, List<Line> lines, int from)
    {
        int safe = from;
        // too little for another page of LiteDB's: the text fills it
        while (safe < lines.Count && Safe(study, lines[safe]))
        {
            safe++;
        }

        return safe;
    }

    private static bool Safe(StudyFile study, Line line)
    {
        try
        {
            study.Append(line);
            return true;
        }
        catch (LineNotSafeException)
        {
            return false;
        }
    }
}
