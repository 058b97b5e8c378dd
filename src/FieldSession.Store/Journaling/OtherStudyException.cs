namespace FieldSession.Store.Journaling;

/// <summary>A file holds another study than the one it was to be merged with. Nothing was changed.</summary>
public sealed class OtherStudyException(string message, Exception? cause = null) : StudyFileException(message, cause);
