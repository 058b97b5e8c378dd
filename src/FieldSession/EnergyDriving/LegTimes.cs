using FieldSession.Checking;
using FieldSession.Flagging;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>When legs were driven: one car is in one place at a time.</summary>
public static class LegTimes
{
    /// <summary>Whether two legs say one and the same thing: car, day, code, way, energy and start.</summary>
    public static bool IsSame(LegFigures one, LegFigures other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return IsOneCar(one, other)
            && one.Code == other.Code
            && one.Distance == other.Distance
            && one.Energy == other.Energy
            && one.At == other.At;
    }

    /// <summary>
    /// Whether one car would have been on two legs at once. Without start times that can't be told; without lengths of time a start within
    /// is enough.
    /// </summary>
    public static bool Overlap(LegFigures one, LegFigures other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (!IsOneCar(one, other) || one.At is not { } a || other.At is not { } b)
        {
            return false;
        }

        (double startA, double startB) = (a.ToTimeSpan().TotalMinutes, b.ToTimeSpan().TotalMinutes);
        return startA.Equals(startB) || (startA < startB + (other.LastingMinutes ?? 0) && startB < startA + (one.LastingMinutes ?? 0));
    }

    /// <summary>The time of a leg in words, such as "09:10 to 11:23".</summary>
    public static string InWords(LegFigures leg)
    {
        ArgumentNullException.ThrowIfNull(leg);
        if (leg.At is not { } at)
        {
            return EnergyDrivingWords.TimeNotNoted;
        }

        string start = $"{at:t}";
        return leg.LastingMinutes is { } minutes ? $"{start} to {at.AddMinutes(minutes):t}" : $"from {start}";
    }

    private static bool IsOneCar(LegFigures one, LegFigures other) => one.Day == other.Day && CrewMember.SamePerson(one.Car, other.Car);
}

/// <summary>What the legs of an energy day say, and why one can't be.</summary>
internal static class EnergyDrivingWords
{
    public const string EndRunBeforeLeg = "type 'end' first: a leg is typed at a stop";
    public const string DaysWouldNotBeBlind = "no codes are sealed, so the days would not be blind";
    public const string LegsUseAnotherCarrier = "the legs of this study are on another energy carrier";
    public const string StartStudyForEachCarrier = "kWh and fuel are not compared; start a study for each";
    public const string AddStartOfOtherLeg = "where it is another leg, add its start: at=09:10";
    public const string FixCarDayOrStart = "fix the car, the day or the start time";
    public const string MeterAndChargeAreMixed = "meter and state of charge are mixed: they can differ by more than the specs do";
    public const string DistanceForm = "km=212.4 (or mi=132)";
    public const string EnergyForm = "kwh=38.0, soc=80-31 with usable=75, l= or gal=";
    public const string CodeForm = "code= and its three digits";
    public const string ChargeForm = "give start, then end: soc=80-31; charging ends a leg";
    public const string ChargeNeedsUsableCapacity = "the state of charge gives no energy without the usable capacity";
    public const string AddUsableCapacity = "add usable=75 (kWh), or set usable_kwh in the plan";
    public const string LookAtMeterAgain = "look at the meter again; a leg ends where the car is charged or filled";
    public const string WholeNumberFromOne = "a whole number from 1";
    public const string NameWithinLength = "a name of at most 40 letters";
    public const string KilometresWithinLimits = "kilometres above 0, at most 1000";
    public const string MilesWithinLimits = "miles above 0, at most 621";
    public const string StepOfEnergyDisplay = "the step of the energy's display in its unit, such as 0.1";
    public const string PercentAtStartAndEnd = "percent at the start and the end, such as 80-31";
    public const string StepOfChargeDisplay = "the step of the display in percent, above 0, at most 10";
    public const string UsableCapacityInKwh = "usable capacity in kWh, above 0";
    public const string UsableLitresOfTank = "usable litres of the tank, above 0";
    public const string AirAtStart = "air at the start, in the plan's units";
    public const string AirAtEnd = "air at the end, in the plan's units";
    public const string MeanWindInUnits = "mean wind, in the plan's units";
    public const string MeanSpeedInKmh = "mean speed in km/h, above 0, at most 300";
    public const string MeanSpeedInMph = "mean speed in mph, above 0, at most 186";
    public const string TimeItBegan = "the time it began, such as 09:10";
    public const string MinutesItTook = "minutes it took, above 0, at most 1440";
    public const string AmountAboveZero = "an amount above 0";
    public const string FlagLegByItsNumber = "flag a leg by its number: 'leg 3 w words'";

