using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>What the comparison says beside its figures.</summary>
internal static class ComparingWords
{
    public const string LookForWhatChanged = "look for what changed";
    public const string FewerThanTwoCodesDriven = "fewer than two codes driven: levels only";
    public const string EachCodeHadItsOwnDriver = "each code had its own driver: the difference may be the driver's";
    public const string DaysAgreeBetterThanStepOfDisplayAllows = "the days agree better than the step of the display allows: the error is raised to what the step allows";
    public const string NoScatterSeenAtThisDisplayResolution = "no scatter seen at this display resolution: no interval";
    public const string DaysNotComparable = "days not comparable: no two cars drove side by side; air, wind and traffic of the days are in the difference";
    public const string StraightInfluenceOfAirTemperatureIsTakenOut = "a straight influence of the air temperature is taken out, nothing else of the days";
    public const string AirTemperatureIsNotKnownForEveryStretch = "the air temperature is not known for every stretch: its influence is not taken out";
    public const string EnergyByMeterAndByStateOfCharge = "energy by meter and by state of charge are mixed: they can differ by more than the specs do";
    public const string NotComparableCodeWasNotDriven = "not comparable: a code was not driven beside another car";
    public const string NotComparableNoDaysLeadFromOneCode = "not comparable: no days lead from one code to the other";
    public const string NotComparableTyresAndCarCannot = "not comparable: tyres and car cannot be told apart, the tyres were not swapped between the cars";
    public const string NotComparableTyresAndDriverCannot = "not comparable: tyres and driver cannot be told apart";
    public const string DaysAreNotComparable = "days are not comparable: no second car drove beside";
    public const string TooFewDaysForAnyInterval = "too few days for any interval";
    public const string TooFewDays = "too few days: one comparison of like with like gives no interval that can be trusted";
    public const string NoScatterSeenAtThisDisplayResolution2 = "no scatter seen at this display resolution";
    public const string PlannedEnergyDaysAreNotDrivenToTheir = "the planned energy days are not driven to their end";
    public const string WithinNoiseOfMethod = "within the noise of the method: these days can neither show a difference nor rule one out";
    public const string DbAtHz = "dB at 200 Hz";
    public const string DbAtHz2 = "dB at 250 Hz";
    public const string OrderDoesNotBeginAndEndWithRuns = "the order does not begin and end with R: runs outside a bracket rest on the fit of the drift alone";
    public const string NoRunHasValidLevelsOnHalfOfThese = "no run has valid levels on half of these segments";
    public const string NoSegmentHasValidLevelOnEveryCode = "no segment has a valid level on every code";
    public const string FewerThanTwoCodesToCompare = "fewer than two codes to compare: levels only";
    public const string NotBracketedNoCodeWasDriven = "not bracketed: no code was driven twice";
    public const string OneComparisonOfLikeWithLikeOnlyInterval = "one comparison of like with like only: the interval is as wide as that makes it";
    public const string TodayIsRougherThanArchive = "today is rougher than the archive: the archive's repeatability is not used";
    public const string RunsAgreeBetterThanReadingsAllow = "the runs agree better than the readings allow: the error is raised to what the readings allow";
    public const string RunsSideBySideAreComparedWithinTheir = "runs side by side are compared within their slot";
    public const string StraightDriftOverDayIsTakenOut = "a straight drift over the day is taken out";
    public const string NoTimesRunsCountAsEqually = "no times: runs count as equally spaced, no drift per hour";
    public const string OneCodeWasDrivenAfterOther = "one code was driven after the other: a drift of the day shows in full as a difference";
    public const string TwoCarsAndNoRunSays = "two cars, and no run says which one drives it: car and tyre are told apart only if every place is driven in both";
    public const string TooFewForTest = "too few for a test";
    public const string NoDifferenceShown = "no difference shown";
    public const string HowMuchResultHangsOnSingleRunsAndSegments = "how much the result hangs on single runs and segments is not worked out for so many readings";
    public const string BracketDrivenAgain = "bracket driven again";

    public static string MoreThanDb(Limits limits, int number) => $"more than {limits.Of(FurtherLimits.RepeatVoid):0.0#} dB: void, drive it again with 'rerun bracket {number} WHY'";

    public static string AndControlRepeatsDbApart(string name, double? repeatDb, string isVoid) => $"{name}: the control repeats {repeatDb:+0.0;-0.0} dB apart, {isVoid}";

