namespace FieldSession.Store.Journaling;

/// <summary>Another program, or this one, has the study open already.</summary>
public sealed class StudyInUseException(string message, Exception? cause = null) : StudyFileException(message, cause);
