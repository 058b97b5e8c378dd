using System.Collections.Immutable;

namespace FieldSession.Store.Recordings.Flac;

/// <summary>The header of a frame of FLAC (RFC 9639, section 9.1).</summary>
/// <param name="BlockSize">Samples of every channel.</param>
/// <param name="RateHz">Samples a second; 0: as the stream says.</param>
/// <param name="Assignment">Below 8: channels less one; 8 left and side, 9 side and right, 10 middle and side.</param>
/// <param name="Bits">Bits of a sample; 0: as the stream says.</param>
/// <param name="Number">Number of the frame, or of its first sample.</param>
/// <param name="CountsSamples">Whether the number counts samples: blocks then differ in size.</param>
internal readonly record struct FlacFrame(int BlockSize, int RateHz, int Assignment, int Bits, long Number, bool CountsSamples)
{
    private const int Sync = 0x7FFC;

    /// <summary>Channels of the frame.</summary>
    public int Channels => Assignment < 8 ? Assignment + 1 : 2;

    /// <summary>Whether the frame has the channels, rate and bits of the stream.</summary>
    public bool Keeps(SoundFormat format) =>
        Channels == format.Channels && (RateHz == 0 || RateHz == format.RateHz) && (Bits == 0 || Bits == format.Bits);

    /// <summary>Reads a header and checks its sum.</summary>
    /// <exception cref="InvalidDataException">No frame begins here, or its header is damaged.</exception>
    /// <exception cref="EndOfStreamException">The stream ends within it.</exception>
    public static FlacFrame Read(FlacBits bits)
    {
        bits.Begin();
        int sync = (int)bits.Read(15);
        bool countsSamples = bits.Read(1) == 1;
        int size = (int)bits.Read(4);
        int rate = (int)bits.Read(4);
        int assignment = (int)bits.Read(4);
        int width = (int)bits.Read(3);
        bool reserved = bits.Read(1) == 1;
        if (sync != Sync || reserved || assignment > 10 || size == 0 || rate == 15 || width == 3)
        {
            throw new InvalidDataException();
        }

        long number = ReadNumber(bits);
        FlacFrame frame = new(SizeOf(size, bits), RateOf(rate, bits), assignment, BitsOf(width), number, countsSamples);
        bits.Read(8);
        return FlacChecks.Crc8(bits.SinceBegin) == 0 ? frame : throw new InvalidDataException();
    }

    private static int SizeOf(int code, FlacBits bits) =>
        code switch
        {
            1 => 192,
            <= 5 => 144 << code,
            6 => (int)bits.Read(8) + 1,
            7 => (int)bits.Read(16) + 1,
            _ => 1 << code,
        };

    private static int RateOf(int code, FlacBits bits) =>
        code switch
        {
            0 => 0,
            12 => 1000 * (int)bits.Read(8),
            13 => (int)bits.Read(16),
            14 => 10 * (int)bits.Read(16),
            _ => UsualRate(code),
        };

    private static int UsualRate(int code)
    {
        ReadOnlySpan<int> rates = [0, 88_200, 176_400, 192_000, 8000, 16_000, 22_050, 24_000, 32_000, 44_100, 48_000, 96_000];
        return rates[code];
    }

    private static int BitsOf(int code)
    {
        ReadOnlySpan<int> widths = [0, 8, 12, 0, 16, 20, 24, 32];
        return widths[code];
    }

    // as long as UTF-8 once allowed: up to 36 bits in 7 bytes
    private static long ReadNumber(FlacBits bits)
    {
        long first = (long)bits.Read(8);
        if (first < 0x80)
        {
            return first;
        }

        int more = System.Numerics.BitOperations.LeadingZeroCount((uint)(~first << 24)) - 1;
        if (more is < 1 or > 6)
        {
            throw new InvalidDataException();
        }

        long number = first & (0x3F >> more);
        for (int i = 0; i < more; i++)
        {
            number = (number << 6) | (long)(bits.Read(8) & 0x3F);
        }

        return number;
    }
}

/// <summary>
/// The two check sums of FLAC (RFC 9639, sections 9.1.8 and 9.3): polynomials 0x07 over a frame's header, 0x8005 over the frame.
/// </summary>
internal static class FlacChecks
{
    private static readonly ImmutableArray<ushort> Table = [.. Enumerable.Range(0, 256).Select(i => Shifted((ushort)(i << 8)))];

    /// <summary>Check sum of a frame's header; 0 where its own last byte is among the bytes and right.</summary>
    public static int Crc8(ReadOnlySpan<byte> bytes)
    {
        int sum = 0;
        foreach (byte one in bytes)
        {
            sum ^= one;
            for (int bit = 0; bit < 8; bit++)
            {
                sum = (sum & 0x80) != 0 ? ((sum << 1) ^ 0x07) & 0xFF : sum << 1;
            }
        }

        return sum;
    }

    /// <summary>Check sum of a frame; 0 where its own two last bytes are among the bytes and right.</summary>
    public static int Crc16(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<ushort> table = Table.AsSpan();
        int sum = 0;
        foreach (byte one in bytes)
        {
            sum = ((sum << 8) & 0xFFFF) ^ table[(sum >> 8) ^ one];
        }

        return sum;
    }

    private static ushort Shifted(int sum)
    {
        for (int bit = 0; bit < 8; bit++)
        {
            sum = (sum & 0x8000) != 0 ? (sum << 1) ^ 0x8005 : sum << 1;
        }

        return (ushort)sum;
    }
}
