namespace FieldSession.Store.Journaling;

/// <summary>What is wrong with the second copy, the LiteDB file.</summary>
internal static class SecondCopyWords
{
    // the LiteDB file
    public static string StoreIsTooShort(ReadOnlySpan<byte> file) => $"it is only {file.Length} bytes long, less than the head of a study";

    public const string StoreBeginsOtherwise = "it does not begin like a study (no LiteDB head)";

    public static string StoreIsOfOtherFormat(byte found, byte readable) =>
        $"it is of LiteDB file format {found}; this program reads format {readable}";

    public static string StoreCantBeRead(string why) => $"LiteDB can't read it ({why})";

    public const string StoreLeadsFarBeyond = "its pages lead far beyond the end of the file";

    public const string StoreIsGoneOrEmpty = "the file is gone or empty; only LiteDB's log of it is left";
    public const string PlaceIsTakenOrNone = "a document claims a place that is taken, or no place";

    public static string PlacesAreMissing(long from, long to) => $"no document holds the places {from} to {to}";

    public const string HashIsNotOfText = "its hash is not the hash of its text";

    public static string EndsDiffer(int forwards, long backwards) =>
        $"it ends at place {forwards} when read forwards and at place {backwards} when read backwards";

    public const string StoreHoldsOtherLines = "it holds other lines than the text";
}
