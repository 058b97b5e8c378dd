namespace FieldSession.Store.Journaling;

/// <summary>The study's file or folder may not be written to.</summary>
public sealed class StudyUnwritableException(string message, Exception? cause = null) : StudyFileException(message, cause);
