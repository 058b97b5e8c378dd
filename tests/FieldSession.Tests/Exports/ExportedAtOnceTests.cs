using FieldSession.Store.Exports;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

/// <summary>An export is there as a whole or not at all, also beside an older one.</summary>
public sealed class ExportedAtOnceTests : IDisposable
{
    private readonly Folder _folder = new();

    private string Out => _folder["out"];

    [Fact]
    public void A_new_export_takes_the_place_of_the_old_folder_in_one_step_and_leaves_nothing_beside_it()
    {
        Write("run 417", "5860");
        ulong old = Inode(Out);
        Write("run 417", "5860", "6365");
        Assert.NotEqual(old, Inode(Out));
        Assert.Equal(3, File.ReadAllLines(Path.Combine(Out, "readings.csv")).Length);
        Assert.Equal([Out], Directory.GetDirectories(_folder.Path));
    }

    [Fact]
    public void What_a_kill_left_beside_it_is_cleared_or_put_back_by_the_next_one()
    {
        Write("run 417", "5860");
        Directory.CreateDirectory(_folder[".out.unfinished"]);
        File.WriteAllText(Path.Combine(_folder[".out.unfinished"], "readings.csv"), "half");
        Directory.Move(Out, _folder[".out.before"]);

        Write("run 417", "5860", "6365");

        Assert.Equal([Out], Directory.GetDirectories(_folder.Path));
        Assert.Equal(3, File.ReadAllLines(Path.Combine(Out, "readings.csv")).Length);
    }

    [Fact]
    public void Beside_files_of_somebody_else_the_old_ones_go_before_the_first_new_one_comes()
    {
        Write("run 417", "5860");
        string mine = Path.Combine(Out, "mine.txt");
        File.WriteAllText(mine, "mine");
        ulong old = Inode(Out);

        Write("run 417", "5860", "6365");

        Assert.Equal(old, Inode(Out));
        Assert.Equal("mine", File.ReadAllText(mine));
        Assert.Equal(3, File.ReadAllLines(Path.Combine(Out, "readings.csv")).Length);
        Assert.Empty(Directory.GetFiles(Out, "*.unfinished"));
    }

    [Fact]
    public void The_rights_of_the_folder_stay()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Write("run 417", "5860");
        File.SetUnixFileMode(Out, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Write("run 417", "5860");
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Out));
    }

    public void Dispose() => _folder.Dispose();

    private void Write(params string[] typed) =>
        ExportFolder.Write(Out, ExportSource.Of(new ADay().Ready().Typed([.. typed]).Book), CancellationToken.None);

    private static ulong Inode(string path)
    {
        using System.Diagnostics.Process stat = System.Diagnostics.Process.Start(
            new System.Diagnostics.ProcessStartInfo("stat", ["-c", "%i", path]) { RedirectStandardOutput = true }
        )!;
        return ulong.Parse(stat.StandardOutput.ReadToEnd(), System.Globalization.CultureInfo.InvariantCulture);
    }
}
