namespace FieldSession.Journal;

/// <summary>A fact of the journal with what the program said to it.</summary>
/// <param name="Line">The line it is in.</param>
/// <param name="Place">Place of the line among those of all strands, from 1.</param>
/// <param name="Echo">What was said.</param>
public sealed record WrittenFact(Line Line, int Place, Echo Echo);
