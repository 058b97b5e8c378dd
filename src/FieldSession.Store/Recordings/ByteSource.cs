namespace FieldSession.Store.Recordings;

/// <summary>Bytes of a file or a pipe, forward only, with a look at the first ones.</summary>
/// <param name="stream">Where they come from; closed by whoever opened it.</param>
/// <param name="limit">Bytes at most, so that a file that grows is not chased; null: to the end.</param>
public sealed class ByteSource(Stream stream, long? limit = null)
{
    private byte[] _ahead = [];
    private int _aheadAt;

    /// <summary>Bytes handed out so far.</summary>
    public long Position { get; private set; }

    /// <summary>Looks at the next bytes without taking them; fewer come back at the end.</summary>
    public ReadOnlySpan<byte> Peek(int count)
    {
        byte[] seen = new byte[count];
        long before = Position;
        int got = Read(seen);
        Position = before;
        _ahead = seen[..got];
        _aheadAt = 0;
        return _ahead;
    }

    /// <summary>Fills the span as far as there are bytes.</summary>
    /// <returns>Bytes read; less than asked for only at the end.</returns>
    public int Read(Span<byte> into)
    {
        int filled = Math.Min(into.Length, _ahead.Length - _aheadAt);
        _ahead.AsSpan(_aheadAt, filled).CopyTo(into);
        _aheadAt += filled;
        Position += filled;
        while (filled < into.Length)
        {
            int allowed = (int)Math.Min(into.Length - filled, limit - Position ?? int.MaxValue);
            int read = allowed <= 0 ? 0 : stream.Read(into.Slice(filled, allowed));
            if (read == 0)
            {
                break;
            }

            filled += read;
            Position += read;
        }

        return filled;
    }

    /// <summary>Passes over bytes, as far as there are any.</summary>
    public void Skip(long count)
    {
        Span<byte> passed = stackalloc byte[4096];
        while (count > 0)
        {
            int read = Read(passed[..(int)Math.Min(count, passed.Length)]);
            if (read == 0)
            {
                return;
            }

            count -= read;
        }
    }
}
