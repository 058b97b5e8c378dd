using System.Collections.Immutable;
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
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study)
        ?? (
            Place.In(study) switch
            {
                null => new Objection(DrivingWords.ThereIsNoReading(Place), DrivingWords.FillOrNameReading(Place)),
                { IsToBeAsked: true } reading when reading.Levels == Levels => new Objection(
                    DrivingWords.ReadingIsThatAlready(Place, Levels),
                    DrivingWords.ConfirmDoubtful(Place)
                ),
                { } reading when reading.Levels == Levels => new Objection(
                    DrivingWords.ReadingIsThatAlready(Place, Levels),
                    DrivingWords.NothingToCorrect
                ),
                _ => null,
            }
        );

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
        return Place
            .With(
                study,
                reading =>
                    reading with
                    {
                        Levels = Levels,
                        CorrectedFrom = reading.CorrectedFrom ?? reading.Levels,
                        Swapped = false,
                        Confirmed = false,
                        Doubt = ReadingDoubt.OfValue(Levels, plan.Route[Segment - 1], plan.Limits),
                    }
            )
            .Undoably(study, mark, $"correct {Place}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) =>
        new(DrivingWords.ReadingCorrected(Place.In(before)?.Levels, Levels, Place.InWords(after)), Place.In(after)?.Doubt);
}

/// <summary>
/// Nothing had been stored on a segment while driving, and the crew knows at the stop what the meter showed. The reading is kept as
/// one that was filled in; whether the clean result counts it, the plan said beforehand.
/// </summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Levels">What the meter had shown.</param>
/// <param name="Swapped">Whether the range was typed high first.</param>
/// <param name="Spoilt">What spoilt it; the flag is late. Null: clean.</param>
/// <param name="Words">More about what spoilt it; null: none.</param>
public sealed record ReadingFilled(
    int Run,
    int Segment,
    LevelRange Levels,
    bool Swapped = false,
    SpoiltCause? Spoilt = null,
    string? Words = null
) : Entry
{
    private ReadingPlace Place => new(Run, Segment);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study)
        ?? StopGate.ObjectionToPlace(study, Run, Segment)
        ?? (
            Place.In(study) is { } reading
                ? new Objection(DrivingWords.SegmentHasReading(Place, reading), DrivingWords.CorrectItInstead(Place))
                : null
        );

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Run = study.NumberOf(Run, study.Runs.Select(run => run.Started)) };
    }

    /// <inheritdoc/>
    public override bool IsAboutSomethingIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.HasRun(Run);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Run run = study.Runs[Run - 1];
        Reading reading = new(Segment, Levels, mark)
        {
            FilledAtStop = true,
            Swapped = Swapped,
            Spoilt = Spoilt is { } cause ? new Spoiling(cause, Words, Late: true) : null,
            Doubt = ReadingDoubt.OfValue(Levels, study.Plan!.Route[Segment - 1], study.Plan.Limits),
        };
        ImmutableList<Passage> others = run.Passages.RemoveAll(passage => passage is Missed && passage.Segment == Segment);
        int at = others.FindIndex(passage => passage.Segment > Segment);
        Run filled = run with
        {
            Passages = at < 0 ? others.Add(reading) : others.Insert(at, reading),
            Furthest = Math.Max(run.Furthest, Segment),
        };
        return (study with { Runs = study.Runs.SetItem(Run - 1, filled) }).Undoably(study, mark, $"fill {Place}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string spoilt = Spoilt is { } cause ? $", spoilt by {cause.Word()}{(Words is null ? "" : $": {Words}")}" : "";
        return new Echo(
            DrivingWords.ReadingFilledIn(Levels, Place.InWords(after), spoilt, after.Plan?.FilledLeftOut == true),
            Place.In(after)?.Doubt
        );
    }
}

/// <summary>The crew was asked about a doubtful reading at a stop and keeps it.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Take">Which reading of the segment, from 1; null: the last.</param>
public sealed record ReadingConfirmed(int Run, int Segment, int? Take = null) : Entry
{
    private ReadingPlace Place => new(Run, Segment, Take);

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study)
        ?? (
            Place.In(study) is { IsToBeAsked: true }
                ? null
                : new Objection(DrivingWords.ThereIsNoDoubtfulReading(Place), DrivingWords.NameDoubtfulReading)
        );

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
