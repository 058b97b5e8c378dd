using System.Runtime.InteropServices;
using FieldSession.Store.Journaling;

namespace FieldSession.Tests.Crashes;

/// <summary>What a disk can be asked, as far as a power cut minds.</summary>
internal enum DiskAct
{
    Name,
    Write,
    Cut,
    Sync,
    Move,
    Delete,
    Acknowledge,
}

/// <summary>Something that was done to a file.</summary>
internal sealed record DiskEvent(string Path, DiskAct Act, long At, byte[] Bytes)
{
    public string To { get; init; } = "";
}

/// <summary>A file's bytes.</summary>
internal sealed class MemoryFile
{
    public List<byte> Bytes { get; init; } = [];

    /// <summary>What the disk itself holds, where flushes may fail.</summary>
    public List<byte> OnDisk { get; private set; } = [];

    public bool IsOpen { get; set; }

    private List<(long At, byte[] Bytes)> Dirty { get; } = [];

    /// <summary>Brings what was written since the last flush to the disk, or drops it.</summary>
    public void Flush(bool isDropped)
    {
        if (!isDropped)
        {
            MemoryFile disk = new() { Bytes = OnDisk };
            Dirty.ForEach(change => disk.Put(change.Bytes, change.At));
            disk.Cut(Bytes.Count);
        }

        Dirty.Clear();
    }

    public void Write(ReadOnlySpan<byte> bytes, long at)
    {
        Dirty.Add((at, bytes.ToArray()));
        Put(bytes, at);
    }

    private void Put(ReadOnlySpan<byte> bytes, long at)
    {
        Cut(Math.Max(Bytes.Count, at + bytes.Length));
        bytes.CopyTo(CollectionsMarshal.AsSpan(Bytes)[(int)at..]);
    }

    public void Cut(long length)
    {
        int before = Bytes.Count;
        CollectionsMarshal.SetCount(Bytes, (int)length);
        if (length > before)
        {
            CollectionsMarshal.AsSpan(Bytes)[before..].Clear();
        }
    }
}

/// <summary>A file of a <see cref="MemoryDisk"/>, held open.</summary>
internal sealed class MemoryHandle(MemoryDisk disk, string path, MemoryFile file, bool isOnlyRead = false) : IDiskFile
{
    private readonly int _pulled = disk.Pulled;

    private bool IsAlive => disk.IsThere && disk.Pulled == _pulled;

    public long Length
    {
        get => disk.Locked(() => Alive(file.Bytes.Count));
        set
        {
            disk.Locked(() =>
            {
                disk.Take(Alive(value) - file.Bytes.Count);
                file.Cut(value);
                return true;
            });
            disk.Record(new DiskEvent(path, DiskAct.Cut, value, []));
        }
    }

    public int Read(Span<byte> bytes, long at)
    {
        int asked = bytes.Length;
        byte[] read = disk.Locked(() =>
            Alive(at) >= file.Bytes.Count ? [] : file.Bytes.GetRange((int)at, (int)Math.Min(asked, file.Bytes.Count - at)).ToArray()
        );
        read.CopyTo(bytes);
        return read.Length;
    }

    public void Write(ReadOnlySpan<byte> bytes, long at)
    {
        byte[] written = bytes.ToArray();
        disk.Locked(() =>
        {
            disk.Take(Alive(at) + written.Length - file.Bytes.Count);
            file.Write(written, at);
            return true;
        });
        disk.Record(new DiskEvent(path, DiskAct.Write, at, written));
    }

    public void Sync()
    {
        _ = Alive(0);
        if (disk.HasMemoryAndDisk)
        {
            bool fails = disk.FailsToFlush?.Invoke(path) == true;
            file.Flush(fails || disk.LiesAtFlush?.Invoke(path) == true);
            if (fails)
            {
                throw new IOException("Input/output error", 5);
            }
        }

        disk.Record(new DiskEvent(path, DiskAct.Sync, 0, []));
    }

    public void Dispose()
    {
        if (IsAlive && !isOnlyRead)
        {
            file.IsOpen = false;
        }
    }

    private long Alive(long value)
    {
        disk.ThrowWhileAway();
        return IsAlive ? value : throw new IOException("Input/output error", 5);
    }
}
