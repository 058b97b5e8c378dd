using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Crashes;

/// <summary>Set FIELDSESSION_DAMAGES to a number to try more damages than the few hundred of every build.</summary>
public sealed class DamageTests
{
    private static readonly List<Line> Lines = SomeLines.Of(90);
    private static readonly MemoryDisk Killed = CrashDay.Killed(Lines, merged: 60);

    public static TheoryData<string> Files => [CrashDay.Paths.Study, CrashDay.Paths.Log, CrashDay.Paths.Journal];

    public static TheoryData<string, string> FilesAndDamages
    {
        get
        {
            TheoryData<string, string> data = [];
            foreach (string file in new[] { CrashDay.Paths.Study, CrashDay.Paths.Log, CrashDay.Paths.Journal })
            {
                foreach (string damage in new[] { "one bit", "cut", "512 zeros", "64 random bytes", "4096 zeros" })
                {
                    data.Add(file, damage);
                }
            }

            return data;
        }
    }

    private const int MostDamagesTried = 2000;

    [Theory]
    [MemberData(nameof(Files))]
    public void One_deleted_file_is_brought_back_by_the_others(string file)
    {
        MemoryDisk disk = Killed.Copy();
        disk.Delete(file);

        AssertNothingIsLost(disk, file);
    }

    [Theory]
    [MemberData(nameof(FilesAndDamages))]
    public void Damage_anywhere_in_one_file_loses_no_line(string file, string damage)
    {
        int cases = int.TryParse(Environment.GetEnvironmentVariable("FIELDSESSION_DAMAGES"), out int more)
            ? more / FilesAndDamages.Count + 1
            : 30;
        for (int seed = 0; seed < cases; seed++)
        {
            MemoryDisk disk = Killed.Copy();
            disk[file] = Damaged(disk[file], damage, new Random(seed));

            AssertNothingIsLost(disk, $"{file}, {damage}, seed {seed}");
        }
    }

    [Fact]
    public void Damage_that_swallows_only_what_comes_after_it_is_found_when_the_study_is_closed()
    {
        // 40 of 4,800 damages of such a log read well from both ends and break what is added next. Which ones these are differs
        // from one made log to the next, because LiteDB draws the heights of its index by lot: one of them is looked for.
        MemoryDisk killed = CrashDay.Killed(Lines, merged: 60, 5, 25);
        Assert.Contains(Enumerable.Range(99, MostDamagesTried), seed => IsFoundAtClosing(killed.Copy(), seed));
    }

    private static bool IsFoundAtClosing(MemoryDisk disk, int seed)
    {
        disk[CrashDay.Paths.Log] = Damaged(disk[CrashDay.Paths.Log], "one bit", new Random(seed));
        Line more = SomeLines.After(Lines[^1]);
        bool isRepairedAtOpening;
        using (StudyFile study = CrashDay.Open(disk))
        {
            isRepairedAtOpening = study.Repaired.Count > 0;
            study.Append(more);
        }

        JournalCheck check = JournalCheck.Of(disk, CrashDay.Paths);
        Assert.True(check.Holds && check.StoreBehindLines == 0, $"seed {seed}: {check}");
        bool isSetAside = disk.Names.Contains("day.study.damaged-20260203T090000Z");
        using StudyFile again = CrashDay.Open(disk);
        Assert.Equal([.. Lines, more], again.Lines);
        return isSetAside && !isRepairedAtOpening;
    }

    [Fact]
    public void A_damaged_text_is_kept_beside_the_repaired_one()
    {
        MemoryDisk disk = Killed.Copy();
        byte[] text = disk[CrashDay.Paths.Journal];
        byte[] damaged = [.. text];
        damaged[3000] ^= 1;
        disk[CrashDay.Paths.Journal] = damaged;

        using (StudyFile study = CrashDay.Open(disk))
        {
            Assert.Contains("is kept in", Assert.Single(study.Repaired));
        }

        Assert.Equal(text, disk[CrashDay.Paths.Journal]);
        Assert.Equal(damaged, disk[CrashDay.Paths.Journal + ".damaged-20260203T090000Z"]);
        Assert.DoesNotContain("day.journal-rescue", disk.Names);
    }

    [Fact]
    public void Damage_of_both_files_in_different_places_loses_no_line()
    {
        MemoryDisk disk = Killed.Copy();
        disk.Delete(CrashDay.Paths.Log);
        byte[] text = disk[CrashDay.Paths.Journal];
        text[3000] ^= 1;
        disk[CrashDay.Paths.Journal] = text;

        AssertNothingIsLost(disk, "log gone, line 10 flipped");
    }

