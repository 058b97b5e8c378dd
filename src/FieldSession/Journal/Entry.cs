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

    /// <summary>Whether it may be kept outside the study until the disk takes it; not where it says who is who, which is in no file before the reveal is safe.</summary>
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
    /// Whether what the entry is about is told. A decision on a conflict can leave out a run that a later line of its laptop speaks of; that line is then left out
    /// with it. Asked once numbers are those of the study of all laptops.
    /// </summary>
    public virtual bool IsAboutSomethingIn(Study study) => true;

    /// <summary>The act in the crew's words, and what is doubtful about it.</summary>
    /// <param name="before">The study before the fact.</param>
    /// <param name="after">The study after it.</param>
    public abstract Echo EchoIn(Study before, Study after);
}
