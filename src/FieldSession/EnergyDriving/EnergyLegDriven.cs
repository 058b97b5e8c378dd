using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>A leg of an energy day is over: the crew has read meter or display at a stop.</summary>
/// <param name="Figures">What was typed.</param>
/// <param name="Spoilt">What spoilt it, where it was flagged at once; null: clean.</param>
/// <param name="Words">More about what spoilt it; null: none.</param>
public sealed record EnergyLegDriven(LegFigures Figures, SpoiltCause? Spoilt = null, string? Words = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (study.RunOn is { } run ? new Objection($"run {run.Number} is on", "type 'end' first: a leg is typed at a stop") : null)
            ?? ObjectionToCode(study)
            ?? ObjectionToOthers(study);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        EnergyLeg leg = new(study.Legs.Count + 1, Figures, mark)
        {
            Spoilt = Spoilt is { } cause ? new Spoiling(cause, Words, Late: false) : null,
            Doubt = LegDoubt.Of(Figures, study),
        };
        return (study with { Legs = study.Legs.Add(leg) }).Undoably(study, mark, $"leg {leg.Number}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        UnitSystem units = after.Plan?.Units ?? UnitSystem.Metric;
        string spoilt = Spoilt is { } cause ? $", spoilt by {cause.Word()}{(Words is null ? "" : $": {Words}")}" : "";
        string warning = WindWarning(after.Plan?.Limits ?? new Limits(), units);
        return new Echo(
            $"leg {after.Legs.Count}, day {Figures.Day}, {Figures.Car} on {Figures.Code}: {Figures.Distance.OnTheRoadIn(units)}, {Figures.Energy}, {Figures.Consumption.In(units)}{spoilt}{warning}",
            after.Legs.LastOrDefault()?.Doubt);
    }

    private string WindWarning(Limits limits, UnitSystem units) => Figures.Wind is { } wind && wind.MetresPerSecond > limits.WindWarnMetresPerSecond
        ? $"; look out: mean wind above {new WindSpeed(limits.WindWarnMetresPerSecond).In(units)}"
        : "";

    private Objection? ObjectionToCode(Study study)
    {
        SpecCode[] codes = [.. study.Fittings.SelectMany(f => f.Codes)];
        if (codes.Length == 0)
        {
            return study.Overrides.Any(o => o.Check == RunChecks.Commitment)
                ? null
                : new Objection(
                    "no codes are sealed, so the days would not be blind",
                    $"let the custodian run 'seal' first, or go on with 'override {RunChecks.Commitment} WHY'",
                    RunChecks.Commitment);
        }

        return codes.Contains(Figures.Code)
            ? null
            : new Objection(
                $"{Figures.Code} is no code of this study",
                $"the codes are {string.Join(", ", codes.OrderBy(c => c.Digits, StringComparer.Ordinal))}");
    }

    private Objection? ObjectionToOthers(Study study)
    {
        foreach (EnergyLeg leg in study.Legs)
        {
            if (leg.Figures.Energy.Carrier != Figures.Energy.Carrier)
            {
                return new Objection("the legs of this study are on another energy carrier", "kWh and fuel are not compared; start a study for each");
            }

            if (LegTimes.IsSame(leg.Figures, Figures))
            {
                return new Objection($"leg {leg.Number} says the same already", "where it is another leg, add its start: at=09:10");
            }

            if (LegTimes.Overlap(leg.Figures, Figures))
            {
                return new Objection(
                    $"car {Figures.Car} was on leg {leg.Number} at that time (day {leg.Figures.Day}, {LegTimes.InWords(leg.Figures)})",
                    "mend the car, the day or the start time");
            }
        }

        return null;
    }
}
