using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the report says.</summary>
internal static class ReportingWords
{
    // Title
    public const string TitleKeyNotOpened = ", key not opened";

    public static string ReportTitle(string studyName, Study study, string keyState) =>
        $"{studyName}: {BlindWords.Of(study)} comparison of tyre specs{keyState}";

    // The question
    public const string ThereWasNoPlan = "There was no plan.";
    public const string NoRunYet = "no run yet";
    public const string NoQuestionWasWrittenDown = "No question was written down.";
    public const string SizeNotWrittenDown = "size not written down, ";

    public static string FrozenBeforeFirstRun(Study study) =>
        $"frozen before run 1 at {study.Runs[0].Started.At:yyyy-MM-dd} {study.Runs[0].Started.At:t} UTC";

    public static string MainMeasureOfPlan(Plan plan) =>
        $"Main measure: {MainMeasureWords.Of(plan.MainMeasure, plan.MainSegments)}. Everything else is explored.";

    public static string MarginsOfPlan(Plan plan) =>
        $"Margins: {Figures.MarginDb(plan.MarginDb)} dB on steady segments, {Figures.MarginDb(plan.ImpactMarginDb)} dB on impacts.";

    public static string OrderPlannedAndDriven(Plan plan, string driven) =>
        $"Order planned: {string.Join(' ', plan.Order)} (R is the reference place, drawn by lot). Runs driven: {driven}.";

    public static string TyresOfPlan(string size) =>
        $"Tyres: {size}one set per spec unless the notes say more; build week, tread and hardness are under Checks where "
        + "they were compared.";

    public static string WeakInPlan(string doubt) => $"Weak in the plan, and driven all the same: {doubt}.";

    public static string ChangedBeforeFirstRun(string when) => $"Changed before run 1, {when}";

    public static string AmendedAfterRun(Amendment amendment, string when) =>
        $"AMENDED after run {amendment.AfterRun} had been driven, {when}";

    public static string AmendmentWithReason(string whenAmended, Amendment amendment) =>
        $"{whenAmended}: {amendment.What} from {amendment.From} to {amendment.To}, because {amendment.Reason}.";

    // Chosen after the data
    public const string ChosenAfterHead = "Chosen after the data";
    public const string ChosenAfterExplained =
        "The plan's question was amended after a comparison could be seen. The verdict above stays with the question as "
        + "it was before. What the amended one would say follows; it is chosen after the data and no verdict:";

    public static string ChosenAfterLine(string pair, string on, string margin, string words) =>
        $"{pair}, on {on}, margin {margin} dB: {words}";

    // Pairs
    public const string PairsOfMainMeasure = "Several candidates: each pair on the main measure, clean readings";
    public const string HowPairsRead =
        "One question is asked of several candidates at once, so the words allow for all of them. 'Alone' is the "
        + "comparison by itself; 'together' is what the word rests on, by the rule in the last column. Pairs that the plan "
        + "did not ask for are explored, with Holm over all pairs.";

    public const string HolmExplored = "Holm, explored";

    // Codes and key
    public const string CodesAndKey = "Codes and key";
    public const string KeyIsNotOpen = "The key is not open.";
    public const string SpecByKey = "Spec by the key";
    public const string MarkReadOnTyres = "Mark read on the tyres";
    public const string KeysGivePublishedCommitments = "The keys give the published commitments.";
    public const string KeyGivesPublishedCommitment = "The key gives the published commitment.";
    public const string CommitmentDoesNotHold = "A key does NOT give its published commitment.";
    public const string NoCommitmentToCheck =
        "There was no commitment to check: the key is a paper key, typed in at the reveal, and nothing proves that it "
        + "was not chosen afterwards.";
    public const string MarksAgreeWithKey = "they agree with the key";
    public const string MarkInKey = "Mark in the key";
    public const string PaperKeyWithoutCommitment = "no commitment: a paper key";

    public static string CheckWasOverridden(Override overridden) =>
        $"Check '{overridden.Check}' was overridden before run {overridden.BeforeRun}: {overridden.Reason}";

    public static string NoteNamesSpec(Note note) =>
        $"A note of line {note.Mark.Place}, written before the reveal, names a spec: look whether the blind leaked.";

