using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>Three knocks for the recorder, and this line at the third: one moment on both clocks.</summary>
public sealed record MarkGiven : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return (study with { ClockMarks = study.ClockMarks.Add(mark) }).Undoably(study, mark, "mark");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(ListeningWords.MarkIsGiven(after.ClockMarks.Count));
    }
}
