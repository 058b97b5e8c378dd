using System.Collections.Immutable;
using FieldSession.Journal;
using LiteDB;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A line as a LiteDB document: <c>_id</c> its place in the file (Int64, from 1), <c>hash</c> 32 bytes, <c>json</c> the exact text. Beside
/// them are fields for whoever questions the file (docs/files.md, "The study file"): nothing here reads them. Made by hand: LiteDB's mapper
/// trims and empties strings, which would break every hash.
/// </summary>
internal static class StoredLine
{
    /// <summary>The collection that holds the lines.</summary>
    public const string Collection = "journal";

    /// <summary>The fields that have an index.</summary>
    public static ImmutableArray<string> Indexed { get; } = ["kind", "run", "segment"];

    /// <summary>The document of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="place">Its place in the file, from 1.</param>
    /// <param name="fact">What it did.</param>
    public static BsonDocument Of(Line line, long place, LineFact fact)
    {
        BsonDocument document = new()
        {
            ["_id"] = place,
            ["hash"] = Convert.FromHexString(line.Hash),
            ["json"] = line.Json,
            ["kind"] = line.Kind,
            ["at"] = line.At.UtcDateTime,
            ["strand"] = line.Strand,
        };
        (string Name, BsonValue? Value)[] told =
        [
            ("run", fact.Run),
            ("code", fact.Code),
            ("segment", fact.Segment),
            ("low", fact.LowDb),
            ("high", fact.HighDb),
            ("cause", fact.Cause),
        ];
        foreach ((string name, BsonValue? value) in told.Where(one => one.Value is { IsNull: false }))
        {
            document[name] = value;
        }

        return document;
    }

    /// <summary>The place a document claims; 0: none.</summary>
    public static long PlaceIn(BsonDocument document) => document["_id"] is { IsInt64: true } place ? place.AsInt64 : 0;

    /// <summary>Whether a document holds exactly this line.</summary>
    public static bool Holds(BsonDocument document, Line line) =>
        document["json"] is { IsString: true } json && json.AsString == line.Json && HashIn(document) == line.Hash;

    /// <summary>The line in a document; null: none that is valid.</summary>
    public static Line? LineIn(BsonDocument document) =>
        document["json"] is { IsString: true } json && HashIn(document) is { } hash ? Line.FromParts(hash, json.AsString) : null;

    private static string? HashIn(BsonDocument document) =>
        document["hash"] is { IsBinary: true } hash ? Convert.ToHexStringLower(hash.AsBinary) : null;
}

/// <summary>
/// Whether a file is LiteDB's at all, asked before LiteDB sees it: LiteDB crops or overwrites whatever it is given.
/// File format 8: bytes 32 to 58 carry the words below, byte 59 the number 8 (LiteDB 5.0.21, HeaderPage).
/// </summary>
internal static class StudyHeader
{
    /// <summary>Length of the head, bytes: LiteDB's first page.</summary>
    public const int PageSize = 8192;

    private const int WordsAt = 32;
    private const byte Format = 8;

    /// <summary>What is wrong with the head of a file; null: it may be given to LiteDB.</summary>
    public static string? FaultIn(ReadOnlySpan<byte> file)
    {
        ReadOnlySpan<byte> words = "** This is a LiteDB file **"u8;
        if (file.Length < PageSize)
        {
            return SecondCopyWords.StoreIsTooShort(file);
        }

        if (!file.Slice(WordsAt, words.Length).SequenceEqual(words))
        {
            return SecondCopyWords.StoreBeginsOtherwise;
        }

        byte format = file[WordsAt + words.Length];
        return format == Format ? null : SecondCopyWords.StoreIsOfOtherFormat(format, Format);
    }
}
