using System.Runtime.InteropServices;

namespace FieldSession.Store.Journaling;

/// <summary>
/// fsync of a folder, which .NET does not offer: on Linux and macOS a new or renamed file survives a power cut only
/// when the folder that names it is on the disk too (POSIX fsync; Linux man page fsync(2)).
/// </summary>
internal static partial class FolderSync
{
    public static void Sync(string folder)
    {
        int descriptor = Open(folder, 0);
        if (descriptor < 0)
        {
            throw new IOException($"{folder}: the folder can't be opened ({Marshal.GetLastPInvokeErrorMessage()}).");
        }

        // some file systems of sticks and shares can't sync a folder and say so: no worse than before
        _ = FSync(descriptor);
        _ = Close(descriptor);
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int FSync(int descriptor);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    private static partial int Close(int descriptor);
}
