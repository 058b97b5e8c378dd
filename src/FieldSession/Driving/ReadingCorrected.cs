using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>A reading was typed wrongly and is put right at a stop; what was stored first stays in the journal and in the report.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Levels">What the meter had shown.</param>
/// <param name="Take">Which reading of the segment, from 1; null: the last.</param>
public sealed record ReadingCorrected(int Run, int Segment, LevelRange Levels, int? Take = null) : Entry
{
    private ReadingPlace Place => new(Run, Segment, Take);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => StopGate.ObjectionIn(study) ?? (Place.In(study) switch
    {
        null => new Objection(DrivingWords.ThereIsNoReading(Place), DrivingWords.FillOrNameReading(Place)),
        { IsToBeAsked: true } reading when reading.Levels == Levels =>
            new Objection(DrivingWords.ReadingIsThatAlready(Place, Levels), DrivingWords.ConfirmDoubtful(Place)),
        { } reading when reading.Levels == Levels =>
            new Objection(DrivingWords.ReadingIsThatAlready(Place, Levels), DrivingWords.NothingToCorrect),
        _ => null,
    });

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
        return Place.With(study, reading => reading with
        {
            Levels = Levels,
            CorrectedFrom = reading.CorrectedFrom ?? reading.Levels,
            Swapped = false,
            Confirmed = false,
            Doubt = ReadingDoubt.OfValue(Levels, plan.Route[Segment - 1], plan.Limits),
        }).Undoably(study, mark, $"correct {Place}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(
        DrivingWords.ReadingCorrected(Place.In(before)?.Levels, Levels, Place.InWords(after)), Place.In(after)?.Doubt);
}
