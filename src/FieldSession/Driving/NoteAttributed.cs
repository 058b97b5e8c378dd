using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>Whose words the last note was: the driver's or the co-driver's.</summary>
/// <param name="Line">Journal line of the note.</param>
/// <param name="Who">Name of the person, or the word for the seat where the plan names nobody.</param>
/// <param name="Strand">Strand of that line; null: the study's first one.</param>
public sealed record NoteAttributed(int Line, string Who, string? Strand = null) : Entry
{
    private LineName Place => new(Strand, Line);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study) ?? (study.Notes.FindLast(n => n.Mark.Name == Place) switch
        {
            null => new Objection(DrivingWords.LineIsNoNote(Line), DrivingWords.NoteBeforeSpeaker),
            { Who: { } said } when said == Who => new Objection(DrivingWords.NoteIsTheirsAlready(Who), DrivingWords.NothingToCorrect),
            _ => null,
        });
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        int at = study.Notes.FindLastIndex(n => n.Mark.Name == Place);
        return at < 0
            ? study
            : (study with { Notes = study.Notes.SetItem(at, study.Notes[at] with { Who = Who }) }).Undoably(study, mark, $"note by {Who}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo($"note by {Who}: {after.Notes.FindLast(n => n.Mark.Name == Place)?.Words}");
    }
}
