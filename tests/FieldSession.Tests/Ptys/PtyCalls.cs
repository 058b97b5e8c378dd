using System.Runtime.InteropServices;

namespace FieldSession.Tests.Ptys;

/// <summary>The calls of the C library that a terminal's other end needs (Linux).</summary>
internal static partial class PtyCalls
{
    public const int ReadWriteNotControlling = 0x2 | 0x100;
    public const int CloseOnExec = 0x80000;
    public const nuint SetWindowSize = 0x5414;

    [LibraryImport("libc", EntryPoint = "posix_openpt", SetLastError = true)]
    public static partial int OpenMaster(int flags);

    [LibraryImport("libc", EntryPoint = "grantpt", SetLastError = true)]
    public static partial int Grant(int file);

    [LibraryImport("libc", EntryPoint = "unlockpt", SetLastError = true)]
    public static partial int Unlock(int file);

    [LibraryImport("libc", EntryPoint = "ptsname_r", SetLastError = true)]
    public static partial int NameOfSlave(int file, [Out] byte[] name, nint length);

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    public static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    public static partial int Close(int file);

    [LibraryImport("libc", EntryPoint = "read", SetLastError = true)]
    public static partial nint Read(int file, [Out] byte[] into, nint length);

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    public static partial nint Write(int file, byte[] from, nint length);

    [LibraryImport("libc", EntryPoint = "ioctl", SetLastError = true)]
    public static partial int Control(int file, nuint request, ushort[] size);

    [LibraryImport("libc", EntryPoint = "tcgetattr", SetLastError = true)]
    public static partial int ReadSettings(int file, [Out] byte[] settings);

    [LibraryImport("libc", EntryPoint = "kill", SetLastError = true)]
    public static partial int Kill(int process, int signal);
}
