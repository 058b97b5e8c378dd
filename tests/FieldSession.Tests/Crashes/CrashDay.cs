using System.Text;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Crashes;

/// <summary>A day written to a disk in memory.</summary>
internal static class CrashDay
{
    public static readonly StudyPaths Paths = StudyPaths.Of("/road/day.study");
    public static readonly StudyPaths RescuedPaths = StudyPaths.Of("/desk/saved.study");

    public static StudyFile Create(MemoryDisk disk) => new StudyOpening(disk, Paths, new StoppedClock()).Create();

    public static StudyFile Open(MemoryDisk disk) => new StudyOpening(disk, Paths, new StoppedClock()).Open();

    public static StudyRescue Rescue(MemoryDisk disk) => StudyRescue.Of(disk, Paths, RescuedPaths, new StoppedClock());

    /// <summary>
    /// A disk as a killed program leaves it: the first lines merged, the others only in LiteDB's log, so many in each transaction.
    /// How many share one is otherwise the writer thread's luck, and a damage drawn by lot would hit something else each time.
    /// </summary>
    public static MemoryDisk Killed(List<Line> lines, int merged, params IEnumerable<int> transactions)
    {
        MemoryDisk disk = new();
        using (LiteStore closed = LiteStore.Open(disk, Paths))
        {
            closed.Insert(lines[..merged], LineFact.Of(lines), stored: 0);
        }

        using LiteStore killed = LiteStore.Open(disk, Paths);
        int stored = merged;
        foreach (int count in transactions)
        {
            killed.Insert(lines.GetRange(stored, count), LineFact.Of(lines.GetRange(stored, count)), stored);
            stored += count;
        }

        Assert.Equal(lines.Count, stored);
        MemoryDisk left = disk.Copy();
        left[Paths.Journal] = [.. lines.SelectMany(line => Encoding.UTF8.GetBytes($"{line}\n"))];
        return left;
    }

    /// <summary>The same, each line a transaction.</summary>
    public static MemoryDisk Killed(List<Line> lines, int merged) => Killed(lines, merged, Enumerable.Repeat(1, lines.Count - merged));
}
