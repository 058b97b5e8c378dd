using System.Runtime.ExceptionServices;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A file as LiteDB wants it, with two things LiteDB 5.0.21 leaves out. Its flush reaches the disk
/// (litedb-org/LiteDB#2818: commits are not synchronised). And LiteDB never meets a failing write: after one in the midst
/// of a commit the finalizer of its transaction throws, which ends the whole program (measured with a full disk). So from the
/// first fault on, nothing more is written to the disk, what LiteDB writes stays in memory, and whoever uses LiteDB
/// asks for the fault, closes LiteDB and opens it again. The disk is then as a power cut would have left it.
/// </summary>
internal abstract class DurableStream(IDiskFile file, DiskFault fault) : Stream
{
    private const int BlockSize = 4096;

    // between two checkpoints LiteDB adds a few hundred pages; a damaged page number leads gigabytes away
    private const long MostGrowthBytes = 64 << 20;

    private readonly Dictionary<long, byte[]> _notOnDisk = [];

    // asked of the file once: on a drive that is gone even the question fails
    private long _length = file.Length;
    private bool _dirty;

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => true;

    public override long Length => _length;

    public override long Position { get; set; }

    public override int Read(byte[] buffer, int offset, int count)
    {
        int wanted = (int)Math.Clamp(Length - Position, 0, count);
        Span<byte> bytes = buffer.AsSpan(offset, wanted);
        int read = file.Read(bytes, Position);
        // beyond the end of the file everything is in memory
        int all = fault.Happened ? wanted : read;
        PutWhatIsNotOnDisk(bytes[..all], Position);
        Position += all;
        return all;
    }

    public override long Seek(long offset, SeekOrigin origin) =>
        Position = origin switch
        {
            SeekOrigin.Begin => offset,
            SeekOrigin.Current => Position + offset,
            _ => Length + offset,
        };

    public override void Write(byte[] buffer, int offset, int count)
    {
        Put(buffer.AsMemory(offset, count), Position);
        Position += count;
    }

    public override void SetLength(long value)
    {
        _dirty = true;
        fault.Watch(() => file.Length = WithinReach(value));
        _length = value;
    }

    public override void Flush()
    {
        if (_dirty)
        {
            fault.Watch(file.Sync);
            _dirty = false;
        }
    }

    /// <summary>Writes at a place, without moving.</summary>
    protected virtual void Put(ReadOnlyMemory<byte> bytes, long at)
    {
        _dirty = true;
        fault.Watch(() => file.Write(bytes.Span, WithinReach(at)));
        _length = Math.Max(_length, at + bytes.Length);
        if (fault.Happened)
        {
            Keep(bytes.Span, at);
        }
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            file.Dispose();
        }

        base.Dispose(disposing);
    }

    private long WithinReach(long at) =>
        at <= _length + MostGrowthBytes ? at : throw new InvalidDataException(SecondCopyWords.StoreLeadsFarBeyond);

    // LiteDB writes whole pages at page borders, so whole blocks
    private void Keep(ReadOnlySpan<byte> bytes, long at)
    {
        for (int i = 0; i + BlockSize <= bytes.Length; i += BlockSize)
        {
            _notOnDisk[at + i] = bytes.Slice(i, BlockSize).ToArray();
        }
    }

    private void PutWhatIsNotOnDisk(Span<byte> bytes, long at)
    {
        for (int i = 0; fault.Happened && i + BlockSize <= bytes.Length; i += BlockSize)
        {
            if (_notOnDisk.TryGetValue(at + i, out byte[]? block))
            {
                block.CopyTo(bytes[i..]);
            }
        }
    }
}

/// <summary>The first fault of the disk under LiteDB, shared by its data file and its log.</summary>
internal sealed class DiskFault
{
    private Exception? _first;

    /// <summary>A disk that takes nothing at all.</summary>
    public static DiskFault FromTheBeginning() => new() { _first = new IOException(FileOnDiskWords.FileIsOnlyLookedAt) };

    /// <summary>Whether one happened.</summary>
    public bool Happened => _first is not null;

    /// <summary>
    /// Runs a step on the disk unless a fault happened before, and notes one that happens now, also that LiteDB went astray.
    /// </summary>
    public void Watch(Action step)
    {
        try
        {
            if (!Happened)
            {
                step();
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            _first = fault;
        }
    }

    /// <summary>Throws the fault, if one happened.</summary>
    public void ThrowIfHappened()
    {
        if (_first is not null)
        {
            ExceptionDispatchInfo.Throw(_first);
        }
    }
}

/// <summary>A file that LiteDB may look at: what it writes on the way stays in memory, and the file is as it was.</summary>
internal sealed class SightStream(IDiskFile file) : DurableStream(file, DiskFault.FromTheBeginning());