    public static string KeyOpenedAt(Opening opening) =>
        $"Key opened at {opening.Mark.At:yyyy-MM-dd} {opening.Mark.At:t} UTC, after all predictions were locked.";

    public static string MarksReadOnTyresBy(string readers, string marks) => $"Marks read on the tyres by {readers}: {marks}.";

    public static string MarksWereReadAgain(string whens) =>
        $"The marks were read again after the reveal, at {whens} UTC; the last reading counts.";

    public static string EarlierMark(SpecCode code, string earlier, string last) =>
        $"First read on the tyres of {code}: {earlier}; read again as {last}.";

    public static string CodesSealed(string codes, Fitting fitting, string commitment) =>
        $"Codes {codes}, sealed {fitting.Mark.At:yyyy-MM-dd} {fitting.Mark.At:t} UTC; {commitment}.";

    // Result
    public const string HowDifferencesRead =
        "Differences are the first spec minus the second in dB(A); positive means louder. 'Clean' leaves out the "
        + "readings flagged on the spot; 'all' puts them back. Runs are counted, segments are no repeats.";
    public const string CouldHaveShownInDb = "Could have shown, dB";
    public const string MainSegmentsClean = "main segments, clean";
    public const string TheMainMeasure = "the main measure";
    public const string WhatMainMeasureHangsOn =
        "The main measure with one thing changed: how far the difference goes, and each change that gives another verdict.";
    public const string OneThingChanged = "One thing changed";
    public const string NoIntervalIsKnown = "No interval is known.";

    public static string DifferenceWithIntervals(ReportDay day, CodeComparison pair) =>
        $"Difference {day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)}, 95 % intervals";

    // Explored
    public const string NotPlannedAsMainQuestion =
        "Explored: not planned as the main question. Each interval is for its line alone; with many segments some leave "
        + "out 0 by chance. 'p Holm' allows for the number of segments.";

    public static string OneInterval(bool excludesZero, bool? isWithinMargin) =>
        $"The 95 % interval {(excludesZero ? "excludes" : "includes")} 0"
        + isWithinMargin switch
        {
            null => ".",
            true => " and is within the margin.",
            false => " and is not within the margin.",
        };

    public static string SeveralIntervals(int count, int excludeZero, int? withinMargin) =>
        $"{excludeZero} of {count} 95 % intervals exclude{(excludeZero == 1 ? "s" : "")} 0"
        + $"{(withinMargin is { } inside ? $"; {inside} {(inside == 1 ? "is" : "are")} within the margin" : "")}.";

    public const string WithAllReadings = "With all readings, dB";
    public const string ExploredKindsAndSegments = "Explored: kinds and segments";
    public const string DifferenceAllowingForSegments = "a difference at 5 % that allows for the number of segments";

    public static string EverythingBeyondIsExplored(IReadOnlyList<string> mainSegments) =>
        $"Everything beyond {MainMeasureWords.Named(mainSegments)} is explored; those are in the tables too, each by itself. "
        + "There an interval uses the scatter of all segments of its class; the main measure uses that of its own segments.";

    public static string DifferenceByKindAndSegment(ReportDay day, CodeComparison pair) =>
        $"{day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)}, by kind and segment";

    public static string ExploredDifferenceBySegment(ReportDay day, CodeComparison pair) =>
        $"Explored: difference {day.Names.Of(pair.Code)} minus {day.Names.Of(pair.Reference)} by segment, clean readings, 95 % intervals";

    // The ear
    public const string NothingRatedOrChosen = "Nothing was rated and no forced choices were made.";
    public const string HowForcedChoicesWerePlanned =
        "Forced choices: pair, question, side, number and order were fixed before the first choice of a set, and it "
        + "ended as planned. The first set planned for a pair carries the ear's word; others are explored.";
    public const string WhatItCanShow = "What it can show";
    public const string EachPersonAndPlaceHabit = "Each person, habit of place";
    public const string NotTested = "not tested";
    public const string WhatCanBeSaid = "What can be said";
    public const string ExploredRatings = "Explored: ratings, code minus reference, each person alone";
    public const string LevelsBesideMainLevel = "Levels read beside dB(A), compared by the same method but apart from it; explored.";

