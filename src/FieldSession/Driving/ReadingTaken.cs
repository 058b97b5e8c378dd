using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// The co-driver has read the meter. The fact names no code and no segment: they follow from the run that is on.
/// </summary>
/// <param name="Levels">Low-high range, or one value.</param>
/// <param name="Swapped">Whether the range was typed high first.</param>
/// <param name="Spoilt">What spoilt it, where it was flagged at once; null: clean.</param>
/// <param name="Words">More about what spoilt it; null: none.</param>
public sealed record ReadingTaken(LevelRange Levels, bool Swapped = false, SpoiltCause? Spoilt = null, string? Words = null) : Entry
{
    /// <summary>Whether one value was typed with two figures, in whole decibels; null: it was not.</summary>
    public bool? TwoFigures { get; init; }

    /// <summary>Whether Enter was missing, and the reading was stored when the next figures came; null: it was not.</summary>
    public bool? WithoutEnter { get; init; }

    /// <inheritdoc/>
    public override bool HoldsFlag => Spoilt is not null;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileARunIsOn(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.RunOn is not { } run || study.NextSegment is not { } segment)
        {
            return study;
        }

        Reading reading = new(segment.Number, Levels, mark)
        {
            Swapped = Swapped,
            Spoilt = Spoilt is { } cause ? new Spoiling(cause, Words, Late: Paper is { FlaggedOnSpot: not true }) : null,
            Doubt = ReadingDoubt.Of(this, segment, run, study.Plan!.Limits),
        };
        return Passing.Of(study, run, reading).Undoably(study, mark, Levels.ToString());
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string where = before.NextSegment is { } segment ? $" on {segment.Number} {segment.Name}" : "";
        string spoilt = Spoilt is { } cause ? $", spoilt by {cause.Word()}{(Words is null ? "" : $": {Words}")}" : "";
        string swapped = Swapped ? DrivingWords.TypedHighFirst : "";
        string wide = Levels.WidthDb > (after.Plan?.Limits.WidthWarnDb ?? double.MaxValue) + 1e-9 ? $", {Levels.WidthDb:0.#} dB wide" : "";
        return new Echo($"{Levels} dB{where}{spoilt}{swapped}{wide}{Passing.WhatIsNext(after)}", after.LastRun?.LastReading?.Doubt);
    }
}
