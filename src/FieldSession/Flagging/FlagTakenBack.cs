using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>A flag was a mistake: the reading is clean again.</summary>
/// <param name="Reading">Journal line of the reading.</param>
public sealed record FlagTakenBack(int Reading) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Flags.ObjectionTo(study, Reading);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Flags.With(study, Reading, reading => reading with { Spoilt = null }).Undoably(study, mark, "flag taken back");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new($"{Flags.InWords(after, Reading)} is clean again");
}
