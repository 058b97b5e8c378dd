namespace FieldSession.Store.Journaling;

/// <summary>There is no study at this path, or no folder to put one into.</summary>
public sealed class StudyMissingException(string message, Exception? cause = null) : StudyFileException(message, cause);
