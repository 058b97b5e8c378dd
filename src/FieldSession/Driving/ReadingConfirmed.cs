using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The crew was asked about a doubtful reading at a stop and stands by it.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
public sealed record ReadingConfirmed(int Run, int Segment) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study) ?? (StopGate.ReadingAt(study, Run, Segment) is { IsToBeAsked: true }
            ? null
            : new Objection(DrivingWords.ThereIsNoDoubtfulReading(Run, Segment), DrivingWords.NameDoubtfulReading));

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Run = study.NumberOf(Run, study.Runs.Select(run => run.Started)) };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        return StopGate.With(study, Run, Segment, reading => reading with { Confirmed = true }).Undoably(study, mark, $"confirm {Run}.{Segment}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) =>
        new($"{StopGate.ReadingAt(after, Run, Segment)?.Levels} dB stands: {StopGate.InWords(after, Run, Segment)}");
}
