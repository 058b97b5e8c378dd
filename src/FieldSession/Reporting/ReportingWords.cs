using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the report says.</summary>
internal static class ReportingWords
{
    public const string NoCheckWasMadeWithTypedValuesBeside = "No check was made with typed values beside calibration and weather.";
    public const string NothingWarnedNothingWasOverriddenNoLimit = "Nothing warned, nothing was overridden, no limit was changed.";
    public const string StandsAgainstRun = "stands against a run";
    public const string NoReasonWasWrittenDown = "no reason was written down";
    public const string CodesAndKey = "Codes and key";
    public const string KeyIsNotOpen = "The key is not open.";
    public const string SpecByKey = "Spec by the key";
    public const string MarkReadOnTyres = "Mark read on the tyres";
    public const string KeysGivePublishedCommitments = "The keys give the published commitments.";
    public const string KeyGivesPublishedCommitment = "The key gives the published commitment.";
    public const string KeyDoesNotGiveItsPublishedCommitment = "A key does NOT give its published commitment.";
    public const string ThereWasNoCommitmentToCheck = "There was no commitment to check: the key is a paper key, typed in at the reveal, and nothing proves that it was not chosen afterwards.";
    public const string TheyAgreeWithKey = "they agree with the key";
    public const string TheyDoNotAgreeWithKey = "they do NOT agree with the key, or were not read by two people";
    public const string NoCommitmentPaperKey = "no commitment: a paper key";
    public const string AndByLessThanMarginThatMatters = ", by less than the margin that matters";
    public const string HeardBlindAndNotResolvedByMeter = "Heard blind, and not resolved by the meter: a change of character that dB(A) misses, or too few runs; look at 200 and 250 Hz.";
    public const string ChangeOfCharacterThatDb = "A change of character that the dB(A) meter misses: look at 200 and 250 Hz.";
    public const string ThisDayCannotSay = "This day cannot say.";
    public const string MeterWeatherAndRoute = "Meter, weather and route";
    public const string NoCorrectionForTemperature = "No correction for temperature, speed or background was applied.";
    public const string AndDriftNotKnown = "; drift not known";
    public const string AndKeyNotOpened = ", key not opened";
    public const string NothingWasRatedAndNoForcedChoicesWereMade = "Nothing was rated and no forced choices were made.";
    public const string ForcedChoicesPairQuestionSideNumber = "Forced choices: pair, question, side, number and order stood before the first choice of a set, and it ended by that plan. The first set planned for a pair carries the ear's word; others are explored.";
    public const string WhatItCanShow = "What it can show";
    public const string EachPersonHabitOfPlace = "Each person, habit of place";
    public const string AskedAgainExplored = " (asked again: explored)";
    public const string WhatCanBeSaid = "What can be said";
    public const string ExploredRatingsCodeMinusReferenceEach = "Explored: ratings, code minus reference, each person alone";
    public const string LevelsReadBesideDb = "Levels read beside dB(A), compared by the same method but apart from it; explored.";
    public const string ExploredBesideMainQuestion = "Explored beside the main question: consumption on days with cars side by side, compared within each day and separated from the cars by swapping the tyres. The unit of the statistics is what one car drove on one code on one day, total energy over total distance; legs are not counted as repeats (docs/method.md). Positive means more energy.";
    public const string WhatEachCarDrove = "What each car drove, in order:";
    public const string CouldHaveShown = "Could have shown";
    public const string DegreesOfFreedom = "Degrees of freedom";
    public const string AndFlaggedLateKeptInCleanResult = ", flagged late, kept in the clean result";
    public const string ExploredNotPlannedAsMainQuestion = "Explored: not planned as the main question. Each interval stands for its line alone; with many segments some leave out 0 by chance. 'p Holm' allows for the number of segments.";
    public const string WithAllReadings = "With all readings, dB";
    public const string ExploredKindsAndSegments = "Explored: kinds and segments";
    public const string DifferenceAtThatAllowsForNumberOfSegments = "a difference at 5 % that allows for the number of segments";
    public const string NoIntervalIsKnown = "No interval is known.";
    public const string AbsoluteLevelsDoNotTravelToOtherCars = "Absolute levels do not travel to other cars, meters or days; only the paired differences of the day are compared.";
    public const string DbIsOneAxisEarAnother = "dB(A) is one axis, the ear another: a ring or a whine can be plain to the ear and hardly move the meter.";
    public const string NothingCouldBeCompared = "nothing could be compared";
    public const string AndHowManyRunsWouldSettleItIsNotKnown = "; how many runs would settle it is not known yet";
    public const string AndMoreThanToBeCautious = ", more than 10 to be cautious";
    public const string AndNotEvenMoreRunsPerCodeWouldSettle = "; not even 10 more runs per code would settle it";
    public const string HasFeature = "Has the feature";
    public const string FewPeopleOnOneDayAreDescription = "A few people on one day are a description, not a test. A right guess from the sound is a finding; from something seen it is a leak.";
    public const string HasFeatureIsSpecThatIsNotControl = "'Has the feature' is the spec that is not the control.";
    public const string SomebodyNamesSomethingSeenOrOverheardAsGround = "Somebody names something seen or overheard as the ground: look at the words whether the blind held.";
    public const string KeyNotOpen = "key not open";
    public const string NotSureCommitmentOrMarksDo = "not sure: commitment or marks do not agree with the key";
    public const string WhereThisComesFrom = "Where this comes from";
    public const string FieldsessionVerifyStudyChecksEveryLineOfJournal = "'fieldsession verify STUDY' checks every line of the journal; with '--head HASH' it proves that the line that bore a hash on paper still stands, and every line before it.";
    public const string ThereWasNoPlan = "There was no plan.";
    public const string NoRunYet = "no run yet";
    public const string NoQuestionWasWrittenDown = "No question was written down.";
    public const string SizeNotWrittenDown = "size not written down, ";
    public const string ReadingsTakenAndLeftOut = "Readings taken and left out";
    public const string DifferencesAreFirstSpecMinusSecondInDb = "Differences are the first spec minus the second in dB(A); positive means louder. 'Clean' leaves out the readings flagged on the spot; 'all' puts them back. Runs are the unit of the statistics, segments are not counted as repeats (docs/method.md).";
    public const string CouldHaveShownDb = "Could have shown, dB";
    public const string MainSegmentsClean = "main segments, clean";
    public const string MainMeasure = "the main measure";
    public const string SteadySegmentsDb = "Steady segments, dB(A)";
    public const string MeanLevelOfRunIsTakenOverCompared = "The mean level of a run is taken over the compared segments of all codes; a reading left out is replaced by what the other runs on the same code let expect.";
    public const string NamesOfSpecsAreWithheldHere = "The names of the specs are withheld here: the key did not give the published commitment, or the marks on the tyres do not agree with it. See 'Codes and key'.";
    public const string NothingCanBeCompared = "Nothing can be compared: fewer than two codes were driven.";
    public const string CantSayPriceWasNotWritten = "CAN'T SAY: the price was not written down before the reveal.";
    public const string MorePerSet = " more per set";
    public const string NotWorthItForSoundInside = "NOT WORTH IT for the sound inside, which differs by less than the margin that matters and was not heard";
    public const string CantSayWithoutEar = "CAN'T SAY without the ear";
    public const string CantSayBecauseMeterDidNotResolve = "CAN'T SAY, because the meter did not resolve which is quieter";
    public const string CantSayBecauseWhatWasHeard = "CAN'T SAY, because what was heard is no level: the owner weighs what the ratings say";
    public const string CantSayWhileItIsNotKnownWhichCode = "CAN'T SAY while it is not known which code is the control";
    public const string NotWorthItForSoundInsideWhich = "NOT WORTH IT for the sound inside, which is louder";
    public const string CantSayForOwner = "CAN'T SAY for the owner: it costs nothing more and is louder inside";
    public const string CantSayForOwnerWho = "CAN'T SAY for the owner, who wrote down no price that it would be worth";
    public const string NotWorthItAtThisPrice = "NOT WORTH IT at this price, which is above what the owner said it would be worth";
    public const string WorthItByWhatOwnerSaid = "WORTH IT by what the owner said: quieter, and heard";
    public const string WorthItForSome = "WORTH IT FOR SOME, who mind what they hear though it is less than the margin that matters";
    public const string WorthItForSomeWith = "WORTH IT FOR SOME, with other ears: the meter shows it quieter, these ears did not find it";
    public const string NotDefinedBecauseNoDifferenceWasMeasured = "not defined, because no difference was measured";

