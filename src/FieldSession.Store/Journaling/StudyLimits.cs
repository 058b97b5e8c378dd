namespace FieldSession.Store.Journaling;

/// <summary>How large a study may be: far above any that is driven, and such that opening it stays within the memory of a laptop.</summary>
public static class StudyLimits
{
    /// <summary>The longest text, bytes: about 1.9 million lines. Nothing is added beyond, and nothing longer is opened.</summary>
    public const long LongestTextBytes = 512L << 20;

    /// <summary>The longest file of LiteDB's that is read, bytes: what one block of memory can hold.</summary>
    internal static long LongestFileBytes => Array.MaxLength;

    /// <summary>Refuses a file that is too long to be read.</summary>
    /// <exception cref="StudyTooLargeException">It is.</exception>
    internal static void Refuse(string path, long lengthBytes, long mostBytes)
    {
        if (lengthBytes > mostBytes)
        {
            throw new StudyTooLargeException(FileOnDiskWords.StudyIsTooLarge(path, lengthBytes >> 20, mostBytes >> 20));
        }
    }
}
