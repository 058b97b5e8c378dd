using System.Runtime.InteropServices;
using FieldSession.Store.Disks;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A file as the disk has it, read past the system's memory. Such reads begin and end at sector borders, in a buffer that does too (Linux
/// man page open(2), O_DIRECT). A file system that takes the name and refuses such reads is read as usual.
/// </summary>
/// <param name="path">Its name.</param>
/// <param name="handle">The file, open past memory.</param>
internal sealed class FileOnDisk(string path, SafeFileHandle handle) : IDiskFile
{
    // holds for disks with sectors of 512 bytes and of 4096
    private const int SectorBytes = 4096;
    private const int MostAtOnceBytes = 16 * SectorBytes;

    private readonly byte[] _room = GC.AllocateUninitializedArray<byte>(MostAtOnceBytes + SectorBytes, pinned: true);
    private DiskFile? _remembered;

    /// <inheritdoc/>
    public long Length
    {
        get => RandomAccess.GetLength(handle);
        set => throw new NotSupportedException(FileOnDiskWords.FileIsOnlyLookedAt);
    }

    /// <inheritdoc/>
    public int Read(Span<byte> bytes, long at)
    {
        int total = 0;
        while (total < bytes.Length && ReadOnce(bytes[total..], at + total) is > 0 and int read)
        {
            total += read;
        }

        return total;
    }

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes, long at) => throw new NotSupportedException(FileOnDiskWords.FileIsOnlyLookedAt);

    /// <inheritdoc/>
    public void Sync() => throw new NotSupportedException(FileOnDiskWords.FileIsOnlyLookedAt);

    /// <inheritdoc/>
    public void Dispose()
    {
        _remembered?.Dispose();
        handle.Dispose();
    }

    private int ReadOnce(Span<byte> bytes, long at)
    {
        if (_remembered is not null)
        {
            return _remembered.Read(bytes, at);
        }

        int before = (int)(at % SectorBytes);
        int wanted = Math.Min(bytes.Length, MostAtOnceBytes - before);
        Span<byte> sectors = AtASectorsBorder()[..RoundedUp(before + wanted)];
        try
        {
            int read = RandomAccess.Read(handle, sectors, at - before);
            int usable = Math.Clamp(read - before, 0, wanted);
            sectors.Slice(before, usable).CopyTo(bytes);
            return usable;
        }
        catch (IOException fault) when (Posix.IsWrongParameter(fault))
        {
            _remembered = Disk.Forgotten(path);
            return _remembered.Read(bytes, at);
        }
    }

    private Span<byte> AtASectorsBorder()
    {
        nint start = Marshal.UnsafeAddrOfPinnedArrayElement(_room, 0);
        return _room.AsSpan((int)(RoundedUp(start) - start));
    }

    private static int RoundedUp(int bytes) => (int)RoundedUp((nint)bytes);

    private static nint RoundedUp(nint place) => (place + SectorBytes - 1) / SectorBytes * SectorBytes;
}
