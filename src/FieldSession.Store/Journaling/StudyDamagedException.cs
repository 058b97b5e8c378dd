namespace FieldSession.Store.Journaling;

/// <summary>A file is no study or is damaged beyond what the other copy can repair. Nothing was overwritten.</summary>
public sealed class StudyDamagedException(string message, Exception? cause = null) : StudyFileException(message, cause);
