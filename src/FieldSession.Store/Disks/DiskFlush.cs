using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Disks;

/// <summary>
/// The one flush of the house: it returns when the bytes are on the disk, and throws when the disk says no. The runtime's own
/// (RandomAccess.FlushToDisk, FileStream.Flush(true)) can't be believed: under .NET 10.0.12 on Linux its native part returns 1 for a
/// failed fsync, its managed part asks for less than 0, and the failure is lost (docs/reliability.md).
/// </summary>
internal static class DiskFlush
{
    // EINVAL and ENOTSUP of Linux and macOS: the file system has no flush for folders. Access denied, not supported and wrong parameter of
    // Windows.
    private static readonly ImmutableArray<int> NotForFoldersOnPosix = [22, 45, 95];
    private static readonly ImmutableArray<int> NotForFoldersOnWindows = [1, 5, 50, 87];

    private static bool IsWindows => OperatingSystem.IsWindows();

    /// <summary>Forces a file onto the disk.</summary>
    /// <param name="handle">The file, open for writing.</param>
    /// <param name="path">Its name, for the words of a failure.</param>
    /// <exception cref="IOException">The disk said no: what it holds of the bytes written since the last flush is not known.</exception>
    public static void File(SafeFileHandle handle, string path) => Throw(IsWindows ? Win32.Flush(handle) : Posix.Flush(handle), path);

    /// <summary>
    /// Forces the names in a folder onto the disk: a new or renamed file survives a power cut only when the folder that names it
    /// is there too (Linux man page fsync(2)). File systems of sticks and shares that have no flush for folders are taken as they are.
    /// </summary>
    /// <exception cref="IOException">The disk said no.</exception>
    public static void Folder(string folder)
    {
        using SafeFileHandle? handle = IsWindows ? Win32.OpenFolder(folder) : Posix.OpenUnlocked(folder);
        int error = handle is null ? Marshal.GetLastPInvokeError() : Flushed(handle);
        bool hasNone = IsWindows ? NotForFoldersOnWindows.Contains(error) : handle is not null && NotForFoldersOnPosix.Contains(error);
        Throw(hasNone ? 0 : error, folder);
    }

    private static int Flushed(SafeFileHandle handle) => IsWindows ? Win32.Flush(handle) : Posix.Flush(handle);

    // numbers as .NET hands them on, so that whoever reads one need not know where it came from
    private static void Throw(int error, string path)
    {
        if (error != 0)
        {
            int number = IsWindows ? unchecked((int)0x80070000) | error : error;
            throw new IOException($"{Marshal.GetPInvokeErrorMessage(error)} : '{path}'", number);
        }
    }
}
