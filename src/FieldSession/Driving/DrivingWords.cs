using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>What driving says: runs, readings, notes, corrections, and why one can't be.</summary>
internal static class DrivingWords
{
    public const string FirstCounts = "the first counts";
    public const string SeveralLaptopsWriteIntoStudy = "several laptops write into the study, so the next runs are not one laptop's";
    public const string DriveRunsAgainByHand = "drive the runs again by hand ('run CODE') and say why in a note: both drives count";
    public const string TypeRerunBracketWhy = "type 'rerun bracket 2 WHY'";
    public const string NoBracketFromControlToControlHasBeen = "no bracket from control to control has been driven yet";
    public const string DriveItAgainByHand = "drive it again by hand: 'run CODE'";
    public const string BracketIsBeingDrivenAgain = "a bracket is being driven again";
    public const string DriveItToItsEndFirst = "drive it to its end first";
    public const string SegmentIsChosenByItsNumber = "a segment is chosen by its number";
    public const string ThereIsNothingToTakeBack = "there is nothing to take back";
    public const string TypeNoteFirst = "type the note first, then 'd' or 'c'";
    public const string UseNewerProgram = "use a newer program";
    public const string StudyHasNoPlan = "the study has no plan";
    public const string MakeItWithStartFirst = "make it with 'start' first";
    public const string NoteIsEmpty = "the note is empty";
    public const string TypeYourWordsOrForPlans = "type '; your words', or ';3' for the plan's third phrase";
    public const string TypeYourWords = "type '; your words'";
    public const string NameRunAndSegmentOfOneMarked = "name run and segment of one marked '?', such as 'confirm 2.5'";
    public const string NameRunAndSegment = "name run and segment, such as 'correct 2.5 58-60'";
    public const string RangeOnImpactSegment = "a range on an impact segment, where one peak is read";
    public const string OneValueOnSteadySegment = "one value on a steady segment, where a range is read";
    public const string AndTypedHighFirstAndSwapped = ", typed high first and swapped";
    public const string TypeOrForRange = "type 5860 or 58-60 for a range, 714 or 71.4 for a peak, then t w s r n or e where it is spoilt";
    public const string OnlyWholeBracketIsDrivenAgain = "only a whole bracket is driven again, and for a reason";
    public const string TypeShiftFromSegmentOfRun = "type 'shift 2.5 +1': from segment 5 of run 2, all one further on";
    public const string ShiftByChangesNothing = "a shift by 0 changes nothing";
    public const string FlagOrUndoItFirst = "flag or undo it first, or shift from another segment";
    public const string OrderOfPlanIsDrivenToItsEnd = "the order of the plan is driven to its end";
    public const string TypeEndToEndItThenStart = "type 'end' to end it, then start the next";
    public const string TypeRunRunDriverRoOrRun = "type 'run 417', 'run 417 driver=Ro' or 'run 417 car=NAME'";
    public const string RunIsStartedOnCode = "a run is started on a three-digit code";
    public const string MendItAtNextStop = "mend it at the next stop, or type 'u' to take the last act back";
    public const string NothingHasBeenDriven = "nothing has been driven";
    public const string DriveRunFirst = "drive a run first";
    public const string ThereIsNoNoteYet = "there is no note yet";
    public const string TypeNoteFirstYour = "type the note first: '; your words'";
    public const string ReadingIsConfirmedByRunAndSegment = "a reading is confirmed by run and segment";
    public const string TypeConfirmForRun = "type 'confirm 2.5' for run 2, segment 5";
    public const string TypeCorrectForRun = "type 'correct 2.5 58-60' for run 2, segment 5";
    public const string CorrectionNamesRunAndSegment = "a correction names run and segment, then the reading";
    public const string CorrectionIsNoReadingAlone = "the correction is no reading alone";
    public const string ShiftNamesRunAndSegment = "a shift names run and segment, then how far";

    public static string LineIsNotLastActThatCanBeTaken(int line) => $"line {line} is not the last act that can be taken back";

    public static string BracketIsDrivenAgain(int bracket, string reason) => $"bracket {bracket} is driven again: {reason}; other laptops drove meanwhile, so both drives count";