    public static string AndAirChangedByDegc(string name, double? airSpreadCelsius, double? airSpreadCelsius2) => $"{name}: the air changed by {airSpreadCelsius:0.#} degC, outdoors about {airSpreadCelsius2:0.0} dB";

    public static string AndMinBetweenTwoOfItsRuns(string name, double longestGapMinutes) => $"{name}: {longestGapMinutes:0} min between two of its runs";

    public static string AndOfRunIsSpoilt(string name, double share, int run, int number) => $"{name}: {100 * share:0} % of run {run} is spoilt; 'rerun bracket {number} WHY' drives it again";

    public static string NoRunOnReferenceYet(ComparisonTerms terms) => $"no run on the reference {terms.Reference} yet";

    public static string HasSpoiltReadings(CodeReadings most, CodeReadings least) => $"{most.Code} has {most.Spoilt} spoilt readings, {least.Code} has {least.Spoilt}: look at the comparison with spoilt readings too";

    public static string DisplayWanderedOverDbOnAndDbOnFinding(CodeReadings[] wide) => $"the display wandered over {wide[^1].MeanWidthDb:0.0} dB on {wide[^1].Code} and {wide[0].MeanWidthDb:0.0} dB on {wide[0].Code}: " + "a finding of its own, and the middles of such ranges compare unlike things";

    public static string NoLegOnReferenceYet(string asked, string reference) => $"no leg on the reference {asked} yet: held against {reference}";

    public static string AndKmLessThanShortWaysWeigh(string where, string number, string number2) => $"{where}: {number} km, less than {number2}: short ways weigh starts and readings too much";

    public static string AndOfChargeUsed(string where, string number, string number2) => $"{where}: {number} % of charge used, less than {number2}: its step is large beside it";

    public static string AndMeanWindAbove(string where, string number, string number2) => $"{where}: mean wind {number} m/s, above {number2}";

    public static string NotComparableBecauseNoOtherCar(string alone) => $"not comparable, because no other car drove beside, and left out: {alone}";

    public static string DayCarOn(EnergyStretch stretch) => $"day {stretch.Day}, car {stretch.Car} on {stretch.Code}";

    public static string DifferenceShownButSmallerThan(string margin) => $"difference shown, but smaller than {margin}";

    public static string DifferenceShownAndLargerThan(string margin) => $"difference shown and larger than {margin}";

    public static string DifferenceHangsOnReadingsLeftOutOfQuieter(string quieter) => $"the difference hangs on readings left out of {quieter}, the quieter code: with them it is not shown; traffic only raises levels, so look at those flags first";

    public static string PlaceIsNeverDriven(Place place) => $"place {place} is never driven";

    public static string PlaceStandsInFromToOrMoreLet(Place place, int brackets, string more, int bracketsWanted) => $"place {place} stands in {brackets} bracket{more} from R to R; {bracketsWanted} or more let chance be told from a difference";

    public static string SteadyDriftDoesNotCancel(Place place, string runs, string more) => $"a steady drift does not cancel: place {place} is driven on average {runs} runs {more} than R; orders such as R 1 R or R 1 2 R 2 1 R cancel it";

    public static string NotCountedBecauseTooFewOfTheir(string runsOut) => $"not counted, because too few of their segments have a valid level: run {runsOut}";

    public static string NotComparedBecauseNotEveryCode(string segmentsOut) => $"not compared, because not every code has a valid level there: {segmentsOut}";

    public static string CodeAndCannotBeToldApart(PairLine pair) => $"code and {pair.ConfoundedWith} cannot be told apart: the difference may be either";

    public static string WithRepeatabilityFromEarlierDays(Scatter scatter) => $"with repeatability from {scatter.Prior?.Days} earlier days: it holds if today repeats as they did";

    public static string RealDriftOfDbPerHourWouldShift(double lever) => $"a real drift of 1 dB per hour would shift the difference by {lever:0.00} dB";

    public static string CarAndTyreAreNotSeparated(IGrouping<Place, string> split) => $"car and tyre are not separated: place {split.Key} is only driven in {split.First()}";

    public static string SpoiltReadingsAreUneven(string codes) => $"spoilt readings are uneven: {codes}; if the result hangs on them, it hangs on the flags";

    public static string EveryReadingOfOnIsSpoilt(SpecCode code, string name) => $"every reading of {code} on {name} is spoilt: the segment leaves the headline";
}