    public static string OverriddenBeforeRun(Override one) => $"Overridden before run {one.BeforeRun}: {one.Check}: {one.Reason}";

    public static string BracketRunsWasDrivenAgainFromRun(Rerun one, string runs) => $"Bracket {one.Bracket} (runs {runs}) was driven again from run {one.FirstRun} on: {one.Reason}";

    public static string BeforeRunPlanTookRepeatabilityOfEarlierFromIts(TakenArchive archive, string more, string distinct) => $"Before run 1 the plan took the repeatability of {archive.Days} earlier day{more} from its archive: {distinct}.";

    public static string LimitWasSetToInsteadOf(string name, string words, double ofWhat, double defaultWhat, string reason) => $"Limit {name} ({words}) was set to {ofWhat:0.###} instead of {defaultWhat:0.###}: {reason}";

    public static string CheckWasOverriddenBeforeRun(Override o) => $"Check '{o.Check}' was overridden before run {o.BeforeRun}: {o.Reason}";

    public static string NoteOfLine(Note n) => $"A note of line {n.Mark.Place}, written before the reveal, names a spec: look whether the blind leaked.";

    public static string KeyOpenedAtUtc(Opening opening) => $"Key opened at {opening.Mark.At:yyyy-MM-dd} {opening.Mark.At:t} UTC, after all predictions were locked.";

