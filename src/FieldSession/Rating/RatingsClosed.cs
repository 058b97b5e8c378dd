using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>Nobody will rate the last run any more: what was given is uncovered, and what was skipped stays skipped.</summary>
public sealed record RatingsClosed : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => EarGate.ObjectionIn(study, "ratings") ?? (study.LastRun switch
    {
        null => new Objection("nothing has been driven", "ratings are closed after a run"),
        { } run when RatingCover.IsClosed(study, run.Number) => new Objection($"the ratings of run {run.Number} are closed already", "go on"),
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
        return new Echo($"ratings of run {after.LastRun?.Number} closed and uncovered");
    }
}
