namespace FieldSession.Journal;

/// <summary>What came of an act: written and safe on disk, refused, or not saved because the disk would not take it.</summary>
/// <param name="Number">Place of the line in the journal, from 1; null: nothing was written.</param>
/// <param name="Echo">What the program says back; null: nothing was written.</param>
/// <param name="Objection">Why the act was refused; null: it was not.</param>
/// <param name="NotSavedBecause">Why the disk would not take it; null: it did, or the act was refused before.</param>
public sealed record Outcome(int? Number, Echo? Echo, Objection? Objection, string? NotSavedBecause)
{
    /// <summary>The act is safe on disk.</summary>
    public static Outcome Written(int number, Echo echo) => new(number, echo, null, null);

    /// <summary>The act was refused; nothing changed.</summary>
    public static Outcome Refused(Objection objection) => new(null, null, objection, null);

    /// <summary>The disk would not take it; nothing changed, and the acts before it are safe.</summary>
    public static Outcome NotSaved(string because) => new(null, null, null, because);

    /// <summary>Whether the act is safe on disk.</summary>
    public bool IsWritten => Number is not null;
}
