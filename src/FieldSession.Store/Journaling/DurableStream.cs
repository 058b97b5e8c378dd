namespace FieldSession.Store.Journaling;

/// <summary>
/// A file as LiteDB wants it, with the one thing LiteDB 5.0.21 leaves out: its flush reaches the disk
/// (litedb-org/LiteDB#2818: commits are not synchronised).
/// </summary>
internal abstract class DurableStream(IDiskFile file) : Stream
{
    private bool _dirty;

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => true;

    public override long Length => file.Length;

    public override long Position { get; set; }

    public override int Read(byte[] buffer, int offset, int count)
    {
        int read = file.Read(buffer.AsSpan(offset, count), Position);
        Position += read;
        return read;
    }

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => Position + offset,
        _ => Length + offset,
    };

    public override void Write(byte[] buffer, int offset, int count)
    {
        Put(buffer.AsSpan(offset, count), Position);
        Position += count;
    }

    public override void SetLength(long value)
    {
        _dirty = true;
        file.Length = value;
    }

    public override void Flush()
    {
        if (_dirty)
        {
            file.Sync();
            _dirty = false;
        }
    }

    /// <summary>Writes at a place, without moving.</summary>
    protected virtual void Put(ReadOnlySpan<byte> bytes, long at)
    {
        _dirty = true;
        file.Write(bytes, at);
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            file.Dispose();
        }

        base.Dispose(disposing);
    }
}
