using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>What was typed of one leg of an energy day. What was not typed stays unknown.</summary>
public sealed record LegFigures
{
    /// <summary>Number of the day, from 1.</summary>
    public required int Day { get; init; }

    /// <summary>The car, as the crew calls it.</summary>
    public required string Car { get; init; }

    /// <summary>The code on the car.</summary>
    public required SpecCode Code { get; init; }

    /// <summary>How far.</summary>
    public required Distance Distance { get; init; }

    /// <summary>What it took, by the car's meter, the pump, or the state of charge.</summary>
    public required Energy Energy { get; init; }

    /// <summary>Whether the energy was worked out from the state of charge.</summary>
    public bool FromCharge { get; init; }

    /// <summary>Smallest step of the typed energy, in its own unit: 0.1 for 38.0 kWh; 0: not known.</summary>
    public double EnergyStep { get; init; }

    /// <summary>State of charge before and after; null: not read.</summary>
    public ChargeUsed? Charge { get; init; }

    /// <summary>Usable capacity of battery or tank; null: not told.</summary>
    public Energy? Usable { get; init; }

    /// <summary>Who drove; null: not noted.</summary>
    public string? Driver { get; init; }

    /// <summary>Air at the start.</summary>
    public Temperature? AirAtStart { get; init; }

    /// <summary>Air at the end.</summary>
    public Temperature? AirAtEnd { get; init; }

    /// <summary>Mean wind.</summary>
    public WindSpeed? Wind { get; init; }

    /// <summary>Mean speed.</summary>
    public Speed? MeanSpeed { get; init; }

    /// <summary>When it began, local time.</summary>
    public TimeOnly? At { get; init; }

    /// <summary>How long it took, minutes.</summary>
    public double? Minutes { get; init; }

    /// <summary>The line or row as it was typed.</summary>
    public string Typed { get; init; } = "";

    /// <summary>Energy per distance.</summary>
    public Consumption Consumption => Consumption.Of(Energy, Distance);

    /// <summary>Mean of the two temperatures, or the one that is known, degC; null: neither.</summary>
    public double? AirCelsius =>
        (AirAtStart, AirAtEnd) switch
        {
            ({ } start, { } end) => (start.Celsius + end.Celsius) / 2,
            var (start, end) => start?.Celsius ?? end?.Celsius,
        };

    /// <summary>
    /// Standard uncertainty of the energy from the step of its display, kWh or litres: the step as a rectangle, step / sqrt(12) (JCGM
    /// 100:2008, GUM, 4.3.7), with two readings where it is a state of charge.
    /// </summary>
    public double EnergyUncertainty =>
        FromCharge && Charge is { } charge && Usable is { } usable
            ? usable.KwhOrLitres * charge.UncertaintyPercent / 100
            : EnergyStep * Energy.KwhOrLitresPer(Energy.Unit) / Math.Sqrt(12);

    /// <summary>Minutes of the leg as typed, or else from distance and mean speed; null: neither.</summary>
    public double? LastingMinutes => Minutes ?? (MeanSpeed is { } speed ? Distance.SecondsAt(speed) / 60 : null);
}

/// <summary>One leg of an energy day, from one reading of meter or display to the next.</summary>
/// <param name="Number">Number of the leg in the study, from 1.</param>
/// <param name="Figures">What was typed.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record EnergyLeg(int Number, LegFigures Figures, LineMark Mark)
{
    /// <summary>Why the leg is left out of the clean result; null: it is clean.</summary>
    public Spoiling? Spoilt { get; init; }

    /// <summary>Why the leg is doubtful; null: nothing is.</summary>
    public string? Doubt { get; init; }

    /// <summary>Whether the clean result leaves the leg out: flagged, and not too late.</summary>
    public bool LeftOut => Spoilt is { Late: false };
}
