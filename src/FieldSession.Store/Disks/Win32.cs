using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Disks;

/// <summary>What we ask of Windows ourselves.</summary>
internal static partial class Win32
{
    // CreateFileW, Microsoft Learn: a folder's handle needs FILE_FLAG_BACKUP_SEMANTICS, a flush needs GENERIC_WRITE
    private const uint GenericWrite = 0x4000_0000;
    private const uint ShareAll = 7;
    private const uint OpenExisting = 3;
    private const uint BackupSemantics = 0x0200_0000;

    /// <summary>Forces a file, or an opened folder, onto the disk.</summary>
    /// <returns>The system's error number; 0: it is on the disk.</returns>
    public static int Flush(SafeFileHandle handle) => FlushFileBuffers(handle) != 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Opens a folder so that it can be flushed. Null: it can't be opened, and <see cref="Marshal.GetLastPInvokeError"/> says why.</summary>
    public static SafeFileHandle? OpenFolder(string folder)
    {
        SafeFileHandle handle = CreateFile(folder, GenericWrite, ShareAll, 0, OpenExisting, BackupSemantics, 0);
        return handle.IsInvalid ? null : handle;
    }

    [LibraryImport("kernel32", SetLastError = true)]
    private static partial int FlushFileBuffers(SafeFileHandle handle);

    [LibraryImport("kernel32", EntryPoint = "CreateFileW", StringMarshalling = StringMarshalling.Utf16, SetLastError = true)]
    private static partial SafeFileHandle CreateFile(string path, uint access, uint share, nint security, uint creation, uint flags, nint template);
}
