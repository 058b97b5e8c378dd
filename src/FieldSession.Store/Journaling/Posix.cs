using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Journaling;

/// <summary>The two things .NET does not offer on Linux and macOS.</summary>
internal static partial class Posix
{
    private const int ReadOnly = 0;

    /// <summary>
    /// fsync of a folder: a new or renamed file survives a power cut only when the folder that names it is on the disk too
    /// (Linux man page fsync(2)).
    /// </summary>
    public static void SyncFolder(string folder)
    {
        using SafeFileHandle? handle = OpenUnlocked(folder);
        // some file systems of sticks and shares can't sync a folder and say so: no worse than before
        _ = handle is null ? 0 : FSync(handle);
    }

    /// <summary>
    /// Opens a file for reading without the shared lock that .NET takes, so that a check can be made while the study is
    /// open, and can't keep anybody from opening it. Null: it can't be opened.
    /// </summary>
    public static SafeFileHandle? OpenUnlocked(string path) =>
        Open(path, ReadOnly) is >= 0 and int descriptor ? new SafeFileHandle(descriptor, ownsHandle: true) : null;

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int FSync(SafeFileHandle handle);
}
