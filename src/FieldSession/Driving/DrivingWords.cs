using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>What driving says: runs, readings, notes, corrections, and why one can't be.</summary>
internal static class DrivingWords
{
    public const string Undo = "undo";
    public const string LettersTakenBack = "keys of a word taken back";
    public const string FiguresAreNoNote = "figures alone are not a note";
    public const string ReadingWithoutSign = "type the reading without ';'";
    public const string EnterWasMissing = "Enter was missing; it was stored when the next figures came";
    public const string TwoFiguresOfPeak = "two figures, where other peaks have three";
    public const string RangeInTenths = "in tenths, where the run's other ranges are whole";
    public const string ReadingCure = "5860, 58-60 or 714";
    public const string CauseCure = "t w s r n e";
    public const string FirstDriveCounts = "the first counts";
    public const string LaptopsShareNextRuns = "several laptops write into the study, so the next runs are not one laptop's";
    public const string DriveRunsAgainByHand = "drive the runs again by hand ('run CODE') and say why in a note: both drives count";
    public const string RerunForm = "type 'rerun bracket 2 WHY'";
    public const string NoBracketIsDrivenYet = "no bracket from control to control has been driven yet";
    public const string DriveBracketAgainByHand = "drive it again by hand: 'run CODE'";
    public const string BracketIsBeingRerun = "a bracket is being driven again";
    public const string FinishRerunFirst = "drive it to its end first";
    public const string SegmentIsChosenByNumber = "a segment is chosen by its number";
    public const string ThereIsNothingToTakeBack = "there is nothing to take back";
    public const string NoteBeforeSpeaker = "type the note first, then 'd' or 'c'";
    public const string NoteNamesRunAndSegment = "a note on another segment names run and segment";
    public const string PlacedNoteForm = "type 'note 2.5 your words', or '; your words' for the last segment";
    public const string NoteIsEmpty = "the note is empty";
    public const string NoteOrPhraseForm = "type '; your words', or ';3' for the plan's third phrase";
    public const string NameDoubtfulReading = "name run and segment of one marked '?', such as 'confirm 2.5'";
    public const string NameReadingToCorrect = "name run and segment, such as 'correct 2.5 58-60'";
    public const string RangeOnImpactSegment = "a range; this segment needs one peak";
    public const string OneValueOnSteadySegment = "one value; this segment needs low and high";
    public const string TypedHighFirst = ", typed high first and swapped";
    public const string ReadingForm = "type 5860 for a range or 714 for a peak; add t w s r n or e where spoilt";
    public const string OnlyWholeBracketIsRerun = "only a whole bracket is driven again, and for a reason";
    public const string ShiftForm =
        "type 'shift 2.5 +1': from segment 5 of run 2 to the next gap, one further on; 'shift 2.5-7 +1' names the last";
    public const string ShiftByChangesNothing = "a shift by 0 changes nothing";
    public const string ShiftTowardsGap = "a stretch moves only into a gap: end it there, or use 'correct 2.5 58-60'";
    public const string ShiftShorterStretch =
        "name the last segment of the stretch: 'shift 2.5-7 +1'; correct single readings with 'correct 2.5 58-60'";
    public const string NothingToCorrect = "nothing is to be changed; go on";
    public const string FillForm = "type 'fill 2.5 58-60' for run 2, segment 5";
    public const string FillNamesRunAndSegment = "a reading is filled in by run and segment, then the figures";
    public const string DriveItsPlaceFirst = "drive its place again, or go on with the next code, then rerun the bracket";
    public const string NoCauseIsAsked = "a cause is asked only where a run ended early";
    public const string OrderIsDrivenToEnd = "the order of the plan is driven to its end";
    public const string EndRunThenStartNext = "type 'end' to end it, then start the next";

    public static string RunForm(ExampleNames own) =>
        $"type 'run {own.Other}', 'run {own.Other} driver={own.Driver}' or 'run {own.Other} car={own.Car}'";

    public const string RunIsStartedOnCode = "a run is started on a three-digit code";
    public const string FixAtNextStop = "fix it at the next stop, or type 'u' to take the last act back";
    public const string DriveRunFirst = "drive a run first";
    public const string ThereIsNoNoteYet = "there is no note yet";
    public const string WriteNoteFirst = "type the note first: '; your words'";
    public const string ConfirmNamesRunAndSegment = "a reading is confirmed by run and segment";
    public const string ConfirmForm = "type 'confirm 2.5' for run 2, segment 5";
    public const string CorrectionForm = "type 'correct 2.5 58-60' for run 2, segment 5";
    public const string CorrectionNamesRunAndSegment = "a correction names run and segment, then the reading";
    public const string CorrectionIsNoReadingAlone = "a correction is a reading alone";
    public const string ShiftNamesRunAndSegment = "a shift names run and segment, then how far";

    public static string LineIsNotLastAct(int line) => $"line {line} is not the last act that can be taken back";

    public static string SharedBracketIsDrivenAgain(int bracket, string reason) =>
        $"bracket {bracket} is driven again: {reason}; other laptops drove meanwhile, so both drives count";

    public static string BracketIsDrivenAgain(int bracket, string runs, Rerun rerun, string reason, string whichCounts) =>
        $"bracket {bracket} (runs {runs}) is driven again as runs {rerun.FirstRun} to {rerun.LastRun}: {reason}; both are "
        + $"kept, {whichCounts}";

    public static string ThereIsNoBracket(int bracket, int driven) => $"there is no bracket {bracket}; driven are 1 to {driven}";

    public static string BracketIsBeyondOrder(int bracket) => $"bracket {bracket} is beyond the order of the plan";

    public static string LineIsNoNote(int line) => $"line {line} is not a note";

