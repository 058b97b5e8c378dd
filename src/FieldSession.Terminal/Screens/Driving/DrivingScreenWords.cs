using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What the drive screen and the stop say.</summary>
internal static class DrivingScreenWords
{
    public static string TerminalTooSmall(int leastColumns, int leastRows) => $"needs {leastColumns}x{leastRows}; entry works";

    public static string RunCounts(int spoilt, int missed, Run run) => $"spoilt {spoilt}  missed {missed}  in run {run.Number}";

    public static string RunsRecorded(int recorded, int driven) => $"recordings of {recorded} of {driven} runs";

    public static string LogSays(string[] doubts, string[] traffic) =>
        "meter's log: "
        + $"{(doubts.Length == 0 ? "nothing in doubt" : $"in doubt {string.Join(", ", doubts)}")}"
        + $"{(traffic.Length == 0 ? "" : $"; traffic proposed {string.Join(", ", traffic)}")}";

    public const string EnterTakesIt = "Enter takes it";
    public const string LevelsAreSilent = "no level from the source for 3 s; type the reading";
    public const string LevelsAreWild = "the source does not send a level; type the reading";
    public const string LevelsHaveEnded = "the source of levels has ended; type the reading";
    public const string NumLockIsOff = "that was an arrow key: is NumLock off?";

    public static string StopShutWhileRunOn(Run run) =>
        $"run {run.Number} is on; when it is over, or after ':end', '{Parking.Word}' opens the stop";

    public static string RunDoubted(string doubt) => $"{doubt}; 'u' takes this run back";

    public static string KeyDoesNothing(char typed) => $"'{typed}' does nothing here; words begin with ':', notes with ';'";

    public static string KeyWaitsForEmptyBox(char typed) => $"'{typed}' waits for an empty box: Enter stores, Esc empties";

    public static string KeyBounced(char typed) => $"'{typed}' came again within 0.3 s and counts once";

    public const string EnterBounced = "a second Enter within 0.3 s was left out";
    public const string NotStored = "NOT STORED";
    public const string BackspaceBringsBack = "Backspace brings it back, Esc drops it";
    public const string DraftOffered = "letters became a note: Enter keeps it, Esc drops it";
    public const string WordTakenBack = "the keys were letters of a word; what they did is taken back";
    public const string StoredWithoutEnter = "Enter was missing: stored now, asked at the stop";
    public const string WordsSetAside = "set aside";
    public const string ReadingInNote = "there is a reading after the words";
    public const string ReadingAgainCure = "type the reading alone";
    public const string PutBlankBefore = "type the reading again; or keep the note: ';' in front, a space before the figures";

    public static string LinesWait(int lines) => $"{lines} lines wait for the disk; Enter tries again";

    public const string NothingStoredInRun = "nothing in this run yet";
    public const string MissedPassage = "missed, no reading";
    public const string AfterReadingTypedHighFirst = ", typed high first";

    public const string ComparisonSoFar = "so far, clean";
    public const string CoveredUntilEvening = "covered until the evening";
    public const string ComparedAtStop = "compared at the stop";

    public static string CoveredByKey(KeyTable keys) => $"covered by {keys.KeyThat(KeyDeed.Cover)}";

    public static string RouteOfRun(Run run) => run.IsOn ? $"run {run.Number}, read so far" : $"run {run.Number}, as read";

    public static string WaitsForStop(int doubts, int aborted) =>
        string.Join(
            ", ",
            new[] { doubts == 0 ? null : $"{doubts} to ask at the stop", aborted == 0 ? null : $"{aborted} aborted" }.OfType<string>()
        );

    public const string CoveredUntilRead = "covered until read";

    public const string NoRunDrivenYet = "no run was driven yet";

    public static string RunAsTyped(Run run) =>
        $"Run {run.Number} on {run.Code}{(run.Aborted is { } abort ? $", {AbortedBecause(abort)}" : "")}";

    public static string StopCounts(int asked, int spoilt, int notRead) => $"doubts {asked}  spoilt {spoilt}  not read {notRead}";

    public const string ConfirmedAsTyped = "confirmed as typed";

    public static string FlagWasTakenBack(SpoiltCause cause) => $"flag {cause.Word()} taken back";

