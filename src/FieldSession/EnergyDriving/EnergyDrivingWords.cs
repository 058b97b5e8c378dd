using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>What the legs of an energy day say, and why one can't be.</summary>
internal static class EnergyDrivingWords
{
    public const string TypeEndFirst = "type 'end' first: a leg is typed at a stop";
    public const string NoCodesAreSealed = "no codes are sealed, so the days would not be blind";
    public const string LegsOfThisStudyAreOnAnotherEnergy = "the legs of this study are on another energy carrier";
    public const string KwhAndFuelAreNotCompared = "kWh and fuel are not compared; start a study for each";
    public const string WhereItIsAnotherLeg = "where it is another leg, add its start: at=09:10";
    public const string MendCarDayOrStartTime = "mend the car, the day or the start time";
    public const string MeterAndStateOfChargeAreMixed = "meter and state of charge are mixed: they can differ by more than the specs do";
    public const string KmOrMi = "km=212.4 (or mi=132)";
    public const string KwhSocWithUsableOrGal = "kwh=38.0, soc=80-31 with usable=75, l= or gal=";
    public const string DoesNotFall = "does not fall";
    public const string GiveStartThenEndSocCharging = "give start, then end: soc=80-31; charging ends a leg";
    public const string StateOfChargeSaysNoEnergyWithoutUsable = "the state of charge says no energy without the usable capacity";
    public const string AddUsableKwhOrSetInPlan = "add usable=75 (kWh), or set usable_kwh in the plan";
    public const string LookAtMeterAgain = "look at the meter again; a leg ends where the car is charged or filled";
    public const string WholeNumberFrom = "a whole number from 1";
    public const string NameOfAtMostLetters = "a name of at most 40 letters";
    public const string KilometresAboveAtMost = "kilometres above 0, at most 1000";
    public const string MilesAboveAtMost = "miles above 0, at most 621";
    public const string StepOfEnergysDisplayInItsUnit = "the step of the energy's display in its unit, such as 0.1";
    public const string PercentAtStartAndEnd = "percent at the start and the end, such as 80-31";
    public const string StepOfDisplayInPercent = "the step of the display in percent, above 0, at most 10";
    public const string UsableCapacityInKwh = "usable capacity in kWh, above 0";
    public const string UsableLitresOfTank = "usable litres of the tank, above 0";
    public const string AirAtStart = "air at the start, in the plan's units";
    public const string AirAtEnd = "air at the end, in the plan's units";
    public const string MeanWindInPlansUnits = "mean wind, in the plan's units";
    public const string MeanSpeedInAbove = "mean speed in km/h, above 0, at most 300";
    public const string MeanSpeedInMph = "mean speed in mph, above 0, at most 186";
    public const string TimeItBegan = "the time it began, such as 09:10";
    public const string MinutesItTook = "minutes it took, above 0, at most 1440";
    public const string AmountAbove = "an amount above 0";
    public const string FlagLegByItsNumber = "flag a leg by its number: 'leg 3 w words'";
    public const string AndFlaggedLateUsedInSensitivityResult = ", flagged late: used in the sensitivity result only";
    public const string TypeLegDayCarCodeKmKwhWind = "type 'leg day=1 car=X code=417 km=212.4 kwh=38.0 t0=6 t1=8 wind=2 kmh=96 at=09:10'";
    public const string TypeLegWordsToFlagLeg = "type 'leg 3 w words' to flag leg 3; the causes are t w s r n e";
    public const string FlagNamesLegAndCause = "a flag names the leg and the cause";
    public const string TimeNotNoted = "time not noted";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string LegDayOn(Study after, int day, string car, SpecCode code, string onTheRoadIn, Energy energy, string inWhat, string spoilt, string warning) => $"leg {after.Legs.Count}, day {day}, {car} on {code}: {onTheRoadIn}, {energy}, {inWhat}{spoilt}{warning}";

    public static string AndLookOutMeanWindAbove(Limits limits, UnitSystem units) => $"; look out: mean wind above {new WindSpeed(limits.WindWarnMetresPerSecond).In(units)}";

    public static string LetCustodianRunSealFirst => $"let the custodian run 'seal' first, or go on with 'override {RunChecks.Commitment} WHY'";

    public static string IsNoCodeOfThisStudy(SpecCode code) => $"{code} is no code of this study";

    public static string CodesAre(string codes) => $"the codes are {codes}";

    public static string LegSaysSameAlready(EnergyLeg leg) => $"leg {leg.Number} says the same already";

    public static string CarWasOnLegAtThatTime(string car, EnergyLeg leg) => $"car {car} was on leg {leg.Number} at that time (day {leg.Figures.Day}, {LegTimes.InWords(leg.Figures)})";

    public static string IsHardToBelieve(string inWhat) => $"{inWhat} is hard to believe";

    public static string MeterSaysStateOfChargeKwh(LegFigures leg, double byCharge) => $"the meter says {leg.Energy}, the state of charge {byCharge:0.0} kWh";

    public static string PlanHasEnergyDays(ImmutableList<EnergyDay> days) => $"the plan has {days.Count} energy days";

    public static string PlanHasNoCarOnDay(LegFigures leg) => $"the plan has no car {leg.Car} on day {leg.Day}";

    public static string PlanAsksForOnOnDay(SpecCode code, LegFigures leg) => $"the plan asks for {code} on {leg.Car} on day {leg.Day}";

    public static string StateOfChargeOnThisLeg(string rise, ChargeUsed charge) => $"the state of charge {rise} on this leg ({charge.Start.Percent:0.#} to {charge.End.Percent:0.#} %)";

    public static string IsMoreThanUsable(Energy energy, Energy capacity) => $"{energy} is more than the usable {capacity}";

    public static string LegDoesNotSay(string what) => $"the leg does not say {what}";

    public static string ThereIsNoLeg(int leg) => $"there is no leg {leg}";

    public static string FlagOnLeg(int leg) => $"flag on leg {leg}";

    public static string LegSpoiltBy(int leg, SpoiltCause cause, string more, string more2) => $"leg {leg} spoilt by {cause.Word()}{more}{more2}";

    public static string LegIsCleanAgain(int leg) => $"leg {leg} is clean again";

    public static string PartsAre(string all) => $"the parts are {all}";

    public static string IsNeitherPartSuchAsKmNorCause(string[] words, int parts) => $"'{words[parts]}' is neither a part such as km=212.4 nor a cause letter";

    public static string IsNoPartOfLeg(string name) => $"'{name}' is no part of a leg";

    public static string StandsThereTwice(string name) => $"'{name}' stands there twice";

    public static string ThereIsNoLeg2(int number) => $"there is no leg {number}";
}
