using System.Collections.Immutable;

namespace FieldSession.Store.Recordings.Flac;

/// <summary>The two check sums of FLAC (RFC 9639, sections 9.1.8 and 9.3): polynomials 0x07 over a frame's header, 0x8005 over the frame.</summary>
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
