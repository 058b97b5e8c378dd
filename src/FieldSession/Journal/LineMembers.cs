using System.Buffers;
using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text.Json;

namespace FieldSession.Journal;

/// <summary>The members of a line's JSON, read once from front to back.</summary>
internal struct LineMembers
{
    private static ReadOnlySpan<byte> NoDigits => "0000000000000000000000000000000000000000000000000000000000000000"u8;

    /// <summary>Number within the strand, from 1.</summary>
    public int? Number { get; private set; }

    /// <summary>Hash of the strand's line before; zeros in the first.</summary>
    public Digest? Previous { get; private set; }

    /// <summary>When it was written, UTC.</summary>
    public DateTimeOffset? At { get; private set; }

    /// <summary>The laptop's own chain, 16 hex digits.</summary>
    public string? Strand { get; private set; }

    /// <summary>Kind of entry, as named on disk.</summary>
    public string? Kind { get; private set; }

    /// <summary>Version of that kind.</summary>
    public int? Version { get; private set; }

    /// <summary>Where the body is in the JSON, bytes.</summary>
    public Range? Body { get; private set; }

    /// <summary>Reads a line's JSON; null where it is none, or a member is missing.</summary>
    public static LineMembers? In(ReadOnlySpan<byte> json)
    {
        try
        {
            Utf8JsonReader reader = new(json);
            return reader.Read() && reader.TokenType == JsonTokenType.StartObject ? Of(ref reader) : null;
        }
        catch (Exception notALine) when (notALine is JsonException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static LineMembers? Of(ref Utf8JsonReader reader)
    {
        LineMembers members = default;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            members.Take(ref reader);
        }

        return members.AreThere && !reader.Read() ? members : null;
    }

    private readonly bool AreThere =>
        (Number, At, Version) is ({ }, { }, { }) && Previous is not null && (Strand, Kind) is ({ }, { }) && Body is not null;

    private void Take(ref Utf8JsonReader reader)
    {
        string name = reader.GetString()!;
        reader.Read();
        switch (name)
        {
            case "seq":
                Number = reader.GetInt32();
                break;
            case "prev":
                Previous = Digest.Parse(reader.TokenType == JsonTokenType.Null ? NoDigits : reader.ValueSpan);
                break;
            case "at":
                At = reader.GetDateTimeOffset();
                break;
            case "strand":
                Strand = string.Intern(reader.GetString() ?? "");
                break;
            case "kind":
                Kind = string.Intern(reader.GetString() ?? "");
                break;
            case "v":
                Version = reader.GetInt32();
                break;
            default:
                Pass(name, ref reader);
                break;
        }
    }

    private void Pass(string name, ref Utf8JsonReader reader)
    {
        int from = (int)reader.TokenStartIndex;
        reader.Skip();
        Body = name == "body" ? from..(int)reader.BytesConsumed : Body;
    }
}

/// <summary>
/// A SHA-256 (FIPS 180-4), 32 bytes held as two numbers: a study has two for each line, and as text they would take four times the memory.
/// </summary>
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
        return
            digits.Length == 2 * Length
            && !digits.ContainsAnyExcept(Digits)
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
