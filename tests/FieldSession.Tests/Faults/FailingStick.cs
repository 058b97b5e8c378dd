using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Faults;

/// <summary>
/// A file system of its own on a disk that can fail: a loop device over a file that lies in a small file system in memory. What is
/// written beyond that memory's room fails at the flush, as on a disk that goes bad; a file cut to nothing is a stick that was pulled.
/// </summary>
internal sealed class FailingStick : IDisposable
{
    private const int RoomMiB = 6;

    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-stick").FullName;

    /// <summary>Makes and mounts it.</summary>
    /// <param name="kind">ext2 or ext4.</param>
    public FailingStick(string kind)
    {
        Directory.CreateDirectory(Memory);
        Directory.CreateDirectory(Path);
        Must("mount", "-t", "tmpfs", "-o", $"size={RoomMiB}m", "tmpfs", Memory);
        using (FileStream image = new(Image, FileMode.CreateNew))
        {
            image.SetLength(32 << 20);
        }

        Must("mkfs", "-t", kind, "-q", "-F", "-b", "4096", Image);
        Mount();
    }

    /// <summary>Where it is mounted.</summary>
    public string Path => System.IO.Path.Combine(_folder, "stick");

    private string Memory => System.IO.Path.Combine(_folder, "memory");

    private string Image => System.IO.Path.Combine(Memory, "image");

    private string Filler => System.IO.Path.Combine(Memory, "filler");

    /// <summary>Why there can be none here; null: there can.</summary>
    public static string? WhyNot()
    {
        if (!OperatingSystem.IsLinux() || Environment.UserName != "root")
        {
            return "file systems are mounted by root on Linux";
        }

        try
        {
            new FailingStick("ext4").Dispose();
            return null;
        }
        catch (InvalidOperationException no)
        {
            return no.Message;
        }
    }

    /// <summary>From now on nothing new finds room on the disk below.</summary>
    public void Fail()
    {
        Run("sync");
        _ = Run("dd", "if=/dev/zero", $"of={Filler}", "bs=4096");
    }

    /// <summary>The stick is pulled: nothing can be read or written any more, since the device has no room left at all.</summary>
    public void Pull()
    {
        (int code, string device) = Run("losetup", "-n", "-O", "NAME", "-j", Image);
        Assert.Equal(0, code);
        using (FileStream image = new(Image, FileMode.Open))
        {
            image.SetLength(0);
        }

        Must("losetup", "-c", device.Trim());
    }

    /// <summary>
    /// The stick is taken out as the system sees it: unmounted though somebody works on it; its loop device goes with its last file.
    /// </summary>
    public void Detach()
    {
        Must("umount", "-l", Path);
    }

    /// <summary>From now on it can only be read.</summary>
    public void MakeReadOnly() => Must("mount", "-o", "remount,ro", Path);

    /// <summary>
    /// The disk is well again and is mounted again: what the system still held in memory is gone, what counts is what the disk has.
    /// </summary>
    public void Remount()
    {
        Must("umount", Path);
        File.Delete(Filler);
        // 0: clean, 1: put right
        Assert.InRange(Run("fsck", "-p", Image).Code, 0, 1);
        Mount();
    }

    public void Dispose()
    {
        _ = Run("umount", "-l", Path);
        _ = Run("umount", "-l", Memory);
        Directory.Delete(_folder, recursive: true);
    }

    private static (int Code, string Said) Run(string program, params string[] words)
    {
        using Process running = Process.Start(
            new ProcessStartInfo(program, words) { RedirectStandardError = true, RedirectStandardOutput = true }
        )!;
        Task<string> output = running.StandardOutput.ReadToEndAsync();
        string said = running.StandardError.ReadToEnd();
        running.WaitForExit();
        return (running.ExitCode, said + output.Result);
    }

    private void Mount() => Must("mount", "-o", "loop", Image, Path);

    private void Must(string program, params string[] words)
    {
        (int code, string said) = Run(program, words);
        if (code != 0)
        {
            Dispose();
            throw new InvalidOperationException($"'{program} {string.Join(' ', words)}' ended with {code}: {said}");
        }
    }
}

/// <summary>A test on a real file system that fails; passed over where none can be mounted.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class StickTheoryAttribute : TheoryAttribute
{
    private static readonly Lazy<string?> WhyNot = new(FailingStick.WhyNot);

    public StickTheoryAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = WhyNot.Value;
}
