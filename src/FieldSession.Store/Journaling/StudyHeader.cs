namespace FieldSession.Store.Journaling;

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
