using FieldSession.Store.Disks;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Journaling;

/// <summary>A file of this computer, read and written at places, without a buffer between.</summary>
internal sealed class DiskFile(string path, SafeFileHandle handle) : IDiskFile
{
    /// <inheritdoc/>
    public long Length
    {
        get => RandomAccess.GetLength(handle);
        set => RandomAccess.SetLength(handle, value);
    }

    /// <inheritdoc/>
    public int Read(Span<byte> bytes, long at)
    {
        int total = 0;
        while (total < bytes.Length && RandomAccess.Read(handle, bytes[total..], at + total) is > 0 and int read)
        {
            total += read;
        }

        return total;
    }

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes, long at) => RandomAccess.Write(handle, bytes, at);

    /// <inheritdoc/>
    public void Sync() => DiskFlush.File(handle, path);

    /// <inheritdoc/>
    public void Dispose() => handle.Dispose();
}
