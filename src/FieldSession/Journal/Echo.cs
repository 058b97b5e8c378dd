namespace FieldSession.Journal;

/// <summary>What the program says back once an act is safe on disk.</summary>
/// <param name="Words">The act in words.</param>
/// <param name="Doubt">Why the act is doubtful and will be asked about at the next stop; null: nothing is doubtful.</param>
public sealed record Echo(string Words, string? Doubt = null);
