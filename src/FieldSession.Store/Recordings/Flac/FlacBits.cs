using System.Buffers.Binary;
using System.Numerics;

namespace FieldSession.Store.Recordings.Flac;

/// <summary>Bits of a FLAC stream, high bit first. Remembers the bytes since the beginning of a frame, for its check sums.</summary>
/// <param name="bytes">The stream.</param>
internal sealed class FlacBits(ByteSource bytes)
{
    private const int FirstRoom = 1 << 16;
    private byte[] _buffer = new byte[FirstRoom];
    private int _begin;
    private int _at;
    private int _end;
    private ulong _cache;
    private int _bits;

    // bytes that all their bits were read of
    private int Used => _at - (_bits / 8);

    /// <summary>Whole bytes since the beginning of the frame.</summary>
    public ReadOnlySpan<byte> SinceBegin => _buffer.AsSpan(_begin, Used - _begin);

    /// <summary>Whether nothing follows.</summary>
    public bool IsAtEnd
    {
        get
        {
            Fill();
            return _bits == 0;
        }
    }

    /// <summary>A frame begins at the next byte.</summary>
    public void Begin() => _begin = Used;

    /// <summary>Passes over the bits that are left of a byte.</summary>
    public void Align() => Drop(_bits % 8);

    /// <summary>The next bits as a number; 0 to 33 of them.</summary>
    /// <exception cref="EndOfStreamException">There are not so many.</exception>
    public ulong Read(int count)
    {
        if (_bits < count)
        {
            Fill();
            Need(count);
        }

        ulong number = count == 0 ? 0 : _cache >> (64 - count);
        Drop(count);
        return number;
    }

    /// <summary>The next bits as a number in two's complement; 1 to 33 of them.</summary>
    /// <exception cref="EndOfStreamException">There are not so many.</exception>
    public long ReadSigned(int count)
    {
        int unused = 64 - count;
        return (long)(Read(count) << unused) >> unused;
    }

    /// <summary>How many zeros are before the next one; both are passed over.</summary>
    /// <exception cref="EndOfStreamException">No one follows.</exception>
    public long ReadUnary()
    {
        long zeros = 0;
        while (true)
        {
            int leading = BitOperations.LeadingZeroCount(_cache);
            if (leading < _bits)
            {
                Drop(leading + 1);
                return zeros + leading;
            }

            zeros += _bits;
            Drop(_bits);
            Fill();
            Need(1);
        }
    }

    private void Drop(int count)
    {
        _cache = count == 64 ? 0 : _cache << count;
        _bits -= count;
    }

    private void Need(int count)
    {
        if (_bits < count)
        {
            throw new EndOfStreamException();
        }
    }

    private void Fill()
    {
        if (_end - _at < 8)
        {
            FillBuffer();
        }

        if (_end - _at >= 8)
        {
            int taken = (63 - _bits) / 8;
            ulong next = BinaryPrimitives.ReadUInt64BigEndian(_buffer.AsSpan(_at));
            ulong kept = taken == 8 ? next : next & ~(ulong.MaxValue >> (8 * taken));
            _cache |= kept >> _bits;
            _at += taken;
            _bits += 8 * taken;
            return;
        }

        while (_bits <= 56 && _at < _end)
        {
            _cache |= (ulong)_buffer[_at++] << (56 - _bits);
            _bits += 8;
        }
    }

    // what lies before the frame is no longer needed; a frame longer than the room gets more room
    private void FillBuffer()
    {
        int kept = _end - _begin;
        byte[] room = kept > _buffer.Length / 2 ? new byte[2 * _buffer.Length] : _buffer;
        _buffer.AsSpan(_begin, kept).CopyTo(room);
        (_at, _end, _begin, _buffer) = (_at - _begin, kept, 0, room);
        _end += bytes.Read(_buffer.AsSpan(_end));
    }
}

/// <summary>What a FLAC stream says of itself (RFC 9639, section 8.2).</summary>
/// <param name="Format">How the samples are written.</param>
/// <param name="Samples">Samples of every channel; 0: not told.</param>
/// <param name="LargestBlock">Samples of the largest block; of every block where they are alike.</param>
internal sealed record FlacStreamHeader(SoundFormat Format, long Samples, int LargestBlock)
{
    private const int StreamInfoBytes = 34;

    /// <summary>Reads to the first frame; what else is there is passed over.</summary>
    /// <exception cref="InvalidDataException">The stream does not begin as FLAC has to.</exception>
    /// <exception cref="EndOfStreamException">The stream ends within it.</exception>
    public static FlacStreamHeader Read(FlacBits bits)
    {
        if (bits.Read(32) != 0x664C6143)
        {
            throw new InvalidDataException();
        }

        (bool last, int kind, int size) = BlockHead(bits);
        if (kind != 0 || size != StreamInfoBytes)
        {
            throw new InvalidDataException();
        }

        bits.Read(16);
        int largest = (int)bits.Read(16);
        bits.Read(24);
        bits.Read(24);
        int rate = (int)bits.Read(20);
        int channels = (int)bits.Read(3) + 1;
        int width = (int)bits.Read(5) + 1;
        long samples = ((long)bits.Read(4) << 32) | (long)bits.Read(32);
        Pass(bits, 16);
        while (!last)
        {
            (last, _, size) = BlockHead(bits);
            Pass(bits, size);
        }

        return largest >= 16 && width >= 4
            ? new(new(rate, width, channels, IsFloat: false), samples, largest)
            : throw new InvalidDataException();
    }

    private static (bool Last, int Kind, int Size) BlockHead(FlacBits bits) => (bits.Read(1) == 1, (int)bits.Read(7), (int)bits.Read(24));

    private static void Pass(FlacBits bits, int size)
    {
        for (int i = 0; i < size; i++)
        {
            bits.Begin();
            bits.Read(8);
        }
    }
}
