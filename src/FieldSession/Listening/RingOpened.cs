using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>The ring is uncovered before the last prediction is locked; predictions locked from now on were made after it was seen.</summary>
/// <param name="Why">The reason.</param>
public sealed record RingOpened(string Why) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => ListeningGate.ObjectionIn(study) ?? (study switch
    {
        { RingOpening: not null } => new Objection(ListeningWords.RingIsOpenAlready, "go on"),
        { Recordings.Count: 0 } => new Objection(ListeningWords.NoRecordingYet, ListeningWords.ListenFirst),
        _ => null,
    });

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study with { RingOpening = new RingOpening(Why, mark), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(ListeningWords.RingIsUncovered(Why));
}
