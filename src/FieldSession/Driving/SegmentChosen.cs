using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The next reading belongs to another segment than the one that was due: repairs an off-by-one.</summary>
/// <param name="Segment">Number of that segment.</param>
public sealed record SegmentChosen(int Segment) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileARunIsOn(study) ?? (Segment switch
        {
            < 1 => NoSuch(study),
            _ when Segment > study.Plan!.Route.Count => NoSuch(study),
            _ when Segment == study.RunOn?.NextSegment => new Objection(DrivingWords.SegmentIsNextAlready(Segment), DrivingWords.TypeItsReading),
            _ => null,
        });
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.RunOn is { } run
            ? study.WithLastRun(run with { NextSegment = Segment }).Undoably(study, mark, $"seg {Segment}")
            : study;
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return new Echo(DrivingWords.NextReadingIs(after.NextSegment));
    }

    private Objection NoSuch(Study study) => new(JournalWords.ThereIsNoSegment(Segment), JournalWords.RouteHasSegmentsTo(study));
}
