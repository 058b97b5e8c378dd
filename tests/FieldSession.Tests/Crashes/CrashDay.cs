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
    /// A disk as a killed program leaves it: the first lines merged, the others only in LiteDB's log, a transaction each. How
    /// many lines share a transaction is otherwise the writer thread's luck, and a damage drawn by lot would hit something else each time.
    /// </summary>
    public static MemoryDisk Killed(IEnumerable<Line> merged, IEnumerable<Line> logged)
    {
        MemoryDisk disk = new();
        using (StudyFile study = Create(disk))
        {
            merged.ToList().ForEach(study.Append);
        }

        using StudyFile open = Open(disk);
        foreach (Line line in logged)
        {
            open.Append(line);
            Assert.True(SpinWait.SpinUntil(() => IsFollowed(disk), TimeSpan.FromSeconds(60)), $"line {line.Number} does not come to LiteDB");
        }

        return disk.Copy();
    }

    private static bool IsFollowed(MemoryDisk disk) => JournalCheck.Of(disk, Paths) is { StoreBehindLines: 0, Holds: true };
}
