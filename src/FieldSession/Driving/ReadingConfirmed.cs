using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The crew was asked about a doubtful reading at a stop and keeps it.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Take">Which reading of the segment, from 1; null: the last.</param>
public sealed record ReadingConfirmed(int Run, int Segment, int? Take = null) : Entry
{
    private ReadingPlace Place => new(Run, Segment, Take);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study) ?? (Place.In(study) is { IsToBeAsked: true }
            ? null
            : new Objection(DrivingWords.ThereIsNoDoubtfulReading(Place), DrivingWords.NameDoubtfulReading));

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
        return Place.With(study, reading => reading with { Confirmed = true }).Undoably(study, mark, $"confirm {Place}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new($"{Place.In(after)?.Levels} dB confirmed: {Place.InWords(after)}");
}
