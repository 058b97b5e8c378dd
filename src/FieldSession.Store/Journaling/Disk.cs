using FieldSession.Store.Disks;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Journaling;

/// <summary>The disk of this computer.</summary>
internal sealed class Disk : IDisk
{
    /// <inheritdoc/>
    public bool Exists(string path) => File.Exists(path);

    /// <inheritdoc/>
    public byte[] ReadAll(string path)
    {
        using IDiskFile file = Look(path);
        StudyLimits.Refuse(path, file.Length, StudyLimits.LongestFileBytes);
        byte[] bytes = new byte[file.Length];
        // a file that shrinks under the reader ends early
        int read = file.Read(bytes, 0);
        return read == bytes.Length ? bytes : bytes[..read];
    }

    /// <inheritdoc/>
    public IDiskFile Look(string path) => new DiskFile(path, Unlocked(path));

    /// <inheritdoc/>
    public IDiskFile? LookPastMemory(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        FileKind.RefuseSpecial(path);
        return Posix.OpenPastMemory(path) is { } pastMemory ? new FileOnDisk(path, pastMemory) : Forgotten(path);
    }

    /// <summary>A file of which the system was asked to forget what it remembers: where it can't be read past memory, the next best.</summary>
    internal static DiskFile Forgotten(string path)
    {
        SafeFileHandle handle = Unlocked(path);
        Posix.ForgetMemoryOf(handle);
        return new DiskFile(path, handle);
    }

    /// <inheritdoc/>
    public IDiskFile Open(string path, FileMode mode)
    {
        FileKind.RefuseSpecial(path);
        // whoever opens what is there already has a patience of its own (StudyOpening), or comes again with the next act
        return new DiskFile(path, mode == FileMode.Open ? ToWrite(path, mode) : Patience.With(() => ToWrite(path, mode)));
    }

    /// <inheritdoc/>
    public void Move(string from, string to) => Patience.WithName(() => File.Move(from, to, overwrite: true));

    /// <inheritdoc/>
    public void Delete(string path) => Patience.WithName(() => File.Delete(path));

    /// <inheritdoc/>
    public void SyncFolderOf(string path)
    {
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder)
        {
            DiskFlush.Folder(folder);
        }
    }

    // On Linux and macOS no second program is let in to write, and looking needs no leave. On Windows looking does, and a share of
    // reading keeps writers out as well.
    private static SafeFileHandle ToWrite(string path, FileMode mode) =>
        File.OpenHandle(path, mode, FileAccess.ReadWrite, OperatingSystem.IsWindows() ? FileShare.Read : FileShare.None);

    private static SafeFileHandle Unlocked(string path)
    {
        FileKind.RefuseSpecial(path);
        return (OperatingSystem.IsWindows() ? null : Posix.OpenUnlocked(path))
            ?? Patience.With(() => File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete));
    }
}
