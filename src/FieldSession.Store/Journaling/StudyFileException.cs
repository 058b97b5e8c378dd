namespace FieldSession.Store.Journaling;

/// <summary>
/// Something is the matter with a study's files. The message names the file, what is wrong, and what to do, in words
/// for the crew.
/// </summary>
public abstract class StudyFileException : IOException
{
    private protected StudyFileException(string message, Exception? cause)
        : base(message, cause)
    {
    }
}
