using System.Runtime.InteropServices;

namespace FieldSession.Store.Disks;

/// <summary>
/// Whether a path names a file. A pipe, a device or a socket has no length and no place to go back to, and reading one may wait for ever.
/// </summary>
internal static partial class FileKind
{
    // stat(2): the bits of st_mode that tell what it is
    private const int KindBits = 0xF000;
    private const int RegularFile = 0x8000;
    private const int Folder = 0x4000;

    // statx(2) of Linux: stx_mode is at byte 28 of 256; stat(2) of macOS: st_mode is at byte 4 of 144
    private const int FromHere = -100;
    private const uint KindWanted = 1;
    private const int ModeInStatx = 28;
    private const int ModeInStat = 4;
    private const int LongestAnswer = 256;

    /// <summary>Refuses what is neither a file nor a folder, without opening it. Nothing happens where there is nothing.</summary>
    /// <exception cref="NotAFileException">It is a pipe, a device or a socket.</exception>
    public static void RefuseSpecial(string path)
    {
        if (ModeOf(path) is { } mode && (mode & KindBits) is not (RegularFile or Folder))
        {
            throw new NotAFileException(path);
        }
    }

    /// <summary>Opens a file for reading beside whoever has it open.</summary>
    /// <exception cref="NotAFileException">It is a pipe, a device or a socket.</exception>
    public static FileStream OpenToRead(string path)
    {
        RefuseSpecial(path);
        return Patience.With(() =>
            new FileStream(
                path,
                FileMode.Open,
                FileAccess.Read,
                FileShare.ReadWrite | FileShare.Delete,
                1 << 16,
                FileOptions.SequentialScan
            )
        );
    }

    private static int? ModeOf(string path)
    {
        Span<byte> answer = stackalloc byte[LongestAnswer];
        try
        {
            return Asked(path, answer) switch
            {
                0 when OperatingSystem.IsLinux() => BitConverter.ToUInt16(answer[ModeInStatx..]),
                0 => BitConverter.ToUInt16(answer[ModeInStat..]),
                _ => null,
            };
        }
        catch (EntryPointNotFoundException)
        {
            // an old system library knows no statx; the path is then taken for a file, as it was before
            return null;
        }
    }

    private static int Asked(string path, Span<byte> answer) =>
        (OperatingSystem.IsLinux(), OperatingSystem.IsMacOS(), RuntimeInformation.ProcessArchitecture) switch
        {
            (true, _, _) => StatX(FromHere, path, 0, KindWanted, answer),
            (_, true, Architecture.X64) => StatOfMacX64(path, answer),
            (_, true, _) => StatOfMac(path, answer),
            _ => -1,
        };

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int StatX(int from, string path, int flags, uint wanted, Span<byte> answer);

    [LibraryImport("libc", EntryPoint = "stat$INODE64", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int StatOfMacX64(string path, Span<byte> answer);

    [LibraryImport("libc", EntryPoint = "stat", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int StatOfMac(string path, Span<byte> answer);
}

/// <summary>A path names a pipe, a device or a socket where a file is needed. Nothing was read or changed.</summary>
public sealed class NotAFileException(string path) : IOException(DiskWords.NotAFile(path));

/// <summary>What is said of paths that name no file.</summary>
internal static class DiskWords
{
    public static string NotAFile(string path) =>
        $"{path}: this is a pipe or a device, and a file is needed. Nothing was changed. Save it as a file and name that.";
}
