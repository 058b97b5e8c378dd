namespace FieldSession.Store.Journaling;

/// <summary>A file is longer than a study may be. Nothing was read or changed.</summary>
public sealed class StudyTooLargeException(string message) : StudyFileException(message, cause: null);
