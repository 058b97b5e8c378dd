using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Checking;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Contents page of the words of a plan that are edited as a line of text, in the order in which a day is planned.</summary>
public static class PlanFields
{
    /// <summary>Every word; the limits have a page of their own (<see cref="AllLimits"/>).</summary>
    public static ImmutableArray<PlanField> All { get; } = [.. Question, .. People, .. Tyres, .. Facts, .. Worth, .. Energy];

    private static IEnumerable<PlanField> Question =>
        [
            new("study", "study", PlanFieldSort.Text, "the study's short name; empty: the folder's name"),
            new("question", "question", PlanFieldSort.Text, "the one question that the day is to answer"),
            new("main_measure", "main measure", PlanFieldSort.Text, "steady, impact or all; empty: steady"),
            new(
                "main_segments",
                "main segments",
                PlanFieldSort.List,
                "segments of the route, separated by ;  all others are then explored; empty: all that the main measure takes"
            ),
            new(
                "margin_db",
                "margin, steady, dB",
                PlanFieldSort.Number,
                "largest difference on steady segments that does not matter, dB; empty: 1.0"
            ),
            new(
                "impact_margin_db",
                "margin, impacts, dB",
                PlanFieldSort.Number,
                "largest difference of peaks that does not matter, dB; empty: 2.0"
            ),
            new(
                "ring_margin_db",
                "margin, ring, dB",
                PlanFieldSort.Number,
                "largest difference of the ring in recordings that does not matter, dB; empty: 2.0"
            ),
            new("specs", "specs, how many", PlanFieldSort.Whole, "2 to 9; their names stay with the custodian"),
            new("order", "order of runs", PlanFieldSort.Text, "by place, R the reference, 1, 2, ... the others: R 1 R 1 R"),
            new("units", "units", PlanFieldSort.Text, "metric or imperial; empty: what the columns of route.csv say"),
        ];

    private static IEnumerable<PlanField> People =>
        [
            new(
                "crew",
                "crew, driver first",
                PlanFieldSort.Names,
                "who rides, separated by ; or ,  the first drives, the second types: Ro; Tam"
            ),
            new("custodian", "custodian", PlanFieldSort.Text, "who keeps the key and fits the tyres; does not ride"),
            new("cars", "cars, if two", PlanFieldSort.Names, "two names, separated by ; or ,  empty: one car"),
            new(
                "car_order",
                "car of each run",
                PlanFieldSort.Names,
                "a car for each run of the order, separated by ; or ,  empty: not planned"
            ),
            new(
                "driver_order",
                "driver of each run",
                PlanFieldSort.Names,
                "one of the crew for each run, separated by ; or ,  empty: the driver's seat"
            ),
            new("phrases", "note phrases", PlanFieldSort.List, "up to nine, separated by ;  called by ;1 to ;9 on the drive screen"),
            new(
                "attributes",
                "rated attributes",
                PlanFieldSort.Names,
                "what is rated from the seats, separated by ; or ,  such as roar; plushness"
            ),
            new("protocol", "protocol sheet", PlanFieldSort.Text, $"confirmed at each run's start; empty: {DefaultProtocol}"),
            new(
                "covered_until_evening",
                "covered till evening",
                PlanFieldSort.YesNo,
                "yes if the same people rate: seeing which code is louder changes ratings; empty: no"
            ),
            new(
                "all_pairs",
                "every pair asked",
                PlanFieldSort.YesNo,
                "yes: the question is asked of every pair of specs, not only against R; empty: no"
            ),
            new(
                "rerun_counts",
                "driven twice, counts",
                PlanFieldSort.Text,
                "which drive of a bracket counts: rerun, first or both; empty: rerun"
            ),
            new(
                "aborted_counts",
                "aborted run, counts",
                PlanFieldSort.Text,
                "repeat: until its place is driven again; both: also after that; no: never; empty: repeat"
            ),
            new(
                "filled_counts",
                "filled at stop, counts",
                PlanFieldSort.YesNo,
                "no: a reading filled in at a stop is left out of the clean result; empty: yes"
            ),
        ];

