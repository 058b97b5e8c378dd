namespace FieldSession.Store.Journaling;

/// <summary>The two copies of a study go on differently from the same line. Nothing was overwritten; a person has to choose.</summary>
public sealed class TwoHistoriesException(string message, Exception? cause = null) : StudyFileException(message, cause);
