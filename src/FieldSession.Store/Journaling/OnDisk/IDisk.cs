using FieldSession.Store.Disks;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Journaling;

/// <summary>What the journal asks of a disk. The port through which tests cut the power and fill the disk.</summary>
internal interface IDisk
{
    /// <summary>Whether a file lies at a path.</summary>
    bool Exists(string path);

    /// <summary>The whole of a file, read beside whoever has it open and without locking it.</summary>
    byte[] ReadAll(string path);

    /// <summary>Opens a file for reading beside whoever has it open, without locking it.</summary>
    IDiskFile Look(string path);

    /// <summary>
    /// The same, past what the system remembers of the file: what is read is on the disk. Null: this system offers no such way.
    /// </summary>
    IDiskFile? LookPastMemory(string path);

    /// <summary>Opens a file for reading and writing, for this process alone.</summary>
    IDiskFile Open(string path, FileMode mode);

    /// <summary>Renames a file, in the place of another one if there is one.</summary>
    void Move(string from, string to);

    /// <summary>Removes a file; nothing happens where there is none.</summary>
    void Delete(string path);

    /// <summary>Makes the names in the folder of a file durable: a new file is safe only when its name is.</summary>
    /// <exception cref="IOException">The disk said no.</exception>
    void SyncFolderOf(string path);
}

/// <summary>One file, held open for this process alone. Nothing is buffered; nothing is durable before <see cref="Sync"/>.</summary>
internal interface IDiskFile : IDisposable
{
    /// <summary>Length, bytes.</summary>
    long Length { get; set; }

    /// <summary>Reads at a place; fewer bytes than asked for mean the end of the file.</summary>
    int Read(Span<byte> bytes, long at);

    /// <summary>Writes all the bytes at a place.</summary>
    void Write(ReadOnlySpan<byte> bytes, long at);

    /// <summary>Returns when everything written is on the disk itself.</summary>
    /// <exception cref="IOException">The disk said no. What it holds of the bytes written since the last time is not known, and a later
    /// success says nothing about them.</exception>
    void Sync();
}

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
