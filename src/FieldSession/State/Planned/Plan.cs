using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.Signals;

namespace FieldSession.State;

/// <summary>What is decided before the first run: question, margins, route, order, crew.</summary>
public sealed record Plan
{
    /// <summary>The study's short name, such as "QW-0114".</summary>
    public required string StudyName { get; init; }

    /// <summary>The one question the day is to answer.</summary>
    public string Question { get; init; } = "";

    /// <summary>What the question is answered on.</summary>
    public MainMeasure MainMeasure { get; init; }

    /// <summary>
    /// Names of the only segments that the question is answered on, in route order; null: all that the main measure takes.
    /// </summary>
    public ImmutableList<string>? MainSegments { get; init; }

    /// <summary>Whether the question is asked of every pair of specs, and not only of each against the control; null: it is not.</summary>
    public bool? AllPairs { get; init; }

    /// <summary>How many specs are compared, 2..9.</summary>
    public required int SpecCount { get; init; }

    /// <summary>The order of runs by place.</summary>
    public required ImmutableList<Place> Order { get; init; }

    /// <summary>The segments in driven order.</summary>
    public required ImmutableList<Segment> Route { get; init; }

    /// <summary>The units the crew types and reads in.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Largest difference on steady segments that does not matter, dB; 1.0 by default (common practice, no source).</summary>
    public double MarginDb { get; init; } = 1.0;

    /// <summary>Largest difference of impact peaks that does not matter, dB; 2.0 by default (common practice, no source).</summary>
    public double ImpactMarginDb { get; init; } = 2.0;

    /// <summary>Largest difference of the ring band that does not matter, dB, as it was told; null: not told.</summary>
    public double? RingMarginToldDb { get; init; }

    /// <summary>Largest difference of the ring band that does not matter, dB; 2.0 by default (own choice, no source).</summary>
    public double RingMarginDb => RingMarginToldDb ?? 2.0;

    /// <summary>Edges of the ring band, Hz, as they were told; null: not told.</summary>
    public FrequencyBand? RingBandTold { get; init; }

    /// <summary>The ring band: as told, or 178 to 282 Hz.</summary>
    public FrequencyBand RingBand => RingBandTold ?? Acoustics.RingBand.Planned;

    /// <summary>The margin of the main measure, dB.</summary>
    public double MainMarginDb => MainMeasure == MainMeasure.Impact ? ImpactMarginDb : MarginDb;

    /// <summary>The people in the car; the first drives, the second types.</summary>
    public ImmutableList<CrewMember> Crew { get; init; } = [];

    /// <summary>The cars by name, where there is more than one; null: one car.</summary>
    public ImmutableList<string>? Cars { get; init; }

    /// <summary>The car of each run of the order; null: one car, or not planned.</summary>
    public ImmutableList<string>? CarOrder { get; init; }

    /// <summary>Who drives each run of the order; null: the seats say it.</summary>
    public ImmutableList<string>? DriverOrder { get; init; }

    /// <summary>Folder of the crew's archive whose repeatability the plan asks for, as the plan names it; null: none.</summary>
    public string? Archive { get; init; }

    /// <summary>Who keeps the key, fits the tyres and does not ride; null: not named.</summary>
    public string? Custodian { get; init; }

    /// <summary>Note phrases, called by their number 1-9.</summary>
    public ImmutableList<string> Phrases { get; init; } = [];

    /// <summary>What is rated from the seats.</summary>
    public ImmutableList<string> Attributes { get; init; } = [];

    /// <summary>The sentence that the crew confirms at each run's start: windows, fan, mode of drive, meter settings.</summary>
    public string Protocol { get; init; } = StateWords.UsualProtocol;

    /// <summary>What the calibrator gives, dB; 94 or 114 is usual.</summary>
    public double CalibratorDb { get; init; } = 94.0;

    /// <summary>Whether every comparison stays covered until the evening.</summary>
    public bool CoveredUntilEvening { get; init; }

    /// <summary>What the candidate costs more than the control, per set, in the owner's currency; null: not told.</summary>
    public double? PricePremium { get; init; }

    /// <summary>The most that the owner would pay more per set for one that is quieter by the margin; null: not told.</summary>
    public double? PriceWorth { get; init; }

    /// <summary>The owner's currency as a word or sign; empty: not given.</summary>
    public string Currency { get; init; } = "";

    /// <summary>Life of a set, km; null: not told.</summary>
    public double? SetLifeKm { get; init; }

    /// <summary>Pressure of the cold front tyres at 20 degC, kPa above the air's; null: not planned.</summary>
    public double? PressureFrontKpa { get; init; }

    /// <summary>Pressure of the cold rear tyres at 20 degC, kPa above the air's; null: not planned.</summary>
    public double? PressureRearKpa { get; init; }

    /// <summary>Size of the tyres, such as "225/45R18"; null: not told.</summary>
    public string? TyreSize { get; init; }

    /// <summary>What was written down of car, tyres and meter; null: nothing.</summary>
    public DayFacts? FactsTold { get; init; }

    /// <summary>What was written down of car, tyres and meter.</summary>
    public DayFacts Facts => FactsTold ?? new DayFacts();

    /// <summary>Names of the checks without which no run of a session starts; null: none beyond those that always hold.</summary>
    public ImmutableList<string>? RequiredChecks { get; init; }

    /// <summary>Which runs count where a bracket was driven twice; null: the re-run.</summary>
    public RerunRule? RerunRule { get; init; }

    /// <summary>Which readings of an aborted run count; null: those of a run whose place was not driven again.</summary>
    public AbortRule? AbortRule { get; init; }

    /// <summary>Whether readings that were filled in at a stop are left out of the clean result; null: they count.</summary>
    public bool? FilledLeftOut { get; init; }

    /// <summary>What was decided of the energy days; null: nothing, the defaults hold.</summary>
    public EnergyPlan? EnergyTold { get; init; }

    /// <summary>What holds for the energy days: what was decided, or the defaults.</summary>
    public EnergyPlan Energy => EnergyTold ?? new EnergyPlan();

    /// <summary>The limits that checks are held against.</summary>
    public Limits Limits { get; init; } = new();
}

/// <summary>Which segments the day's one main question is answered on; everything else is explored.</summary>
public enum MainMeasure
{
    /// <summary>The steady segments.</summary>
    Steady,

    /// <summary>The impacts.</summary>
    Impact,

    /// <summary>All segments together.</summary>
    All,
}

/// <summary>
/// What a colleague asks of a day and nothing is computed from: the car, the tyres as far as all sets share it, the meter. Each as the crew
/// writes it; null: not written down.
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
