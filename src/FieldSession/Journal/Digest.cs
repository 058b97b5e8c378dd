using System.Buffers;
using System.Buffers.Binary;
using System.Security.Cryptography;

namespace FieldSession.Journal;

/// <summary>A SHA-256 (FIPS 180-4), 32 bytes held as two numbers: a study has two for each line, and as text they would take four times the memory.</summary>
/// <param name="High">Its first 16 bytes, most significant first.</param>
/// <param name="Low">Its last 16 bytes, most significant first.</param>
internal readonly record struct Digest(UInt128 High, UInt128 Low)
{
    private const int Length = 32;

    private static readonly SearchValues<byte> Digits = SearchValues.Create("0123456789abcdef"u8);

    /// <summary>The hash of some bytes.</summary>
    public static Digest Of(ReadOnlySpan<byte> bytes)
    {
        Span<byte> hash = stackalloc byte[Length];
        SHA256.HashData(bytes, hash);
        return From(hash);
    }

    /// <summary>Reads 64 lower-case hex digits in ASCII; null where they are not that.</summary>
    public static Digest? Parse(ReadOnlySpan<byte> digits)
    {
        Span<byte> hash = stackalloc byte[Length];
        return digits.Length == 2 * Length && !digits.ContainsAnyExcept(Digits)
            && Convert.FromHexString(digits, hash, out _, out _) == OperationStatus.Done
            ? From(hash)
            : null;
    }

    /// <summary>64 lower-case hex digits.</summary>
    public override string ToString()
    {
        Span<byte> hash = stackalloc byte[Length];
        BinaryPrimitives.WriteUInt128BigEndian(hash, High);
        BinaryPrimitives.WriteUInt128BigEndian(hash[(Length / 2)..], Low);
        return Convert.ToHexStringLower(hash);
    }

    private static Digest From(ReadOnlySpan<byte> hash) =>
        new(BinaryPrimitives.ReadUInt128BigEndian(hash), BinaryPrimitives.ReadUInt128BigEndian(hash[(Length / 2)..]));
}
