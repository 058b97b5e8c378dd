namespace FieldSession.Store.Journaling;

/// <summary>The names of a study's files, which lie beside each other.</summary>
/// <param name="Study">The LiteDB file, as the crew names it.</param>
/// <param name="Log">LiteDB's own log: the study's name, "-log", its extension. Gone after a clean close.</param>
/// <param name="Journal">The plain text: the study's name with the extension .journal. Also the lock.</param>
/// <param name="Rescue">Every line found, written before a damaged journal is overwritten, gone when it is whole again.</param>
internal sealed record StudyPaths(string Study, string Log, string Journal, string Rescue)
{
    private const string JournalExtension = ".journal";

    /// <exception cref="StudyNameException">The name is that of a journal, which would be its own study.</exception>
    public static StudyPaths Of(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        string study = Path.GetFullPath(path);
        string extension = Path.GetExtension(study);
        if (extension.Equals(JournalExtension, StringComparison.OrdinalIgnoreCase))
        {
            throw new StudyNameException(FileOnDiskWords.NameIsOfJournal(path, Path.ChangeExtension(path, ".study")));
        }

        string stem = study[..^extension.Length];
        string journal = stem + JournalExtension;
        return new StudyPaths(study, $"{stem}-log{extension}", journal, journal + "-rescue");
    }
}

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