    private static IEnumerable<PlanField> Tyres =>
        [
            new("calibrator_db", "calibrator, dB", PlanFieldSort.Number, "what the calibrator gives, usually 94 or 114; empty: 94"),
            new(
                "required_checks",
                "required checks",
                PlanFieldSort.Names,
                $"no run starts without them, separated by ; or ,  of {string.Join(", ", CheckKinds.All.Select(kind => kind.Name))}"
            ),
            new(
                "archive",
                "archive of the crew",
                PlanFieldSort.Text,
                "folder or CSV of earlier days that lend their scatter to this one; empty: none"
            ),
            new("tyre_size", "tyre size", PlanFieldSort.Text, "as on the sidewall, such as 225/45R18; empty: not given"),
            new("pressure_front_kpa", "cold front, kPa", PlanFieldSort.Number, "pressure at 20 degC, 230 is 2.3 bar; empty: no target")
            {
                Units = UnitSystem.Metric,
            },
            new("pressure_rear_kpa", "cold rear, kPa", PlanFieldSort.Number, "pressure at 20 degC, 230 is 2.3 bar; empty: no target")
            {
                Units = UnitSystem.Metric,
            },
            new("pressure_front_psi", "cold front, psi", PlanFieldSort.Number, "pressure at 68 degF, psi; empty: no target")
            {
                Units = UnitSystem.Imperial,
            },
            new("pressure_rear_psi", "cold rear, psi", PlanFieldSort.Number, "pressure at 68 degF, psi; empty: no target")
            {
                Units = UnitSystem.Imperial,
            },
        ];

    private static IEnumerable<PlanField> Facts =>
        [
            new("car", "car", PlanFieldSort.Text, "for the report: body, year, mass; empty: not written down"),
            new(
                "tyres_made",
                "tyres made",
                PlanFieldSort.Text,
                "for the report: week and year of all sets, never by code; empty: not written down"
            ),
            new("tread", "tread", PlanFieldSort.Text, "for the report: depth on all sets, mm, never by code; empty: not written down"),
            new("hardness", "hardness", PlanFieldSort.Text, "for the report: Shore A of all sets, never by code; empty: not written down"),
            new("meter", "meter and class", PlanFieldSort.Text, "for the report: class and last calibration; empty: not written down"),
            new("meter_position", "meter's position", PlanFieldSort.Text, "for the report: where it is clamped; empty: not written down"),
            new(
                "utc_offset",
                "local time",
                PlanFieldSort.Text,
                "how far your clocks are ahead of UTC, such as +02:00; the report then shows both; empty: UTC alone"
            ),
        ];

    private static IEnumerable<PlanField> Worth =>
        [
            new(
                "price_premium",
                "price premium a set",
                PlanFieldSort.Number,
                "how much more the candidate costs than the control; empty: not given"
            ),
            new(
                "price_worth",
                "worth to the owner",
                PlanFieldSort.Number,
                "the most that a set quieter by the margin may cost extra; empty: not given"
            ),
            new("currency", "currency", PlanFieldSort.Text, "a word or sign; empty: not given"),
            new("set_life_km", "life of a set, km", PlanFieldSort.Number, "how far a set lasts, km; empty: not given"),
        ];

    private static IEnumerable<PlanField> Energy =>
        [
            new(
                "energy_days",
                "energy days",
                PlanFieldSort.List,
                "a day each, separated by ;  which car carries which place: X=R Y=1; X=1 Y=R; empty: none planned"
            ),
            new(
                "energy_margin_percent",
                "energy margin, %",
                PlanFieldSort.Number,
                $"largest difference of consumption that does not matter, percent; empty: {Point(Days.MarginPercent)}"
            ),
            new(
                "usable_kwh",
                "usable battery, kWh",
                PlanFieldSort.Number,
                "usable energy; give battery or tank, not both; empty: not given"
            ),
            new("tank_l", "usable tank, l", PlanFieldSort.Number, "give battery or tank, not both; empty: not given")
            {
                Units = UnitSystem.Metric,
            },
            new("tank_us_gal", "usable tank, US gal", PlanFieldSort.Number, "give battery or tank, not both; empty: not given")
            {
                Units = UnitSystem.Imperial,
            },
            new("tank_imp_gal", "usable tank, imp gal", PlanFieldSort.Number, "give battery or tank, not both; empty: not given")
            {
                Units = UnitSystem.Imperial,
            },
            new(
                "energy_distance_short_km",
                "short leg, km",
                PlanFieldSort.Number,
                $"a leg shorter than this warns, km; empty: {Point(Days.DistanceShortKm)}"
            ),
            new(
                "energy_charge_least_percent",
                "least charge used, %",
                PlanFieldSort.Number,
                $"less of the battery used on a leg warns, percent; empty: {Point(Days.ChargeLeastPercent)}"
            ),
            new(
                "consumption_lowest",
                "lowest consumption",
                PlanFieldSort.Number,
                $"kWh or l a 100 km; below it a leg is asked about; empty: {Point(Days.ConsumptionLowest)}"
            ),
            new(
                "consumption_highest",
                "highest consumption",
                PlanFieldSort.Number,
                $"kWh or l a 100 km; above it a leg is asked about; empty: {Point(Days.ConsumptionHighest)}"
            ),
        ];

    private static EnergyPlan Days => new();

    // as it is written into the file, whatever the screens around it show
    private static string Point(double number) => number.ToString(CultureInfo.InvariantCulture);

    private static string DefaultProtocol =>
        new Plan
        {
            StudyName = "",
            SpecCount = 0,
            Order = [],
            Route = [],
        }.Protocol;
}
