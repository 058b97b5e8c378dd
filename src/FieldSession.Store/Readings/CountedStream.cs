namespace FieldSession.Store.Readings;

/// <summary>A stream that counts what is read from it and ends once that exceeds the largest file allowed.</summary>
/// <param name="inner">The stream that is read.</param>
internal sealed class CountedStream(Stream inner) : Stream
{
    /// <summary>Bytes read so far; above <see cref="CsvLimits.Bytes"/>: the rest was not read.</summary>
    public long Count { get; private set; }

    /// <summary>Whether the file begins with the mark of UTF-16 or UTF-32, which a parser would quietly follow.</summary>
    public bool IsWide { get; private set; }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => Count;
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (Count > CsvLimits.Bytes)
        {
            return 0;
        }

        int read = inner.Read(buffer);
        IsWide |= Count == 0 && read >= 2 && ((buffer[0], buffer[1]) is (0xFF, 0xFE) or (0xFE, 0xFF) or (0, 0));
        Count += read;
        return read;
    }

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }
}
