namespace FieldSession.State;

/// <summary>
/// What a colleague asks of a day and nothing is computed from: the car, the tyres as far as all sets share it, the meter. Each as the crew writes it;
/// null: not written down.
/// </summary>
public sealed record DayFacts
{
    /// <summary>The car: body, year, mass.</summary>
    public string? Car { get; init; }

    /// <summary>When the tyres were made, such as "weeks 14 and 15 of 2026".</summary>
    public string? TyresMade { get; init; }

    /// <summary>Depth of the tread, such as "7.6 to 7.8 mm on all sets".</summary>
    public string? Tread { get; init; }

    /// <summary>Hardness of the tread, such as "64 to 66 Shore A on all sets".</summary>
    public string? Hardness { get; init; }

    /// <summary>The meter and its class, such as "class 2, calibrated 2026-03".</summary>
    public string? Meter { get; init; }

    /// <summary>Where the meter was, such as "front passenger's head, 0.7 m above the seat".</summary>
    public string? MeterPosition { get; init; }

    /// <summary>What the clocks of the place are ahead of UTC, minutes; null: not told.</summary>
    public int? UtcOffsetMinutes { get; init; }
}
