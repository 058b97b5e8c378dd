using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FieldSession.Journal;

/// <summary>
/// One line of the journal, as it is on disk for ever.
/// <para>
/// Text form: 64 lower-case hex digits, one space, one JSON object without line breaks. The digits are the SHA-256 of
/// the JSON's UTF-8 bytes, exactly as they are; the JSON is never written again. Its members, in this order:
/// <c>seq</c> (1, 2, 3, ... within the strand), <c>prev</c> (the digits of the strand's line before; 64 zeros in
/// its first), <c>at</c> (UTC, ISO 8601), <c>strand</c> (16 hex digits, drawn by lot when a laptop writes its first line),
/// <c>kind</c> and <c>v</c> (the kind of entry and its version), <c>body</c> (the entry).
/// </para>
/// <para>
/// A line is valid if and only if its digits are the hash of its JSON. A strand is valid if and only if its lines are
/// valid, are numbered 1, 2, 3, ... and each names the digits of the line before it as <c>prev</c>.
/// </para>
/// <para>
/// Every object of this class is a valid line. Its text is kept as the bytes that were read or written, and two lines with the
/// same digits are equal.
/// </para>
/// </summary>
public sealed record Line
{
    /// <summary>The hash that the first line of a strand names as the one before it.</summary>
    public const string NoHash = "0000000000000000000000000000000000000000000000000000000000000000";

    private const int HashLength = 64;

    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.Default };

    private readonly ReadOnlyMemory<byte> _json;
    private readonly Range _body;
    private readonly Digest _hash;
    private readonly Digest _previous;

    private Line(ReadOnlyMemory<byte> json, Digest hash, in LineMembers members)
    {
        _json = json;
        _hash = hash;
        _previous = members.Previous!.Value;
        _body = members.Body!.Value;
        Number = members.Number!.Value;
        At = members.At!.Value;
        Strand = members.Strand!;
        Kind = members.Kind!;
        Version = members.Version!.Value;
    }

    /// <summary>Number within the strand, from 1.</summary>
    public int Number { get; }

    /// <summary>Hash of the strand's line before, 64 hex digits; zeros in the first.</summary>
    public string PreviousHash => _previous.ToString();

    /// <summary>When it was written, UTC.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The laptop's own chain, 16 hex digits.</summary>
    public string Strand { get; }

    /// <summary>Kind of entry, as named on disk.</summary>
    public string Kind { get; }

    /// <summary>Version of that kind.</summary>
    public int Version { get; }

    /// <summary>The exact JSON text that is hashed.</summary>
    public string Json => Encoding.UTF8.GetString(_json.Span);

    /// <summary>The entry, as it is in the JSON: UTF-8.</summary>
    public ReadOnlySpan<byte> Body => _json.Span[_body];

    /// <summary>SHA-256 of the JSON, 64 lower-case hex digits.</summary>
    public string Hash => _hash.ToString();

    /// <summary>Makes the next line of a strand.</summary>
    /// <param name="number">Number within the strand, from 1.</param>
    /// <param name="previousHash">Hash of the line before, or <see cref="NoHash"/>.</param>
    /// <param name="at">When it is written.</param>
    /// <param name="strand">The strand it belongs to.</param>
    /// <param name="kind">Kind of entry, as named on disk.</param>
    /// <param name="version">Version of that kind.</param>
    /// <param name="writeBody">Writes the entry as one JSON value.</param>
    public static Line Make(
        int number,
        string previousHash,
        DateTimeOffset at,
        string strand,
        string kind,
        int version,
        Action<Utf8JsonWriter> writeBody
    )
    {
        ArgumentNullException.ThrowIfNull(writeBody);
        ArrayBufferWriter<byte> bytes = new(256);
        using (Utf8JsonWriter json = new(bytes, Plain))
        {
            json.WriteStartObject();
            json.WriteNumber("seq", number);
            json.WriteString("prev", previousHash);
            json.WriteString("at", at.UtcDateTime);
            json.WriteString("strand", strand);
            json.WriteString("kind", kind);
            json.WriteNumber("v", version);
            json.WritePropertyName("body");
            writeBody(json);
            json.WriteEndObject();
        }

        return FromParts(Digest.Of(bytes.WrittenSpan), bytes.WrittenMemory.ToArray())
            ?? throw new ArgumentException($"line {number} would be none: its hash, strand, kind or body is not as it has to be");
    }

    /// <summary>Reads a line's text form; null where it is no valid line.</summary>
    public static Line? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Parse(Encoding.UTF8.GetBytes(text));
    }

    /// <summary>Reads a line's text form in UTF-8; null where it is no valid line. The line keeps these bytes, not a copy.</summary>
    public static Line? Parse(ReadOnlyMemory<byte> text) =>
        text.Length > HashLength + 2 && text.Span[HashLength] == ' ' && Digest.Parse(text.Span[..HashLength]) is { } hash
            ? FromParts(hash, text[(HashLength + 1)..])
            : null;

    /// <summary>Reads a line from its hash and its JSON; null where they do not fit each other or the JSON is no line.</summary>
    public static Line? FromParts(string hash, string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Digest.Parse(Encoding.UTF8.GetBytes(hash)) is { } digest ? FromParts(digest, Encoding.UTF8.GetBytes(json)) : null;
    }

    /// <summary>The text form, without a line break.</summary>
    public override string ToString() => $"{Hash} {Json}";

    /// <summary>Length of the text form in UTF-8, bytes, without a line break.</summary>
    public int LengthBytes => HashLength + 1 + _json.Length;

    /// <summary>Writes the text form in UTF-8, exactly as it was read or made, without a line break.</summary>
    public void WriteTo(IBufferWriter<byte> text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text.Write(Encoding.ASCII.GetBytes(Hash));
        text.Write(" "u8);
        text.Write(_json.Span);
    }

    /// <summary>Whether the text is the same: the same digits.</summary>
    public bool Equals(Line? other) => other is not null && _hash == other._hash;

    /// <inheritdoc/>
    public override int GetHashCode() => _hash.GetHashCode();

    /// <summary>Whether this line follows another of the same strand; null: whether it is a strand's first line.</summary>
    public bool Follows(Line? previous) =>
        previous is null
            ? Number == 1 && _previous == default
            : Number == previous.Number + 1 && _previous == previous._hash && Strand == previous.Strand;

    private static Line? FromParts(Digest hash, ReadOnlyMemory<byte> json) =>
        !json.Span.Contains((byte)'\n') && Digest.Of(json.Span) == hash && LineMembers.In(json.Span) is { } members
            ? new Line(json, hash, members)
            : null;
}

/// <summary>A fact of the journal with what the program said to it.</summary>
/// <param name="Line">The line it is in.</param>
/// <param name="Place">Place of the line among those of all strands, from 1.</param>
/// <param name="Echo">What was said.</param>
public sealed record WrittenFact(Line Line, int Place, Echo Echo);

/// <summary>
/// The append-only record behind a study. An appended line is safe on disk when <see cref="Append"/> returns; when it
/// throws, the line is not safe and the lines before it are.
/// </summary>
public interface IJournal : IDisposable
{
    /// <summary>Every line found when the journal was opened, in order, each of its chain verified.</summary>
    IReadOnlyList<Line> Lines { get; }

    /// <summary>Adds one line, durably.</summary>
    /// <exception cref="IOException">The line could not be made safe: disk full, drive gone, access lost.</exception>
    void Append(Line line);
}
