using FieldSession.Store.Exports;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

public sealed class ExportFolderTests
{
    [Fact]
    public void Every_file_of_the_contents_page_is_written_and_nothing_else()
    {
        // the key is not open, and nothing was recorded
        using ExportedDay exported = new(ExportedDay.Demo());
        IEnumerable<string> expected = Store
            .Exports.Exports.All.Select(file => file.Name)
            .Where(name => name is not ("key.csv" or "bands.csv"))
            .Append("datapackage.json");
        Assert.Equal(expected.Order(StringComparer.Ordinal), exported.Names);
        Assert.Equal(exported.Names, exported.Outcome.Written.Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_folder_is_made_and_an_earlier_export_in_it_is_replaced()
    {
        using ExportedDay exported = new(new ADay().Ready().Typed("run 417", "5860"));
        string deeper = Path.Combine(exported.Path("a"), "b");
        ExportFolder.Write(deeper, ExportSource.Of(exported.Day.Book), CancellationToken.None);
        exported.Day.Typed("6365");
        ExportFolder.Write(deeper, ExportSource.Of(exported.Day.Book), CancellationToken.None);
        Assert.Equal(2, Rfc4180.Rows(File.ReadAllText(Path.Combine(deeper, "readings.csv"))).Count);
    }

    [Fact]
    public void The_same_study_gives_the_same_bytes()
    {
        using ExportedDay one = new(ExportedDay.Demo());
        using ExportedDay other = new(ExportedDay.Demo());
        Assert.All(one.Names, name => Assert.Equal(one.Text(name), other.Text(name)));
    }

    [Fact]
    public void A_file_of_somebody_else_is_left_alone()
    {
        using ExportedDay exported = new(new ADay());
        File.WriteAllText(exported.Path("mine.csv"), "mine");
        exported.Export();
        Assert.Equal("mine", exported.Text("mine.csv"));
    }

    [Theory]
    [InlineData("readings.csv", "run,code")]
    [InlineData("datapackage.json", "{\"name\": \"another\"}")]
    [InlineData("datapackage.json", "no json")]
    public void A_file_of_somebody_else_that_is_in_the_way_refuses_the_export(string name, string text)
    {
        MemoryDisk disk = new() { [Path.Combine("out", name)] = System.Text.Encoding.UTF8.GetBytes(text) };
        ExportRefusedException refusal = Assert.Throws<ExportRefusedException>(() =>
            new ExportFolder(disk, "out").Write(Source, CancellationToken.None)
        );
        Assert.Equal(
            $"{Path.Combine("out", name)}: this file is not from an earlier export. Nothing was changed. Move it away, or "
                + "give another folder.",
            refusal.Message
        );
        Assert.Equal([name], disk.Names);
    }

    [Fact]
    public void A_descriptor_can_not_make_the_export_remove_a_file_that_is_none_of_its_own()
    {
        string lie = "{\"made_by\": \"fieldsession\", \"resources\": [{\"path\": \"../thesis.txt\"}, {\"path\": \"mine.csv\"}]}";
        MemoryDisk disk = new()
        {
            [Path.Combine("out", "datapackage.json")] = System.Text.Encoding.UTF8.GetBytes(lie),
            [Path.Combine("out", "../thesis.txt")] = [1],
            [Path.Combine("out", "mine.csv")] = [2],
        };
        new ExportFolder(disk, "out").Write(Source, CancellationToken.None);
        Assert.Contains("thesis.txt", disk.Names);
        Assert.Contains("mine.csv", disk.Names);
    }

    [Fact]
    public void A_folder_that_is_a_file_is_refused()
    {
        using ExportedDay exported = new(new ADay());
        string file = exported.Path("readings.csv");
        string before = File.ReadAllText(file);
        Assert.Throws<ExportRefusedException>(() => ExportFolder.Write(file, Source, CancellationToken.None));
        Assert.Equal(before, File.ReadAllText(file));
    }

    [Fact]
    public void Stopped_at_any_file_the_folder_stays_as_it_was()
    {
        MemoryDisk exported = Exported();
        for (int at = 1; at <= exported.Names.Count(); at++)
        {
            using CancellationTokenSource stop = new();
            MemoryDisk disk = exported.Copy();
            int opened = 0;
            disk.Refuses = _ =>
            {
                if (++opened == at)
                {
                    stop.Cancel();
                }

                return null;
            };
            Assert.Throws<OperationCanceledException>(() => new ExportFolder(disk, "out").Write(LaterSource, stop.Token));
            AssertSame(exported, disk);
        }
    }

    [Fact]
    public void On_a_full_disk_the_folder_stays_as_it_was_and_the_file_is_named()
    {
        MemoryDisk exported = Exported();
        MemoryDisk disk = exported.Copy();
        disk.Room = disk.Used + 3000;
        ExportRefusedException refusal = Assert.Throws<ExportRefusedException>(() =>
            new ExportFolder(disk, "out").Write(LaterSource, CancellationToken.None)
        );
        Assert.StartsWith(
            Path.Combine("out", "datapackage.json") + ": can't be written (No space left on device). Nothing was overwritten.",
            refusal.Message,
            StringComparison.Ordinal
        );
        AssertSame(exported, disk);
    }

    [Fact]
    public void Where_an_old_file_could_not_be_removed_the_next_export_replaces_all()
    {
        MemoryDisk exported = Exported();
        Assert.All(
            exported.Names.ToArray(),
            name =>
            {
                MemoryDisk disk = exported.Copy();
                disk.RefusesToDelete = path => Path.GetFileName(path) == name ? new IOException("Input/output error", 5) : null;
                Assert.Throws<ExportRefusedException>(() => new ExportFolder(disk, "out").Write(LaterSource, CancellationToken.None));
                disk.RefusesToDelete = _ => null;
                new ExportFolder(disk, "out").Write(LaterSource, CancellationToken.None);
                Assert.Equal(exported.Names, disk.Names);
            }
        );
    }

    [Fact]
    public void Every_byte_is_on_the_disk_before_the_first_file_is_renamed()
    {
        MemoryDisk disk = Exported();
        List<DiskAct> acts = [.. disk.Events.Select(happened => happened.Act)];
        Assert.True(acts.LastIndexOf(DiskAct.Sync) < acts.IndexOf(DiskAct.Move));
        Assert.Equal(acts.Count(act => act == DiskAct.Move), acts.Count(act => act == DiskAct.Sync));
    }

    private static ExportSource Source => ExportSource.Of(new ADay().Ready().Typed("run 417", "5860").Book);

    private static ExportSource LaterSource => ExportSource.Of(new ADay().Ready().Typed("run 417", "5860", "6365").Book);

    private static MemoryDisk Exported()
    {
        MemoryDisk disk = new();
        new ExportFolder(disk, "out").Write(Source, CancellationToken.None);
        return disk;
    }

    private static void AssertSame(MemoryDisk expected, MemoryDisk actual)
    {
        Assert.Equal(expected.Names, actual.Names);
        Assert.All(expected.Names, name => Assert.Equal(expected[Path.Combine("out", name)], actual[Path.Combine("out", name)]));
    }
}
