using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>
/// A fact of the day: what it says, what rules it out now, and what it does to the study. The rule is asked when
/// the fact is written, never when the journal is read back: an old fact stays a fact.
/// </summary>
public abstract record Entry
{
    /// <summary>That it was logged on paper and typed in afterwards; null: it was typed when it happened.</summary>
    public OnPaper? Paper { get; init; }

    /// <summary>Whether a fact of this kind can have been logged on paper.</summary>
    public virtual bool MayBeOnPaper => true;

    /// <summary>Whether it flags a reading.</summary>
    public virtual bool HoldsFlag => false;

    /// <summary>
    /// Whether it may be kept outside the study until the disk takes it; not where it says who is who, which is in no file before the
    /// reveal is safe.
    /// </summary>
    public virtual bool MayBeKeptElsewhere => true;

    /// <summary>What rules out writing this fact into the study as it is now; null: nothing.</summary>
    public virtual Objection? ObjectionIn(Study study) => null;

    /// <summary>
    /// Whether the fact may follow a data freeze, so that a decision about what was typed after the freeze leaves it alone: a note, the
    /// joining of a laptop, a decision, a sealing, and all of the evening.
    /// </summary>
    public virtual bool OutlivesFreeze => false;

    /// <summary>The study after this fact.</summary>
    /// <param name="study">The study before it.</param>
    /// <param name="mark">Where and when the fact is in the journal.</param>
    public abstract Study ApplyTo(Study study, LineMark mark);

    /// <summary>
    /// The same fact with runs, legs and sets numbered as the study of all laptops numbers them. A laptop that does not yet know of
    /// the others' runs counts only those it knows.
    /// </summary>
    /// <param name="study">The study of all laptops before the fact, told in the hand of the one that wrote it.</param>
    public virtual Entry Renumbered(Study study) => this;

    /// <summary>
    /// Whether what the entry is about is told. A decision on a conflict can leave out a run that a later line of its laptop speaks of;
    /// that line is then left out with it. Asked once numbers are those of the study of all laptops.
    /// </summary>
    public virtual bool IsAboutSomethingIn(Study study) => true;

    /// <summary>The act in the crew's words, and what is doubtful about it.</summary>
    /// <param name="before">The study before the fact.</param>
    /// <param name="after">The study after it.</param>
    public abstract Echo EchoIn(Study before, Study after);
}

/// <summary>What the program says back once an act is safe on disk.</summary>
/// <param name="Words">The act in words.</param>
/// <param name="Doubt">Why the act is doubtful and will be asked about at the next stop; null: nothing is doubtful.</param>
public sealed record Echo(string Words, string? Doubt = null);

/// <summary>That a fact was logged on paper and typed in afterwards. Its line keeps the time of typing besides.</summary>
/// <param name="At">When it happened, as the paper says, with the crew's offset from UTC.</param>
/// <param name="FlaggedOnSpot">Whether the paper says that its flag was given on the spot; null: it does not.</param>
public sealed record OnPaper(DateTimeOffset At, bool? FlaggedOnSpot = null);

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

/// <summary>
/// An expected no: why an act can't be done now, and what to do instead. Nothing has changed when it is given.
/// </summary>
/// <param name="Why">What rules out the act, in the crew's words.</param>
/// <param name="Instead">What to type or do instead.</param>
/// <param name="Check">The name of the check that rules it out, where an override with a reason is possible; else null.</param>
public sealed record Objection(string Why, string Instead, string? Check = null)
{
    /// <summary>
    /// What to do instead in five words at most, for who glances at the screen while the car moves; null: what to do instead is all.
    /// </summary>
    public string? Cure { get; init; }

    /// <summary>The whole sentence, as it is answered to the crew.</summary>
    public override string ToString() => Check is null ? $"{Why}; {Instead}" : $"{Check}: {Why}; {Instead}";
}
