using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// The run is ended before its last segment: it is aborted, what was read is kept, and its place is offered again. In older journals
/// a run that was ended early took its place for good.
/// </summary>
/// <param name="Aborted">Whether the run is aborted where segments are left; null: written by an older program.</param>
/// <param name="Cause">Why, in the crew's words; null: not said yet.</param>
public sealed record RunEnded(bool? Aborted = null, string? Cause = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileARunIsOn(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.RunOn is not { } run)
        {
            return study;
        }

        bool isAborted = Aborted == true && SegmentsLeft(study, run) > 0;
        return study.WithLastRun(run with { Ended = mark, Aborted = isAborted ? new Abort(Cause) : null }).Undoably(study, mark, "end");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        Run run = after.LastRun!;
        int left = SegmentsLeft(after, run);
        return new Echo(run.Aborted is null
            ? DrivingWords.RunEndedEarly(run, left)
            : DrivingWords.RunAborted(run, left, after.Plan!.Route.Count) + DrivingWords.PlaceIsOfferedAgain(Aborts.OfferedAgain(after)));
    }

    private static int SegmentsLeft(Study study, Run run) => (study.Plan?.Route.Count ?? 0) - run.Passages.Select(p => p.Segment).Distinct().Count();
}
