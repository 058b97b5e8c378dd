using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The run is ended before its last segment.</summary>
public sealed record RunEnded : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileARunIsOn(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.RunOn is { } run
            ? study.WithLastRun(run with { Ended = mark }).Undoably(study, mark, "end")
            : study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        int left = (after.Plan?.Route.Count ?? 0) - (after.LastRun?.Passages.Select(p => p.Segment).Distinct().Count() ?? 0);
        return new Echo($"run {after.LastRun?.Number} ended{(left > 0 ? $" with {left} segments not driven" : "")}");
    }
}
