using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>A flag was a mistake: the reading is clean again.</summary>
/// <param name="Reading">Journal line of the reading.</param>
/// <param name="Strand">Strand of that line; null: the study's first one.</param>
public sealed record FlagTakenBack(int Reading, string? Strand = null) : Entry
{
    private LineName Place => new(Strand, Reading);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Flags.ObjectionTo(study, Place);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Flags.With(study, Place, reading => reading with { Spoilt = null, FlagTakenBack = reading.Spoilt?.Cause }).Undoably(study, mark, FlaggingWords.FlagTakenBack, Place);
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(FlaggingWords.ReadingIsCleanAgain(Flags.InWords(after, Place)));
}