    public static string HowRatingsWereGiven(Study study) =>
        $"Ratings on 1 to 10 in quarter points, each person alone; {study.ReferenceCode} brackets the others and is "
        + $"{Score.Anchor} by agreement; it was not rated, and a {Score.Anchor} of it below is that agreement. "
        + "One number for each rater, seat and day; explored, not the main measure.";

    public static string RatingScale(string steps) => $"The scale: {steps} (what disturbs / what the car does).";

    // Energy days
    public const string HowEnergyDaysAreCompared =
        "Explored beside the main question: consumption on days with cars side by side, compared within each day and "
        + "separated from the cars by swapping the tyres. The unit of the statistics is what one car drove on one code on "
        + "one day, total energy over total distance; legs are no repeats. Positive means more energy.";
    public const string WhatEachCarDrove = "What each car drove, in order:";
    public const string CouldHaveShown = "Could have shown";
    public const string DegreesOfFreedom = "Degrees of freedom";

    public static string CarAgainstCar(CarDifference difference) =>
        $"Car {difference.Car} against car {difference.FirstCar} on the same tyres: {EnergyWords.Percent(difference.Percent)}";

    public static string ExploredConsumption(string pair) => $"Explored: consumption of {pair}, 95 % intervals";

    public static string RangeOnUsable(string usable, string unit, EnergyRange range, UnitSystem units) =>
        $"Range on the usable {usable} {unit}, in the conditions of these days: {EnergyWords.Range(range, units)}";

    public static string MorePairedDays(EnergyFinding finding) => $"More paired days that would settle it: {EnergyWords.MoreDays(finding)}";

    public static string SpoiltLeg(int number, int day, string car, string cause, string words, string flaggedLate) =>
        $"Leg {number}, day {day}, car {car}: {cause}{words}{flaggedLate}";

    // Readings, and the level of every run
    public const string ReadingsTakenAndLeftOut = "Readings taken and left out";
    public const string FlaggedLate = ", flagged late, kept in the clean result";
    public const string SteadySegmentsInDb = "Steady segments, dB(A)";
    public const string StartedUtcAndLocal = "Started, UTC (local)";
    public const string HowRunLevelIsTaken =
        "The mean level of a run is taken over the compared segments of all codes; a reading left out is replaced by "
        + "what the other runs on the same code suggest.";

    public static string ReadingCorrectedAtStop(int run, string segment, LevelRange? correctedFrom, LevelRange levels) =>
        $"Run {run}, {segment}: corrected at a stop from {correctedFrom} to {levels} dB";

    public static string MeanLevelOfEachRun(RunLevels levels) =>
        $"Mean level of each run on {ComparisonWords.Name(levels.Class)}, clean readings";

    public static string DriftPerHour(DriftPerHour drift, string error) => $"{Figures.SignedFineDb(drift.BDbPerHour)} dB per hour{error}";

    public static string SpecLevels(string spec, string lowestDb, string highestDb, int runs) =>
        $"{spec} from {lowestDb} to {highestDb} dB(A) in {runs} run{(runs == 1 ? "" : "s")}";

    // Meter, weather and route
    public const string MeterWeatherAndRoute = "Meter, weather and route";
    public const string NoCorrectionApplied = "No correction for temperature, speed or background was applied.";
    public const string DriftNotKnown = "; drift not known";

    public static string SessionCalibration(Session session, string before, string after, string drift) =>
        $"Session {session.Number}: calibration before {before}, after {after}{drift}.";

    // Checks
    public const string NoCheckWithTypedValues = "No check was made with typed values beside calibration and weather.";
    public const string NothingWarnedOrOverridden = "Nothing warned, nothing was overridden, no limit was changed.";
    public const string SpeaksAgainstRun = "blocks a run";
    public const string NoReasonWasWrittenDown = "no reason was written down";

    public static string OverriddenBeforeRun(Override overridden) =>
        $"Overridden before run {overridden.BeforeRun}: {overridden.Check}: {overridden.Reason}";