    public static string PlanHasNoPhrase(int number) => $"the plan has no phrase {number}";

    public static string PhrasesOfPlanAre(int count) => $"its phrases are 1 to {count}, or type '; your words'";

    public static string RunIsOver(Study after) => $"; run {after.LastRun?.Number} is over";

    public static string ThereIsNoDoubtfulReading(ReadingPlace place) => $"there is no doubtful reading {place}";

    public static string ThereIsNoReading(ReadingPlace place) => $"there is no reading {place}";

    public static string FillOrNameReading(ReadingPlace place) => $"fill it in with 'fill {place} 58-60', or name one that was read";

    public static string ReadingIsThatAlready(ReadingPlace place, LevelRange levels) => $"{place} is {levels} dB already";

    public static string ConfirmDoubtful(ReadingPlace place) => $"type 'confirm {place}' where it is right";

    public static string SegmentHasReading(ReadingPlace place, Reading reading) => $"{place} was read: {reading.Levels} dB";

    public static string CorrectItInstead(ReadingPlace place) => $"type 'correct {place} 58-60' to put it right";

    public static string ReadingFilledIn(LevelRange levels, string place, string spoilt, bool isLeftOut) =>
        $"{levels} dB filled in at the stop: {place}{spoilt}{(isLeftOut ? "; left out of the clean result, as the plan says" : "")}";

    public static string RunsAreTo(int last) => last == 1 ? "there is run 1" : $"the runs are 1 to {last}";

    public static string RunEndedEarly(Run run, int left) =>
        $"run {run.Number} ended{(left > 0 ? $" with {left} segments not driven" : "")}";

    public static string RunAborted(Run run, int left, int segments) =>
        $"run {run.Number} aborted after {segments - left} of {segments} "
        + $"segments{(run.Aborted!.Cause is { } cause ? $": {cause}" : "; say why: 'end puncture'")}";

    public static string PlaceIsOfferedAgain(Run? aborted) => aborted is null ? "" : $"; its place is offered again: 'run {aborted.Code}'";

    public static string RepeatsAbortedRun(Run aborted) => $", again for run {aborted.Number}";

    public static string AbortedRunIsLeft(Run aborted) => $"; run {aborted.Number} stays aborted";

    public static string RunIsAborted(Run aborted) => $"run {aborted.Number} was aborted and its place is offered again";

    public static string RunWasNotAborted(int run) => $"run {run} was not aborted";

    public static string AbortCauseIsThatAlready(int run) => $"that is the cause of run {run} already";

    public static string RunWasAbortedBecause(int run, string cause) => $"run {run} was aborted: {cause}";

    public static string NoteIsTheirsAlready(string who) => $"the note is {who}'s already";

    public static string ReadingCorrected(LevelRange? before, LevelRange levels, string place) =>
        $"corrected from {before} to {levels} dB: {place}";

    public static string SegmentWasPassedAlready(Segment segment) =>
        $"segment {segment.Number} was passed in this run already; both count unless one is flagged or undone";

    public static string TypedHighFirstAndWide(LevelRange levels) => $"typed high first and {levels.WidthDb:0.#} dB wide";

    public static string RangeIsWide(LevelRange levels) => $"{levels.WidthDb:0.#} dB wide: traffic?";

    public static string LevelIsOutsideLimits(LevelRange levels, Limits limits) =>
        $"{levels} dB is outside {limits.LevelLowestDb:0.#}..{limits.LevelHighestDb:0.#} dB";

    public static string LevelIsFarFromNominal(Limits limits, double nominalDb) =>
        $"over {limits.NominalDistanceDb:0.#} dB off the plan's {nominalDb:0.#}";

    public static string IsNoCauseOfSpoiling(string typed) => $"'{typed}' does not say what spoilt the reading";

    public static string IsNoReading(string typed) => $"'{typed}' is not a reading";

    public static string RunShifted(int run, int by, int fromSegment, int? toSegment, string places) =>
        toSegment switch
        {
            { } last when last == fromSegment => $"run {run}, segment {last} shifted by {by:+0;-0}: now {places}",
            { } last => $"run {run}, segments {fromSegment} to {last} shifted by {by:+0;-0}: now {places}",
            _ => $"run {run} shifted by {by:+0;-0} from segment {fromSegment} on: now {places}",
        };

    public static string ThereIsNoRun(int run) => $"there is no run {run}";

    public static string RunHasNothingFromSegment(int run, int fromSegment) => $"run {run} has nothing from segment {fromSegment} on";

    public static string SegmentIsBeyondRoute(int segment, int last) => $"segment {segment} is not on the route of 1 to {last}";

    public static string SegmentHasEntryAlready(int segment) => $"segment {segment} has an entry already";

    public static string OrderAsksForNow(SpecCode asked) => $"the order asks for {asked} now";

    public static string OtherRunIsStillOn(Run run) => $"run {run.Number} on {run.Code} is still on";

    public static string CodesAndCodeAsked(string codes, SpecCode? asked) =>
        $"{JournalWords.CodesAre(codes)}{(asked is { } code ? $"; {OrderAsksForNow(code)}" : "")}";

    public static string IsNoCarOfPlan(string car) => $"'{car}' is not a car of the plan";

    public static string CarsAre(string cars) => $"the cars are {cars}";

    public static string IsNeitherDriverNorCar(string word) => $"'{word}' says neither who drives nor which car";

    public static string SegmentIsNextAlready(int segment) => $"segment {segment} is the next one already";

    public const string TypeItsReading = "type its reading";

    public static string NextReadingIs(Segment? segment) => $"the next reading is {segment?.Number} {segment?.Name}";
}
