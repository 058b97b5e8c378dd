namespace FieldSession.Journal;

/// <summary>A fact of the journal with what the program said to it.</summary>
/// <param name="Line">The line it stands in.</param>
/// <param name="Echo">What was said.</param>
public sealed record WrittenFact(Line Line, Echo Echo);
