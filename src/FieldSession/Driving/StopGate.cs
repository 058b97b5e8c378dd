using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>What may only be done at a stop: reading back, repairing, confirming. Nothing asks for it while the car moves.</summary>
public static class StopGate
{
    /// <summary>What rules out repairing a run now; null: nothing.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study) ?? (study switch
        {
            { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), DrivingWords.FixAtNextStop),
            { Runs.Count: 0 } => new Objection(JournalWords.NothingHasBeenDriven, DrivingWords.DriveRunFirst),
            _ => null,
        });
    }

    /// <summary>What rules out a run and a segment that were typed; null: both are there.</summary>
    public static Objection? ObjectionToPlace(Study study, int run, int segment)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (!study.HasRun(run))
        {
            return new Objection(DrivingWords.ThereIsNoRun(run), DrivingWords.RunsAreTo(study.Runs.Count));
        }

        return segment >= 1 && segment <= study.Plan!.Route.Count
            ? null
            : new Objection(JournalWords.ThereIsNoSegment(segment), JournalWords.RouteHasSegmentsTo(study));
    }
}
