using System.Text;
using FieldSession.Journal;
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

    /// <summary>
    /// A file of which the system was asked to forget what it remembers: where it can't be read past memory, the next best.
    /// </summary>
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

/// <summary>
/// A file in another place that keeps the acts which the study's disk would not take, as lines that 'enter' takes. It is written whole each
/// time, and goes when nothing is left to keep.
/// </summary>
/// <param name="folder">The folder, such as a stick's; it is made where it is missing.</param>
/// <param name="study">Path of the study.</param>
/// <param name="strand">The strand of this laptop, 16 hex digits, which tells studies of one name apart.</param>
public sealed class SecondPlace(string folder, string study, string strand)
{
    private const int DigitsOfStrand = 8;

    /// <summary>Full path of the file.</summary>
    public string File { get; } =
        Path.Combine(Path.GetFullPath(folder), $"{Path.GetFileNameWithoutExtension(study)}-{strand[..DigitsOfStrand]}.unsaved");

    /// <summary>Whether it holds acts of an earlier sitting.</summary>
    public bool IsThere => System.IO.File.Exists(File);

    /// <summary>Keeps some acts; when this returns, they are on that place's disk.</summary>
    /// <param name="earlier">What the file held when the study was opened.</param>
    /// <param name="acts">The acts; none: the file goes, if it held nothing earlier.</param>
    /// <exception cref="IOException">They can't be kept there.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public void Keep(string earlier, IReadOnlyList<UnsavedAct> acts)
    {
        if (acts.Count == 0 && earlier.Length == 0)
        {
            System.IO.File.Delete(File);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        StringBuilder text = new(earlier);
        foreach (UnsavedAct act in acts)
        {
            text.Append(FileOnDiskWords.RemarkOnUnsaved(act)).Append('\n').Append(act.Typed).Append('\n');
        }

        WholeFile.Write(new Disk(), File, Encoding.UTF8.GetBytes(text.ToString()));
    }

    /// <summary>What the file holds now; empty: nothing.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    public string Held() => IsThere ? SmallText.Read(File) : "";
}
