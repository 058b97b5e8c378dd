namespace FieldSession.Journal;

/// <summary>What a typed line came to: a fact to be written, or an objection that says what to type instead.</summary>
/// <param name="Entry">The fact; null where there is an objection.</param>
/// <param name="Objection">The objection; null where there is a fact.</param>
public sealed record Parsed(Entry? Entry, Objection? Objection)
{
    /// <summary>The time that was typed before the line, where it was logged on paper; null: it happens now.</summary>
    public PaperTime? Paper { get; init; }

    /// <summary>A line that is a fact.</summary>
    public static Parsed As(Entry entry) => new(entry, null);

    /// <summary>A line that can't be taken.</summary>
    /// <param name="why">What is wrong with it.</param>
    /// <param name="instead">What to type instead.</param>
    public static Parsed No(string why, string instead) => new(null, new Objection(why, instead));
}
