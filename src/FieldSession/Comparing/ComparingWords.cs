using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>What the comparison says beside its figures.</summary>
internal static class ComparingWords
{
    // Codes, runs and segments that are compared
    public const string FewerThanTwoCodesDriven = "fewer than two codes driven: levels only";
    public const string FewerThanTwoCodesToCompare = "fewer than two codes to compare: levels only";
    public const string NoRunReadOnEnoughSegments = "no run has valid levels on half of these segments";
    public const string NoSegmentReadOnEveryCode = "no segment has a valid level on every code";

    public static string NoRunOnReferenceYet(ComparisonTerms terms) => $"no run on the reference {terms.Reference} yet";

    public static string RunsNotCounted(string runs) => $"not counted, because too few of their segments have a valid level: run {runs}";

    public static string RunsReplaced(string runs) => $"replaced, because their bracket was driven again: run {runs}";

    public static string SegmentsNotCompared(string segments) => $"not compared, because not every code has a valid level there: {segments}";

    // Spoilt readings and what the result hangs on
    public const string SensitivityNotWorkedOut = "what the result hangs on is not worked out for so many readings";
    // also a cause in readings.csv
    public const string BracketDrivenAgain = "bracket driven again";
    public const string RunAborted = "run aborted";
    public const string FilledAtStop = "filled at the stop";

    public static string SpoiltReadingsDifferByCode(CodeReadings most, CodeReadings least) => $"{most.Code} has {most.Spoilt} spoilt readings, {least.Code} has {least.Spoilt}: look at the comparison with spoilt readings too";

    public static string DisplayWanderedUnevenly(CodeReadings[] byWidth) => $"the display wandered over {byWidth[^1].MeanWidthDb:0.0} dB on {byWidth[^1].Code} and {byWidth[0].MeanWidthDb:0.0} dB on {byWidth[0].Code}: a finding in itself; the midpoints of such ranges are not alike";

    public static string DifferenceHangsOnReadingsLeftOut(string quieter) => $"the difference hangs on readings left out of {quieter}, the quieter code: with those alone put back, and none of the other code's, it is not shown; traffic only raises levels, so look at those flags first";

    public static string SpoiltReadingsAreUneven(string percentByCode) => $"spoilt readings are uneven: {percentByCode}; if the result hangs on them, it hangs on the flags";

    public static string EveryReadingIsSpoilt(SpecCode code, string segment) => $"every reading of {code} on {segment} is spoilt: the segment is left out of the headline";

    // Recordings
    public const string ChainsNotCalibrated = "two chains are compared only if both are calibrated";

    public static string ChainDrifted(double driftDb) => $"the chain drifted by {driftDb:+0.0;-0.0} dB";

    public static string AutomaticGainSuspected(double slope) => $"automatic gain suspected: {slope:0.00} dB of the recorder for each typed dB";

    // Brackets
    public const string LookForWhatChanged = "look for what changed";

    public static string VoidDriveAgain(Limits limits, int bracket) => $"more than {limits.Of(FurtherLimits.RepeatVoid):0.0#} dB: void, drive it again with 'rerun bracket {bracket} WHY'";

    public static string ControlRepeatsApart(string bracket, double? repeatDb, double[] limits, string consequence) => $"{bracket}: the control repeats {EnoughDigits.WithSign(repeatDb ?? 0, EnoughDigits.For(1, [repeatDb ?? 0], limits))} dB apart, {consequence}";

    public static string AirChangedInBracket(string bracket, double? airSpreadCelsius, double? levelShiftDb) => $"{bracket}: the air changed by {airSpreadCelsius:0.#} degC, outdoors about {levelShiftDb:0.0} dB";

    public static string LongGapBetweenRuns(string bracket, double gapMinutes) => $"{bracket}: {gapMinutes:0} min between two of its runs";

    public static string RunLargelySpoilt(string bracket, double share, int run, int bracketNumber) => $"{bracket}: {100 * share:0} % of run {run} is spoilt; 'rerun bracket {bracketNumber} WHY' drives it again";

    // One pair of codes
    public const string NotBracketed = "not bracketed: no code was driven twice";
    public const string OneComparisonOfLikeOnly = "only one comparison of like with like: the interval is wide for that reason";
    public const string TodayIsRougherThanArchive = "today is rougher than the archive: the archive's repeatability is not used";
    public const string RunsAgreeBetterThanReadingsAllow = "the runs agree more closely than the readings can show: the error is raised to match";
    public const string NoScatterNoInterval = "no scatter seen at this display resolution: no interval";
    public const string NoUsableInterval = "no usable interval";
    public const string NoScatterSeen = "no scatter seen at this display resolution";
    public const string SideBySideComparedWithinSlot = "runs side by side are compared within their slot";
    public const string StraightDriftIsTakenOut = "a straight drift over the day is taken out";
    public const string NoTimesKnown = "no usable run times: runs count as equally spaced, without a drift per hour";
    public const string OneCodeAfterTheOther = "one code was driven after the other: a drift of the day shows in full as a difference";