    public static string BracketRunsIsDrivenAgainAsRuns(int bracket, string runs, Rerun rerun, string reason, string words) => $"bracket {bracket} (runs {runs}) is driven again as runs {rerun.FirstRun} to {rerun.LastRun}: {reason}; both are kept, {words}";

    public static string ThereIsNoBracket(int bracket, IReadOnlyList<Bracket> brackets) => $"there is no bracket {bracket}; driven are 1 to {brackets.Count}";

    public static string BracketIsBeyondOrderOfPlan(int bracket) => $"bracket {bracket} is beyond the order of the plan";

    public static string LineIsNoNote(int line) => $"line {line} is no note";

    public static string PlanHasNoPhrase(int number) => $"the plan has no phrase {number}";

    public static string ItsPhrasesAreToOrType(int known) => $"its phrases are 1 to {known}, or type '; your words'";

    public static string AndRunIsOver(Study after) => $"; run {after.LastRun?.Number} is over";

    public static string ThereIsNoDoubtfulReading(int run, int segment) => $"there is no doubtful reading {run}.{segment}";

    public static string ThereIsNoReading(int run, int segment) => $"there is no reading {run}.{segment}";

    public static string CorrectedFromToDb(LevelRange? readingAt, LevelRange levels, string inWords) => $"corrected from {readingAt} to {levels} dB: {inWords}";

    public static string SegmentWasPassedInThisRunAlready(Segment segment) => $"segment {segment.Number} was passed in this run already; both count unless one is flagged or undone";

    public static string RangeIsDbWide(LevelRange levels) => $"the range is {levels.WidthDb:0.#} dB wide, probably traffic";

    public static string DbIsOutsideDb(LevelRange levels, Limits limits) => $"{levels} dB is outside {limits.LevelLowestDb:0.#}..{limits.LevelHighestDb:0.#} dB";

    public static string DbIsMoreThanDbFromPlansDb(LevelRange levels, Limits limits, double nominal) => $"{levels} dB is more than {limits.NominalDistanceDb:0.#} dB from the plan's {nominal:0.#} dB";

    public static string DoesNotSayWhatSpoiltReading(string rest) => $"'{rest}' does not say what spoilt the reading";

    public static string IsNoReading(string numbers) => $"'{numbers}' is no reading";

    public static string RunShiftedByFromSegmentOnNow(int run, int by, int fromSegment, string places) => $"run {run} shifted by {by:+0;-0} from segment {fromSegment} on: now {places}";

    public static string ThereIsNoRun(int run) => $"there is no run {run}";

    public static string RunHasNothingFromSegmentOn(int run, int fromSegment) => $"run {run} has nothing from segment {fromSegment} on";

    public static string SegmentIsNotOnRouteOfTo(int outside, int last) => $"segment {outside} is not on the route of 1 to {last}";

    public static string SegmentHasEntryAlready(int occupied) => $"segment {occupied} has an entry already";

    public static string OrderAsksForNow(SpecCode asked) => $"the order asks for {asked} now";

    public static string RunOnIsStillOn(Run on) => $"run {on.Number} on {on.Code} is still on";

    public static string IsNoCodeOfThisStudy(SpecCode code) => $"{code} is no code of this study";

    public static string AndOrderAsksForNow(SpecCode asked) => $"; the order asks for {asked} now";

    public static string CodesAre(string codes, string more) => $"the codes are {codes}{more}";

    public static string IsNotInCrew(string driver) => $"'{driver}' is not in the crew";

    public static string CrewIs(string crew) => $"the crew is {crew}";

    public static string IsNoCarOfPlan(string car) => $"'{car}' is no car of the plan";

    public static string CarsAre(string cars) => $"the cars are {cars}";

    public static string SaysNeitherWhoDrivesNorWhichCar(string word) => $"'{word}' says neither who drives nor which car";

    public static string ThereIsNoSegment(int segment) => $"there is no segment {segment}";

    public static string RouteHasSegmentsTo(Study study) => $"the route has segments 1 to {study.Plan!.Route.Count}";

    public static string NextReadingIs(Study after) => $"the next reading is {after.NextSegment?.Number} {after.NextSegment?.Name}";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";
}
