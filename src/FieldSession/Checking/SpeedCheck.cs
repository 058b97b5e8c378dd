using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>
/// The speed by satellite on the last reading's segment. A speedometer shows up to a tenth and 4 km/h more than the truth
/// (UN Regulation 39, paragraph 5.3), so only the satellite's counts. Far off the plan, the reading is flagged.
/// </summary>
public sealed record SpeedCheck() : CheckKind("speed", "check speed 81.4", [CheckValue.Of("speed", 1, Speed.HighestKmh, needed: true)])
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.LastRun?.LastReading is null ? new Objection(CheckingWords.NothingHasBeenReadYet, CheckingWords.ReadingBeforeSpeed) : null;
    }

    /// <inheritdoc/>
    public override (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        Limits limits = LimitsOf(study);
        UnitSystem units = study.Plan?.Units ?? UnitSystem.Metric;
        string words = $"{new Speed(values.Number("speed") ?? 0).In(units)} on {Segment(study)?.Name}, planned {Segment(study)?.Speed.In(units)}";
        double off = OffKmh(study, values);
        return off > limits.Of(FurtherLimits.SpeedFlag) ? (CheckAnswer.Warns, CheckingWords.ReadingSpoiltBySpeed(words))
            : off > limits.Of(FurtherLimits.SpeedWarn) ? (CheckAnswer.Warns, words)
            : (CheckAnswer.Records, words);
    }

    /// <inheritdoc/>
    public override Study EffectOn(Study study, CheckValues values)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(values);
        bool isFar = OffKmh(study, values) > LimitsOf(study).Of(FurtherLimits.SpeedFlag);
        if (!isFar || study.LastRun is not { LastReading: { Spoilt: null } reading } run)
        {
            return study;
        }

        bool isLate = !run.Passages[^1].Equals(reading);
        Reading spoilt = reading with { Spoilt = new Spoiling(SpoiltCause.Speed, $"{values.Number("speed"):0.#} km/h by satellite", isLate) };
        return study.WithLastRun(run with { Passages = run.Passages.Replace(reading, spoilt) });
    }

    private static Segment? Segment(Study study) => study.LastRun?.LastReading is { } reading ? study.Plan?.Route[reading.Segment - 1] : null;

    private static double OffKmh(Study study, CheckValues values) =>
        Math.Round(Math.Abs((values.Number("speed") ?? 0) - (Segment(study)?.Speed.Kmh ?? 0)), 6);
}