    public static string RunWasAborted(Run run, int segments, string whetherCounted) =>
        $"Run {run.Number} was aborted after {run.Passages.Select(p => p.Segment).Distinct().Count()} of {segments} "
        + $"segments ({run.Aborted!.Cause ?? "no cause given"}); {whetherCounted}";

    public const string AbortedRunIsOut = "its readings are kept and count only in the lines of all readings";
    public const string AbortedRunCounts = "its readings count";

    public static string ReadingFilledAtStop(int run, string segment, LevelRange levels, string whetherCounted) =>
        $"Run {run}, {segment}: {levels} dB was filled in at the stop, not typed on the spot; {whetherCounted}";

    public static string ReadingsTypedLater(int later, int all, int onSpot, int late) =>
        $"{later} of {all} readings were logged on paper and typed in later. Of their flags {onSpot} count as given on "
        + $"the spot, because the paper says so; {late} count as late";

    public const string FilledIsOut = "left out of the clean result, as the plan says";
    public const string FilledCounts = "it counts, as the plan says";

    public static string BracketDrivenAgain(Rerun rerun, string runs) =>
        $"Bracket {rerun.Bracket} (runs {runs}) was driven again from run {rerun.FirstRun} on: {rerun.Reason}";

    public static string RepeatabilityTakenFromArchive(TakenArchive archive, string plural, string days) =>
        $"Before run 1 the plan took the repeatability of {archive.Days} earlier day{plural} from its archive: {days}.";

    public static string LimitWasChanged(string name, string words, double value, double defaultValue, string reason) =>
        $"Limit {name} ({words}) was set to {value:0.###} instead of {defaultValue:0.###}: {reason}";

    // Predictions
    public const string HasFeature = "Named as the new spec";
    public const string FewPeopleAreNoTest =
        "A few people on one day are a description, not a test. A right guess from the sound is a finding; from "
        + "something seen it is a leak.";
    public const string FeatureIsNotTheControl =
        "'Named as the new spec': the code that the person took for the new spec; right where it is not the control.";

    public static string PredictedAfterRing(string who, string why) =>
        $"{who} predicted after the ring was uncovered ({why}): their predictions may rest on it.";

    public const string SomebodyWentByWhatWasSeen =
        "Somebody names something seen or overheard as the ground: look at the words whether the blind held.";
    public const string OutcomeKeyNotOpen = "key not open";
    public const string OutcomeNotSure = "not sure: a check of the key failed";

    public static string FeatureIsAnyButControl(int specs) =>
        $"'Named as the new spec': right where it is any of the {specs - 1} specs that are not the control; a blind guess "
        + $"is right in {specs - 1} of {specs}.";

    public static string PredictionsHidden(string stillOpen) => $"Hidden until all are locked; still open: {stillOpen}.";

    public static string WrongItWasControl(string spec) => $"wrong: it was {spec}, the control";

    public static string RightItWasSpec(string spec) => $"right: it was {spec}";

    // Limits of the day, and where it comes from
    public const string AbsoluteLevelsDoNotTravel =
        "Absolute levels do not travel to other cars, meters or days; only the paired differences of the day are compared.";
    public const string MeterAndEarDiffer =
        "dB(A) is one axis, the ear another: a ring or a whine can be plain to the ear and hardly move the meter.";
    public const string WhereThisComesFrom = "Where this comes from";
    public const string HowJournalIsVerified =
        "'fieldsession verify STUDY' checks every line of the journal; with '--head HASH' it proves that the line whose "
        + "hash is on paper is still there, and every line before it.";

    public static string OneSetOfTyresPerSpec(string days) =>
        $"One set of tyres per spec, {days}, one route, one meter position, the inside of this car only: the difference "
        + "between two sets of one spec is not known and does not shrink with more runs.";

    public static string RunsDrivenOfPlanned(Study study) =>
        $"{study.Runs.Count - Aborts.CountIn(study)} runs of {study.Plan?.Order.Count ?? 0} planned were "
        + $"driven{(Aborts.CountIn(study) is > 0 and var aborted ? $", {aborted} more aborted" : "")}.";

    public static string JournalWithHeadHash(Provenance provenance) =>
        $"Journal: {provenance.LineCount} lines, head hash {provenance.HeadHash}.";
}
