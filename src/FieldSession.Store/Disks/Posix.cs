using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Disks;

/// <summary>What we ask of Linux and macOS ourselves: .NET does not offer it, or does not say when it failed.</summary>
internal static partial class Posix
{
    private const int ReadOnly = 0;
    private const int Interrupted = 4;
    private const int MostTries = 100;

    // fcntl(2) of macOS
    private const int FullFlush = 51;
    private static readonly ImmutableArray<int> NoFullFlushHere = [22, 25, 45];

    // open(2) of Linux: O_DIRECT, a number of its own on ARM
    private static int PastMemory => RuntimeInformation.ProcessArchitecture is Architecture.Arm64 or Architecture.Arm ? 0x10000 : 0x4000;
    private const int WrongParameter = 22;

    // posix_fadvise(2) of Linux
    private const int NotNeeded = 4;

    // renameat2(2) of Linux, renamex_np(2) of macOS
    private const int FromHere = -100;
    private const uint Swap = 2;

    /// <summary>
    /// Forces a file, or an opened folder, onto the disk: fsync(2); on macOS F_FULLFSYNC, because fsync there leaves the data in the
    /// drive's own memory (macOS man page fsync(2)), and fsync only where the file system knows no F_FULLFSYNC.
    /// </summary>
    /// <returns>The system's error number; 0: it is on the disk.</returns>
    public static int Flush(SafeFileHandle handle)
    {
        int error = OperatingSystem.IsMacOS() ? ErrorOf(() => FileControl(handle, FullFlush)) : int.MaxValue;
        return error == int.MaxValue || NoFullFlushHere.Contains(error) ? ErrorOf(() => FSync(handle)) : error;
    }

    /// <summary>
    /// Opens a file for reading without the shared lock that .NET takes, so that a check can be made while the study is
    /// open, and can't keep anybody from opening it. Null: it can't be opened, and <see cref="Marshal.GetLastPInvokeError"/> says why.
    /// </summary>
    public static SafeFileHandle? OpenUnlocked(string path) =>
        Open(path, ReadOnly) is >= 0 and int descriptor ? new SafeFileHandle(descriptor, ownsHandle: true) : null;

    /// <summary>
    /// Opens a file of Linux so that what is read comes from the disk and not from the system's memory. Null: the file system can't, or
    /// there is no such file.
    /// </summary>
    public static SafeFileHandle? OpenPastMemory(string path) =>
        Open(path, ReadOnly | PastMemory) is >= 0 and int descriptor ? new SafeFileHandle(descriptor, ownsHandle: true) : null;

    /// <summary>Whether the system refused a call for how it was made.</summary>
    public static bool IsWrongParameter(IOException fault) => fault.HResult == WrongParameter;

    /// <summary>
    /// Lets Linux forget what it remembers of a file, so that the next reading comes from the disk: after a failed flush it keeps bytes in
    /// memory that never reached the disk. Elsewhere nothing happens.
    /// </summary>
    public static void ForgetMemoryOf(SafeFileHandle handle)
    {
        if (OperatingSystem.IsLinux() && Environment.Is64BitProcess)
        {
            _ = Advise(handle, 0, 0, NotNeeded);
        }
    }

    /// <summary>
    /// Lets two paths change places in one step: renameat2(2) with RENAME_EXCHANGE on Linux, renamex_np(2) with RENAME_SWAP on macOS.
    /// False: the system or the file system has no such step, and nothing was changed.
    /// </summary>
    public static bool Exchange(string one, string other)
    {
        try
        {
            return (OperatingSystem.IsMacOS() ? RenameOfMac(one, other, Swap) : RenameAt(FromHere, one, FromHere, other, Swap)) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    private static int ErrorOf(Func<int> call)
    {
        for (int tries = 1; call() != 0; tries++)
        {
            int error = Marshal.GetLastPInvokeError();
            if (error != Interrupted || tries == MostTries)
            {
                return error;
            }
        }

        return 0;
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int FSync(SafeFileHandle handle);

    [LibraryImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    private static partial int FileControl(SafeFileHandle handle, int command);

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameAt(int oneFrom, string one, int otherFrom, string other, uint flags);

    [LibraryImport("libc", EntryPoint = "renamex_np", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameOfMac(string one, string other, uint flags);

    [LibraryImport("libc", EntryPoint = "posix_fadvise")]
    private static partial int Advise(SafeFileHandle handle, long from, long length, int advice);
}

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

    /// <summary>
    /// Opens a folder so that it can be flushed. Null: it can't be opened, and <see cref="Marshal.GetLastPInvokeError"/> says why.
    /// </summary>
    public static SafeFileHandle? OpenFolder(string folder)
    {
        SafeFileHandle handle = CreateFile(folder, GenericWrite, ShareAll, 0, OpenExisting, BackupSemantics, 0);
        return handle.IsInvalid ? null : handle;
    }

    [LibraryImport("kernel32", SetLastError = true)]
    private static partial int FlushFileBuffers(SafeFileHandle handle);

    [LibraryImport("kernel32", EntryPoint = "CreateFileW", StringMarshalling = StringMarshalling.Utf16, SetLastError = true)]
    private static partial SafeFileHandle CreateFile(
        string path,
        uint access,
        uint share,
        nint security,
        uint creation,
        uint flags,
        nint template
    );
}
