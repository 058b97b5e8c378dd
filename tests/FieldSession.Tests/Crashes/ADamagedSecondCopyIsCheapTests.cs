using System.Buffers.Binary;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// A damaged page number leads LiteDB gigabytes beyond its file; opening such a study costs no more than opening a sound one.
/// </summary>
public sealed class ADamagedSecondCopyIsCheapTests
{
    private const int PageBytes = 8192;

    // far beyond the file, and still within what an array or a file can hold
    private const uint FarPage = 190_000;

    private static readonly List<Line> Lines = [.. new ADay().Ready().Typed("run 417", "5860", "6365", "714").Book.Lines];

    [Fact]
    public void A_page_of_the_log_with_a_far_number_costs_neither_memory_nor_disk_and_no_line_is_lost()
    {
        MemoryDisk sound = CrashDay.Killed(Lines, merged: 4);
        int pages = sound[CrashDay.Paths.Log].Length / PageBytes;
        for (int page = 0; page < pages; page++)
        {
            MemoryDisk disk = WithPageNumber(sound, CrashDay.Paths.Log, page);
            long before = GC.GetTotalAllocatedBytes();
            OpensWhole(disk);

            Assert.InRange(disk.Used, 1, 4 << 20);
            Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, 1 << 30);
        }
    }

    [Fact]
    public void A_file_that_grew_beyond_what_can_be_read_is_put_aside_and_made_from_the_text()
    {
        string folder = Directory.CreateTempSubdirectory("fieldsession-far").FullName;
        try
        {
            string study = Path.Combine(folder, "day.study");
            StudyFile.Create(study, new StoppedClock()).Dispose();
            File.WriteAllText(Path.ChangeExtension(study, ".journal"), string.Concat(Lines.Select(line => $"{line}\n")));
            using (FileStream far = new(study, FileMode.Open))
            {
                far.SetLength(3L << 30);
            }

            using StudyFile opened = StudyFile.Open(study, new StoppedClock());
            Assert.Equal(Lines, opened.Lines);
            Assert.Contains("far beyond", Assert.Single(opened.Repaired), StringComparison.Ordinal);
            Assert.InRange(new FileInfo(study).Length, 1, 4 << 20);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static MemoryDisk WithPageNumber(MemoryDisk sound, string path, int page)
    {
        MemoryDisk disk = sound.Copy();
        byte[] bytes = disk[path];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(page * PageBytes), FarPage);
        disk[path] = bytes;
        return disk;
    }

    private static void OpensWhole(MemoryDisk disk)
    {
        using (StudyFile opened = CrashDay.Open(disk))
        {
            Assert.Equal(Lines, opened.Lines);
        }

        using StudyFile again = CrashDay.Open(disk);
        Assert.Equal(Lines, again.Lines);
        Assert.Empty(again.Repaired);
    }
}
