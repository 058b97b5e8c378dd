using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>A reading was typed wrongly and is put right at a stop; what was stored first stays in the journal and in the report.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Levels">What the meter had shown.</param>
public sealed record ReadingCorrected(int Run, int Segment, LevelRange Levels) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study) ?? (StopGate.ReadingAt(study, Run, Segment) is null
            ? new Objection(DrivingWords.ThereIsNoReading(Run, Segment), DrivingWords.NameReadingToCorrect)
            : null);

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
        Plan plan = study.Plan!;
        return StopGate.With(study, Run, Segment, reading => reading with
        {
            Levels = Levels,
            CorrectedFrom = reading.CorrectedFrom ?? reading.Levels,
            Swapped = false,
            Confirmed = false,
            Doubt = ReadingDoubt.OfValue(Levels, plan.Route[Segment - 1], plan.Limits),
        }).Undoably(study, mark, $"correct {Run}.{Segment}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(
        DrivingWords.ReadingCorrected(StopGate.ReadingAt(before, Run, Segment)?.Levels, Levels, StopGate.InWords(after, Run, Segment)),
        StopGate.ReadingAt(after, Run, Segment)?.Doubt);
}