    public const string TypedHighFirst = "typed high first";

    public static string CalibratedBefore(string timeOfDay, CalibrationCheck before) =>
        $"meter {timeOfDay}: {before.LevelDb:0.0#} dB on the calibrator before this session";

    public static string HowToConfirm(StopRow row, Reading reading) => $"{row.Place}: y keeps {reading.Levels}, figures correct it; ";

    public static string FiguresCorrect(StopRow row) => $"{row.Place}: figures correct it, letters flag it; ";

    public static string HowToCorrect(StopRow row) =>
        row switch
        {
            { IsOpenDoubt: true, Reading: { } reading } => HowToConfirm(row, reading),
            { Reading: not null } => FiguresCorrect(row),
            _ => FiguresFill(row),
        };

    public static string FiguresFill(StopRow row) => $"{row.Place}: figures fill it in; ";

    public static string TypedLater(string timeOfDay) => $"from paper, {timeOfDay}";

    public const string NotRead = "not read";
    public const string FilledAtStop = "filled in at the stop";

    public static string ShiftAsked(ShiftPreview shift)
    {
        (int from, int to) = (shift.Stretch.From, shift.Stretch.To);
        string segments = from == to ? $"segment {from}," : $"segments {from} to {to}, all";
        string by = Math.Abs(shift.By) == 1 ? "one" : $"{Math.Abs(shift.By)}";
        return $"Run {shift.Run}, {segments} {by} {(shift.By > 0 ? "further on" : "back")}:";
    }

    public const string HowToTakeShift = "Enter takes the shift, > and < move it by one more or less, Esc drops it";

    public static string NoGapToShiftInto(StopRow? row, int by) =>
        row?.Reading is null
            ? "mark a reading to shift; nothing was read here"
            : $"no gap{(Math.Abs(by) == 1 ? "" : $" of {Math.Abs(by)}")} {(by > 0 ? "after" : "before")} segment "
                + $"{row.Segment.Number} to shift into; correct with figures";

    public const string BackspaceBringsLineBack = "Backspace brings the line back";

    public static string EarlierDoubts(int run) => $"Run {run}, still doubtful";

    public static string AbortedBecause(Abort abort) => abort.Cause is { } cause ? $"aborted: {cause}" : "aborted";

    public static string RepeatsPlaceOf(Run aborted) => $"; drives the place of run {aborted.Number} again";

    public const string EscGoesBack = "Esc: back to drive";

    public static string OrderDrivenWithAborted(int aborted) => $"order driven, {aborted} aborted";

    public const string KeyIsOpen = "the key is open";
    public const string OwnOrderDriven = "this car's runs driven";
    public const string MakePlanFirst = "make a plan with 'start' first";
    public const string ReadingsAreFrozen = "readings can't be added or changed any more; notes can: '; your words'";

    public static string WeakPlan(IReadOnlyList<string> doubts) =>
        $"weak in the plan: {doubts[0]}{(doubts.Count > 1 ? $"; {doubts.Count - 1} more in the plan's warnings" : "")}";

    public static string PredictingStillBarred(Objection open, KeyTable keys) =>
        $"the order is driven; {open.Instead}, then {keys.KeyTo(ScreenName.Review)} goes to the blind review";

    public const string BlindReviewIsDue = "the order is driven and the meter checked: go to the blind review, when parked";

    public static string EveningGoesOn(string screen) => $"goes on with the evening: {screen}";

    public static string ChecksNotMade(IReadOnlyList<string> kinds, UnitSystem units) =>
        $"not checked with values yet: {string.Join(", ", kinds)}; such as '{CheckKinds.Of(kinds[0])!.FormIn(units)}'";

    public const string MergeWithOtherLaptop =
        "this car's runs are driven: 'calibration after 94.0', then leave and merge with the other laptop's file";

    public static string EnterStartsRun(Study study) =>
        $"starts run {study.Runs.Count + 1} on "
        + $"{study.CodeAsked}{(Aborts.OfferedAgain(study) is { } aborted ? RepeatsPlaceOf(aborted) : "")} and confirms: "
        + $"{study.Plan!.Protocol}";

    public static string ParkedReadsRunBack(Run run) => $"reads run {run.Number} back: confirm, correct, shift, notes";
}
