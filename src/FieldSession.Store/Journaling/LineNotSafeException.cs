namespace FieldSession.Store.Journaling;

/// <summary>A line could not be made safe on disk. It is not in the journal; the lines before it are.</summary>
public sealed class LineNotSafeException(string message, Exception? cause = null) : StudyFileException(message, cause);