    public static string CodeNotToldApart(PairLine pair) => $"code and {pair.ConfoundedWith} cannot be told apart: the difference may be either";

    public static string RepeatabilityFromEarlierDays(Scatter scatter) => $"with repeatability from {scatter.Prior?.Days} earlier days: it holds if today repeats as they did";

    public static string DriftWouldShiftDifference(double shiftDb) => $"a real drift of 1 dB per hour would shift the difference by {shiftDb:0.00} dB";

    public static string ExtendedTimes(int times) => $", extended {times} time{(times == 1 ? "" : "s")}";

    public static string DifferenceShownButSmallerThan(string margin) => $"difference shown, but smaller than {margin}";

    public static string DifferenceShownAndLargerThan(string margin) => $"difference shown and larger than {margin}";

    // The order and the cars
    public const string OrderNotFramedByReference = "the order does not begin and end with R: runs outside a bracket rest on the fit of the drift alone";
    public const string NoRunNamesItsCar = "two cars, and no run says which one drives it: car and tyre are told apart only if every place is driven in both";

    public static string PlaceIsNeverDriven(Place place) => $"spec {place} is never driven";

    public static string PlaceInTooFewBrackets(Place place, int brackets, string plural, int bracketsWanted) => $"spec {place} has {brackets} bracket{plural} from R to R; use at least {bracketsWanted}";

    public static string SteadyDriftDoesNotCancel(Place place, string runs, string laterOrEarlier, bool isTakenOut) => $"a steady drift does not cancel{(isTakenOut ? " by itself" : "")}: spec {place} is driven on average {runs} runs {laterOrEarlier} than R; {(isTakenOut ? "the comparison takes it out, at a price in precision; " : "")}R 1 R or R 1 2 R 2 1 R cancel it";

    public static string CarAndTyreAreNotSeparated(IGrouping<Place, string> carsOfPlace) => $"car and tyre are not separated: place {carsOfPlace.Key} is only driven in {carsOfPlace.First()}";

    // The ear
    public const string LevelAt200Hz = "dB at 200 Hz";
    public const string LevelAt250Hz = "dB at 250 Hz";
    public const string TooFewForTest = "too few for a test";
    public const string NoDifferenceShown = "no difference shown";

    // Energy days
    public const string EnergyWordsAllowForAllCodes = "several codes are asked at once: the words allow for all of them (Holm), each interval is for its code alone";
    public const string EachCodeHadItsOwnDriver = "each code had its own driver: the difference may be the driver's";
    public const string DaysAgreeBetterThanDisplayStep = "the days agree more closely than the display can show: the error is raised to match";
    public const string NoCarsSideBySide = "days not comparable: no two cars drove side by side; air, wind and traffic of the days are in the difference";
    public const string AirTemperatureIsTakenOut = "a straight influence of the air temperature is taken out, nothing else of the days";
    public const string AirTemperatureNotKnownThroughout = "the air temperature is not known for every stretch: its influence is not taken out";
    public const string MeterAndStateOfChargeMixed = "energy by meter and by state of charge are mixed: they can differ by more than the specs do";
    public const string CodeNotDrivenBesideAnother = "not comparable: a code was not driven beside another car";
    public const string NoDaysLeadBetweenCodes = "not comparable: no days lead from one code to the other";
    public const string TyresAndCarNotSeparated = "not comparable: tyres and car cannot be told apart, the tyres were not swapped between the cars";
    public const string TyresAndDriverNotSeparated = "not comparable: tyres and driver cannot be told apart";
    public const string NoSecondCarBeside = "days are not comparable: no second car drove beside";
    public const string TooFewDaysForAnyInterval = "too few days for any interval";
    public const string TooFewDaysToTrust = "too few days: one comparison of like with like gives no interval that can be trusted";
    public const string EnergyDaysNotFinished = "the planned energy days are not driven to their end";
    public const string WithinNoiseOfMethod = "within the noise of the method: these days can neither show a difference nor rule one out";

    public static string NoLegOnReferenceYet(string askedReference, string reference) => $"no leg on the reference {askedReference} yet: compared with {reference}";

    public static string StretchIsShort(string stretch, string distanceKm, string leastKm) => $"{stretch}: {distanceKm} km, less than {leastKm}: on short legs starts and readings count too much";

    public static string LittleChargeUsed(string stretch, string usedPercent, string leastPercent) => $"{stretch}: {usedPercent} % of charge used, less than {leastPercent}: the display's step is too coarse for that";

    public static string MeanWindIsStrong(string stretch, string windMetresPerSecond, string limitMetresPerSecond) => $"{stretch}: mean wind {windMetresPerSecond} m/s, above {limitMetresPerSecond}";

    public static string StretchesDrivenAlone(string stretches) => $"not comparable, because no other car drove alongside, and left out: {stretches}";

    public static string NameOfStretch(EnergyStretch stretch) => $"day {stretch.Day}, car {stretch.Car} on {stretch.Code}";
}
