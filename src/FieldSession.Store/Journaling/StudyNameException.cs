namespace FieldSession.Store.Journaling;

/// <summary>A study can't have this name.</summary>
public sealed class StudyNameException(string message, Exception? cause = null) : StudyFileException(message, cause);