    public static string LegForm(ExampleNames own) =>
        own.Units == UnitSystem.Imperial
            ? $"type 'leg day=1 car={own.Car} code={own.Other} mi=132.0 kwh=38.0 t0=43 t1=46 wind=4 mph=60 at=09:10'"
            : $"type 'leg day=1 car={own.Car} code={own.Other} km=212.4 kwh=38.0 t0=6 t1=8 wind=2 kmh=96 at=09:10'";

    public const string LegFlagForm = "type 'leg 3 w words' to flag leg 3; the causes are t w s r n e";
    public const string FlagNamesLegAndCause = "a flag names the leg and the cause";
    public const string TimeNotNoted = "time not noted";

    public static string LegDriven(Study after, LegFigures leg, UnitSystem units, string spoilt, string warning) =>
        $"leg {after.Legs.Count}, day {leg.Day}, {leg.Car} on {leg.Code}: {leg.Distance.OnTheRoadIn(units)}, "
        + $"{leg.Energy}, {leg.Consumption.In(units)}{spoilt}{warning}";

    public static string MeanWindIsHigh(Limits limits, UnitSystem units) =>
        $"; look out: mean wind above {new WindSpeed(limits.WindWarnMetresPerSecond).In(units)}";

    public static string SealOrOverrideFirst => $"let the custodian run 'seal' first, or go on with 'override {RunChecks.Commitment} WHY'";

    public static string SameLegIsThereAlready(EnergyLeg leg) => $"leg {leg.Number} says the same already";

    public static string CarWasOnOtherLeg(string car, EnergyLeg leg) =>
        $"car {car} was on leg {leg.Number} at that time (day {leg.Figures.Day}, {LegTimes.InWords(leg.Figures)})";

    public static string ConsumptionIsHardToBelieve(string consumption) => $"{consumption} is hard to believe";

    public static string MeterAndChargeDisagree(LegFigures leg, double kwhByCharge) =>
        $"the meter says {leg.Energy}, the state of charge {kwhByCharge:0.0} kWh";

    public static string PlanHasEnergyDays(int days) => $"the plan has {days} energy days";

    public static string PlanHasNoCarOnDay(LegFigures leg) => $"the plan has no car {leg.Car} on day {leg.Day}";

    public static string PlanAsksForOtherCode(SpecCode code, LegFigures leg) => $"the plan asks for {code} on {leg.Car} on day {leg.Day}";

    public static string ChargeDoesNotFallOnLeg(ChargeUsed charge) =>
        $"the state of charge {(charge.Percent < 0 ? "rises" : "does not fall")} on this leg ({charge.Start.Percent:0.#} "
        + $"to {charge.End.Percent:0.#} %)";

    public static string EnergyExceedsCapacity(Energy energy, Energy capacity) => $"{energy} is more than the usable {capacity}";

    public static string LegDoesNotSay(string part) => $"the leg lacks {part}";

    public static string ThereIsNoLeg(int leg) => $"there is no leg {leg}";

    public static string FlagOnLeg(int leg) => $"flag on leg {leg}";

    public static string LegSpoilt(int leg, SpoiltCause cause, string? words, bool isLate) =>
        $"leg {leg} spoilt by {cause.Word()}{(words is null ? "" : $": {words}")}{(isLate ? FlaggingWords.FlaggedLate : "")}";

    public static string LegIsCleanAgain(int leg) => $"leg {leg} is clean again";

    public static string PartsOfLegAre(string names) => $"the parts are {names}";

    public static string IsNeitherPartNorCause(string typed) => $"'{typed}' is neither a part such as km=212.4 nor a cause letter";

    public static string IsNoPartOfLeg(string name) => $"'{name}' is not a part of a leg";

    public static string PartIsThereTwice(string name) => $"'{name}' is there twice";
}
