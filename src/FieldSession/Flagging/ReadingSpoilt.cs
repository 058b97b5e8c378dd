using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>
/// A reading was spoilt: it is left out of the clean result. A flag given after the next segment has begun is late: it
/// is kept and used in the sensitivity result only.
/// </summary>
/// <param name="Reading">Journal line of the reading.</param>
/// <param name="Cause">What spoilt it.</param>
/// <param name="Words">More in the crew's words; null: none.</param>
/// <param name="Strand">Strand of that line; null: the study's first one.</param>
public sealed record ReadingSpoilt(int Reading, SpoiltCause Cause, string? Words = null, string? Strand = null) : Entry
{
    private LineName Place => new(Strand, Reading);

    /// <inheritdoc/>
    public override bool HoldsFlag => true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Flags.ObjectionTo(study, Place) ??
        (Flags.Find(study, Place)?.Reading.Spoilt is { } spoilt && spoilt.Cause == Cause && spoilt.Words == Words
            ? new Objection(FlaggingWords.FlagIsThatAlready(Cause), FlaggingWords.FlagAgainTakesBack(Cause))
            : null);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Flags.With(study, Place, reading => reading with { Spoilt = new Spoiling(Cause, Words, IsLate(study, reading)), FlagTakenBack = null })
            .Undoably(study, mark, $"flag {Cause.Word()}", Place);
    }

    // of what was typed in from paper, only the paper can say that it was flagged on the spot
    private bool IsLate(Study study, Reading reading) =>
        Paper is null ? reading.Mark.IsTypedLater || Flags.IsLate(study, reading) : Paper.FlaggedOnSpot != true;

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string late = Flags.Find(after, Place) is { Reading.Spoilt.Late: true } ? FlaggingWords.FlaggedLate : "";
        return new Echo($"{Flags.InWords(after, Place)} spoilt by {Cause.Word()}{(Words is null ? "" : $": {Words}")}{late}");
    }
}