    public static string MarksReadOnTyresBy(string readers, string marks) => $"Marks read on the tyres by {readers}: {marks}.";

    public static string CodesSealedUtc(string order, Fitting fitting, string commitment) => $"Codes {order}, sealed {fitting.Mark.At:yyyy-MM-dd} {fitting.Mark.At:t} UTC; {commitment}.";

    public static string MeterShowsIt(string more) => $"the meter shows it {more}";

    public static string YouWouldNotice(string direction) => $"You would notice: {direction}, and it was heard blind.";

    public static string MeterSeesItYou(string direction) => $"The meter sees it, you would not: {direction}, and the ear did not find it.";

    public static string AndWhetherItIsHeardWasNotTestedEnough(string capital) => $"{capital}; whether it is heard was not tested enough.";

    public static string WeCouldNotTellThemApart(ClassComparison? main) => $"We could not tell them apart, and we could have seen {Figures.Db(main?.Mdd80Db)} dB.";

    public static string MeterCouldNotTellThemApart(ClassComparison? main) => $"The meter could not tell them apart, and could have seen {Figures.Db(main?.Mdd80Db)} dB; whether the ear can was not tested enough.";

    public static string SessionCalibrationBeforeAfter(Session session, string before, string after, string drift) => $"Session {session.Number}: calibration before {before}, after {after}{drift}.";

    public static string AndComparisonOfTyreSpecs(string name, Study study, string more) => $"{name}: {BlindWords.Of(study)} comparison of tyre specs{more}";

    public static string RatingsOnToInQuarterPoints(Study study) => $"Ratings on 1 to 10 in quarter points, each person alone; {study.ReferenceCode} brackets the others and stands at {Score.Anchor}. One number for each rater, seat and day; explored, not the main measure.";

    public static string ScaleWhatDisturbsWhatCarDoes(string all) => $"The scale: {all} (what disturbs / what the car does).";

    public static string CarAgainstCarOnSameTyres(CarDifference car) => $"Car {car.Car} against car {car.FirstCar} on the same tyres: {EnergyWords.Percent(car.Percent)}";

    public static string ExploredConsumptionOfIntervals(string pair) => $"Explored: consumption of {pair}, 95 % intervals";

    public static string RangeOnUsable(string number, string more, EnergyRange range, UnitSystem units) => $"Range on the usable {number} {more}, in the conditions of these days: {EnergyWords.Range(range, units)}";

    public static string MorePairedDaysThatWouldSettleIt(EnergyFinding finding) => $"More paired days that would settle it: {EnergyWords.MoreDays(finding)}";

    public static string LegDayCar(int number, int day, string car, string word, string words, string late) => $"Leg {number}, day {day}, car {car}: {word}{words}{late}";

    public static string EverythingBeyondIsExplored(IReadOnlyList<string> main) => $"Everything beyond {MainMeasureWords.Named(main)} is explored; those stand in the tables too, each by itself.";

    public static string MinusByKindAndSegment(ReportDay day, CodeComparison pair) => $"{day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)}, by kind and segment";

    public static string ExploredDifferenceMinusBySegmentClean(ReportDay day, CodeComparison pair) => $"Explored: difference {day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)} by segment, clean readings, 95 % intervals";

