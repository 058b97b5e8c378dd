using System.Collections.Immutable;

namespace FieldSession.Tests.Fuzzing;

/// <summary>A reader of the program that takes bytes from outside.</summary>
/// <param name="Name">What it reads.</param>
/// <param name="Share">How many cases of a hundred it gets, by how fast and how deep it is.</param>
/// <param name="Seeds">Whole files that it takes, from which broken ones are made.</param>
/// <param name="Read">Reads bytes and holds what comes of them against the rule: taken whole, or refused with a reason. True: they were
/// taken.</param>
internal sealed record ByteReader(string Name, int Share, ImmutableArray<byte[]> Seeds, Func<byte[], bool> Read)
{
    // the ways in which a file is broken: at a place, so many bytes long at most
    private static ImmutableArray<Action<List<byte>, int, int, byte[], Random>> Edits =>
        [
            (bytes, at, length, _, _) => bytes.RemoveRange(at, length),
            (bytes, at, length, _, _) => bytes.InsertRange(at, bytes.GetRange(at, length)),
            (bytes, at, _, other, chance) => bytes.InsertRange(at, Piece(other, chance)),
            (bytes, at, length, _, chance) => Turn(bytes, at, length, (byte)(1 << chance.Next(8))),
            (bytes, at, length, _, chance) => Turn(bytes, at, length, (byte)chance.Next(256)),
            (bytes, at, _, _, chance) => bytes.InsertRange(at, Odd[chance.Next(Odd.Length)]),
            (bytes, at, _, _, chance) => bytes.InsertRange(at, "0123456789.,-+e"u8.ToArray().AsSpan(chance.Next(15), 1)),
            (bytes, at, _, _, chance) => bytes.RemoveRange(at, chance.Next(10) == 0 ? bytes.Count - at : 0),
        ];

    /// <summary>A case made from the seeds: pieces taken out, put in, doubled, exchanged between seeds; numbers and bits turned.</summary>
    public byte[] Case(Random chance)
    {
        List<byte> bytes = [.. Seeds[chance.Next(Seeds.Length)]];
        for (int i = chance.Next(0, 6); i >= 0; i--)
        {
            int at = chance.Next(bytes.Count + 1);
            int length = Math.Min(1 << chance.Next(8), bytes.Count - at);
            Edits[chance.Next(Edits.Length)](bytes, at, length, Seeds[chance.Next(Seeds.Length)], chance);
        }

        return [.. bytes];
    }

    private static ImmutableArray<byte[]> Odd =>
        [
            [0],
            [0xFF],
            [0xEF, 0xBB, 0xBF],
            [0xFF, 0xFE],
            [0xED, 0xA0, 0x80],
            [0x1B, 0x5B, 0x32, 0x4A],
            [0x0D],
            [0x0A],
            [0xE2, 0x80, 0xAE],
            [0xC2, 0x85],
            "\"\"\""u8.ToArray(),
            "[["u8.ToArray(),
            "]]"u8.ToArray(),
            "{%"u8.ToArray(),
            "%}"u8.ToArray(),
            "{{"u8.ToArray(),
            "1e999"u8.ToArray(),
            "-0"u8.ToArray(),
            "99999999999999999999"u8.ToArray(),
            "NaN"u8.ToArray(),
            "\\u0000"u8.ToArray(),
            "null"u8.ToArray(),
            [.. Enumerable.Repeat((byte)'[', 300)],
            [.. Enumerable.Repeat((byte)'9', 400)],
        ];

    private static void Turn(List<byte> bytes, int at, int length, byte by)
    {
        if (length > 0)
        {
            bytes[at] ^= by;
        }
    }

    private static ReadOnlySpan<byte> Piece(byte[] other, Random chance)
    {
        int at = chance.Next(other.Length + 1);
        return other.AsSpan(at, Math.Min(1 << chance.Next(7), other.Length - at));
    }
}
