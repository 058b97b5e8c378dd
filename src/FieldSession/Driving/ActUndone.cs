using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The last act is taken back. It and this fact both stay in the journal.</summary>
/// <param name="Line">Number of the journal line that is taken back.</param>
public sealed record ActUndone(int Line) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study) ?? (study.Undoables.Count > 0 && study.Undoables[^1].Line == Line
            ? null
            : new Objection(DrivingWords.LineIsNotLastAct(Line), "type 'u'"));
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        int at = study.Undoables.FindLastIndex(u => u.Line == Line);
        return at < 0 ? study : study.Undoables[at].Before with
        {
            Undoables = study.Undoables.GetRange(0, at),
            Undone = new Undoable(mark.Number, DrivingWords.Undo, study),
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string words = before.Undoables.LastOrDefault(u => u.Line == Line)?.Words ?? $"line {Line}";
        string next = after.NextSegment is { } segment ? $"; next {segment.Number} {segment.Name}" : "";
        return new Echo($"taken back: {words}{next}");
    }
}
