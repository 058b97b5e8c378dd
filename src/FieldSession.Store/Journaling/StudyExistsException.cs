namespace FieldSession.Store.Journaling;

/// <summary>A file already lies where a new one is wanted. It was not touched.</summary>
public sealed class StudyExistsException(string message, Exception? cause = null) : StudyFileException(message, cause);
