using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// Keys that act turned out to be letters of a word, or one key that was held down: what they did since a line is taken back as one act,
/// undos among it. Only the keyboard knows; nobody types it.
/// </summary>
/// <param name="From">Number of the first journal line that is taken back.</param>
public sealed record LettersTakenBack(int From) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        bool isKnown = study.IsShared || study.Before(From) is not null;
        return Gate.WhileDataAreOpen(study) ?? (isKnown ? null : new Objection(DrivingWords.LineIsNotLastAct(From), "type 'u'"));
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Before(From) ?? study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string next = after.NextSegment is { } segment ? $"; next {segment.Number} {segment.Name}" : "";
        return new Echo(DrivingWords.LettersTakenBack + next);
    }
}
