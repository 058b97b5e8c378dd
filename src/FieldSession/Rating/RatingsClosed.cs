using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>Nobody will rate the last run any more: what was given is uncovered, and what was skipped stays skipped.</summary>
public sealed record RatingsClosed : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => EarGate.ObjectionIn(study, "ratings") ?? (study.LastRun switch
    {
        null => new Objection(JournalWords.NothingHasBeenDriven, RatingWords.RatingsAreClosedAfterRun),
        { } run when RatingCover.IsClosed(study, run.Number) => new Objection(RatingWords.RatingsAreClosedAlready(run), "go on"),
        _ => null,
    });

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.LastRun is { } run
            ? study with { RatingsClosed = study.RatingsClosed.Add(run.Number), Undoables = [] }
            : study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(RatingWords.RatingsClosedAndUncovered(after));
    }
}
