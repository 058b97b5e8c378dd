using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Journaling;

namespace FieldSession.Tests.Crashes;

/// <summary>Set FIELDSESSION_POWER_CUTS to a number to try more states than the few hundred of every build.</summary>
public sealed class PowerCutTests
{
    [Fact]
    public void No_power_cut_loses_an_acknowledged_line()
    {
        int states = int.TryParse(Environment.GetEnvironmentVariable("FIELDSESSION_POWER_CUTS"), out int more) ? more : 300;
        List<Line> lines = SomeLines.Of(40);
        IReadOnlyList<DiskEvent> events = DayWithTwoSittings(lines);

        for (int seed = 0; seed < states; seed++)
        {
            Random chance = new(seed);
            PowerCut cut = new(chance);
            // not before the study was first made: until then there is nothing to lose
            MemoryDisk disk = cut.After(events.Take(chance.Next(FirstAcknowledged(events), events.Count)));

            AssertSafe(disk, lines, cut.Acknowledged, seed);
        }
    }

    private static int FirstAcknowledged(IReadOnlyList<DiskEvent> events) =>
        events.Select((happened, i) => (happened, i)).First(pair => pair.happened.Act == DiskAct.Acknowledge).i;

    private static IReadOnlyList<DiskEvent> DayWithTwoSittings(List<Line> lines)
    {
        MemoryDisk disk = new();
        using (StudyFile study = CrashDay.Create(disk))
        {
            AppendAll(study, disk, lines[..25]);
        }

        using (StudyFile study = CrashDay.Open(disk))
        {
            AppendAll(study, disk, lines[25..]);
        }

        return disk.Events;
    }

    private static void AppendAll(StudyFile study, MemoryDisk disk, List<Line> lines) =>
        lines.ForEach(line =>
        {
            study.Append(line);
            disk.Note(line.Number);
        });

    private static void AssertSafe(MemoryDisk disk, List<Line> lines, int acknowledged, int seed)
    {
        Line after;
        using (StudyFile study = CrashDay.Open(disk))
        {
            Assert.True(study.Lines.Count >= acknowledged, $"seed {seed}: {study.Lines.Count} lines of {acknowledged}");
            Assert.True(lines.Take(study.Lines.Count).SequenceEqual(study.Lines), $"seed {seed}: other lines");
            after = SomeLines.After(study.Lines[^1]);
            study.Append(after);
            Assert.False(study.IsStoreBehind, $"seed {seed}: {study.WhyStoreIsBehind}");
        }

        using StudyFile again = CrashDay.Open(disk);
        Assert.True(again.Lines[^1] == after && again.Repaired.Count == 0, $"seed {seed}: {string.Join(' ', again.Repaired)}");
    }
}