    public static string OneSetOfTyresPerSpec(string more) => $"One set of tyres per spec, {more}, one route, one meter position, the inside of this car only: the difference between two sets of one spec is not known and does not shrink with more runs.";

    public static string RunsOfPlannedWereDriven(Study study) => $"{study.Runs.Count} runs of {study.Plan?.Order.Count ?? 0} planned were driven.";

    public static string MeasuredButSmallWithinDb(string margin, string numbers) => $"MEASURED, BUT SMALL (within {margin} dB): {numbers}";

    public static string SameWithinDb(string margin, string numbers) => $"SAME WITHIN {margin} dB: {numbers}";

    public static string DbIntervalDb(Estimate overall) => $"{Figures.Difference(overall)} dB, 95 % interval {Figures.Interval95(overall)} dB";

    public static string LaterVerdictAsksForMore(double alpha) => $" (the order was lengthened after a verdict: the word is given at {100 * alpha:0.#} % in place of 5 %)";

    public static string AndToBeCautious(int cautious) => $", {cautious} to be cautious";

    public static string AndMorePerCodeWouldSettleItIfThings(int seen, string more, string more2) => $"; {seen} more {more} per code would settle it if things go on as seen{more2}";

    public static string HiddenUntilAllAreLocked(string open) => $"Hidden until all are locked; still open: {open}.";

    public static string HasFeatureIsAnyOfSpecsThatAreNot(int specs) => $"'Has the feature' is any of the {specs - 1} specs that are not the control: who points blindly is right in {specs - 1} of {specs}.";

    public static string WrongItWasControl(string spec) => $"wrong: it was {spec}, the control";

    public static string RightItWas(string spec) => $"right: it was {spec}";

    public static string JournalLinesHeadHash(Provenance provenance) => $"Journal: {provenance.LineCount} lines, head hash {provenance.HeadHash}.";

    public static string FrozenBeforeRunAtUtc(Study study) => $"frozen before run 1 at {study.Runs[0].Started.At:yyyy-MM-dd} {study.Runs[0].Started.At:t} UTC";

    public static string MainMeasureEverythingElseIsExplored(Plan plan) => $"Main measure: {MainMeasureWords.Of(plan.MainMeasure, plan.MainSegments)}. Everything else is explored.";

    public static string MarginsDbOnSteadySegmentsDb(Plan plan) => $"Margins: {Figures.MarginDb(plan.MarginDb)} dB on steady segments, {Figures.MarginDb(plan.ImpactMarginDb)} dB on impacts.";

    public static string OrderPlannedIsReferencePlaceDrawn(Plan plan, string runs) => $"Order planned: {string.Join(' ', plan.Order)} (R is the reference place, drawn by lot). Runs driven: {runs}.";

    public static string TyresSetPerSpecUnlessNotes(string more) => $"Tyres: {more}one set per spec unless the notes say more; build week, tread and hardness stand under Checks where they were compared.";

    public static string WeakInPlan(string doubt) => $"Weak in the plan, and driven so: {doubt}.";

    public static string ChangedBeforeRun(string when) => $"Changed before run 1, {when}";

    public static string AmendedAfterRunHadBeenDriven(Amendment amendment, string when) => $"AMENDED after run {amendment.AfterRun} had been driven, {when}";

    public static string AndFromToBecause(string kind, Amendment amendment) => $"{kind}: {amendment.What} from {amendment.From} to {amendment.To}, because {amendment.Reason}.";

    public static string RunCorrectedAtStopFromToDb(int number, string name, LevelRange? correctedFrom, LevelRange levels) => $"Run {number}, {name}: corrected at a stop from {correctedFrom} to {levels} dB";

    public static string DifferenceMinusIntervals(ReportDay day, CodeComparison pair) => $"Difference {day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)}, 95 % intervals";

    public static string MeanLevelOfEachRunOnClean(RunLevels levels) => $"Mean level of each run on {ComparisonWords.Name(levels.Class)}, clean readings";

    public static string DbPerHour(DriftPerHour drift, string error) => $"{Figures.SignedFineDb(drift.BDbPerHour)} dB per hour{error}";

    public static string FromToDb(IGrouping<string, RunLevelPoint> spec, string db, string db2, string more) => $"{spec.Key} from {db} to {db2} dB(A) in {spec.Count()} run{more}";

    public static string WithThisDaysScatterDifferenceOfDbWould(double mdd) => $" With this day's scatter a difference of {Figures.Db(mdd)} dB would have been shown in 4 of 5 such days.";
}
