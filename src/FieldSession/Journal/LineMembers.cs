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
