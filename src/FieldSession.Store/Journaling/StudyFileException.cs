namespace FieldSession.Store.Journaling;

/// <summary>
/// Something is the matter with a study's files. The message names the file, what is wrong, and what to do, in words
/// for the crew.
/// </summary>
public abstract class StudyFileException : IOException
{
    private protected StudyFileException(string message, Exception? cause)
        : base(message, cause) { }
}

/// <summary>A file is longer than a study may be. Nothing was read or changed.</summary>
public sealed class StudyTooLargeException(string message) : StudyFileException(message, cause: null);

/// <summary>A study can't have this name.</summary>
public sealed class StudyNameException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>A line could not be made safe on disk. It is not in the journal; the lines before it are.</summary>
public sealed class LineNotSafeException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>A file holds another study than the one it was to be merged with. Nothing was changed.</summary>
public sealed class OtherStudyException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>A file is no study or is damaged beyond what the other copy can repair. Nothing was overwritten.</summary>
public sealed class StudyDamagedException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>A file already lies where a new one is wanted. It was not touched.</summary>
public sealed class StudyExistsException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>The study's file or folder may not be written to.</summary>
public sealed class StudyUnwritableException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>Another program, or this one, has the study open already.</summary>
public sealed class StudyInUseException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>The two copies of a study go on differently from the same line. Nothing was overwritten; a person has to choose.</summary>
public sealed class TwoHistoriesException(string message, Exception? cause = null) : StudyFileException(message, cause);

/// <summary>There is no study at this path, or no folder to put one into.</summary>
public sealed class StudyMissingException(string message, Exception? cause = null) : StudyFileException(message, cause);