    [Fact]
    public void Lines_lost_in_both_files_are_said_and_nothing_is_changed_until_a_rescue_is_asked_for()
    {
        MemoryDisk disk = Killed.Copy();
        disk.Delete(CrashDay.Paths.Study);
        byte[] text = disk[CrashDay.Paths.Journal];
        text[3000] ^= 1;
        disk[CrashDay.Paths.Journal] = text;
        int bad = text.AsSpan(0, 3000).Count((byte)'\n') + 1;

        StudyDamagedException refusal = Assert.Throws<StudyDamagedException>(() => CrashDay.Open(disk));

        Assert.Contains($"day.journal, line {bad}", refusal.Message);
        Assert.Contains("Nothing was overwritten", refusal.Message);
        Assert.Equal(text, disk[CrashDay.Paths.Journal]);
        Assert.Equal(["day-log.study", "day.journal"], disk.Names);

        StudyRescue rescue = CrashDay.Rescue(disk);

        Assert.Equal(bad - 1, rescue.Lines);
        Assert.Equal(text, disk[CrashDay.Paths.Journal]);
        Assert.Equal(["day-log.study", "day.journal", "saved.journal", "saved.loose", "saved.study"], disk.Names);
        Assert.Equal(Lines[bad..], TextCopy.Read(disk[rescue.LooseFile!]).Valid);
        using StudyFile study = new StudyOpening(disk, CrashDay.RescuedPaths, new StoppedClock()).Open();
        Assert.Equal(Lines[..(bad - 1)], study.Lines);
        Assert.Empty(study.Repaired);
    }

    [Fact]
    public void A_rescue_never_takes_the_place_of_a_file_and_says_where_nothing_is_whole()
    {
        MemoryDisk disk = Killed.Copy();
        disk[CrashDay.RescuedPaths.Study] = [1, 2, 3];
        Assert.Throws<StudyExistsException>(() => CrashDay.Rescue(disk));
        Assert.Equal([1, 2, 3], disk[CrashDay.RescuedPaths.Study]);

        MemoryDisk empty = new();
        Assert.Throws<StudyMissingException>(() => CrashDay.Rescue(empty));
        empty[CrashDay.Paths.Journal] = "nothing of a study\n"u8.ToArray();
        Assert.Throws<StudyDamagedException>(() => CrashDay.Rescue(empty));
        Assert.Equal(["day.journal"], empty.Names);
    }

    [Fact]
    public void Several_bad_lines_at_the_end_of_the_text_are_a_loss_when_the_store_is_gone()
    {
        MemoryDisk disk = Killed.Copy();
        disk.Delete(CrashDay.Paths.Study);
        disk.Delete(CrashDay.Paths.Log);
        byte[] text = disk[CrashDay.Paths.Journal];
        text.AsSpan()[^1000..].Replace((byte)'l', (byte)'I');
        disk[CrashDay.Paths.Journal] = text;

        Assert.Throws<StudyDamagedException>(() => CrashDay.Open(disk));
        Assert.Equal(["day.journal"], disk.Names);
    }

    [Fact]
    public void Half_a_line_at_the_end_was_never_acknowledged_and_is_cut()
    {
        MemoryDisk disk = Killed.Copy();
        byte[] text = disk[CrashDay.Paths.Journal];
        disk[CrashDay.Paths.Journal] = [.. text, .. "0123456789abcdef"u8];

        using StudyFile study = CrashDay.Open(disk);

        Assert.Equal(Lines, study.Lines);
        Assert.Contains("cut off", Assert.Single(study.Repaired));
        Assert.Equal(text, disk[CrashDay.Paths.Journal]);
    }

    private static void AssertNothingIsLost(MemoryDisk disk, string what)
    {
        List<Line> more = SomeLines.Of(2, after: Lines[^1]);
        using (StudyFile study = CrashDay.Open(disk))
        {
            Assert.True(Lines.SequenceEqual(study.Lines), $"{what}: {study.Lines.Count} lines of {Lines.Count}");
            more.ForEach(study.Append);
        }

        JournalCheck check = JournalCheck.Of(disk, CrashDay.Paths);
        Assert.True(check.Holds && check.StoreBehindLines == 0, $"{what}: {check}");
        using StudyFile again = CrashDay.Open(disk);
        Assert.True(again.Lines.Count == Lines.Count + 2 && again.Repaired.Count == 0, $"{what}: {string.Join(' ', again.Repaired)}");
    }

    private static byte[] Damaged(byte[] bytes, string damage, Random chance)
    {
        int at = chance.Next(bytes.Length);
        switch (damage)
        {
            case "one bit":
                bytes[at] ^= (byte)(1 << chance.Next(8));
                return bytes;
            case "cut":
                return bytes[..at];
            case "64 random bytes":
                chance.NextBytes(bytes.AsSpan(at, Math.Min(64, bytes.Length - at)));
                return bytes;
            default:
                int length = damage == "512 zeros" ? 512 : 4096;
                int from = at / length * length;
                bytes.AsSpan(from, Math.Min(length, bytes.Length - from)).Clear();
                return bytes;
        }
    }
}
