using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What the drive screen and the stop say.</summary>
internal static class DrivingScreenWords
{
    public const string SoFarClean = "so far, clean";
    public const string ThatWasArrowKey = "that was an arrow key: is NumLock off?";
    public const string CoveredUntilEvening = "covered until the evening";
    public const string ComparedAtStop = "compared at the stop";
    public const string CoveredUntilRead = "covered until read";
    public const string NoRunWasDrivenYet = "no run was driven yet";
    public const string ConfirmedAsTyped = "confirmed as typed";
    public const string TypedHighFirst = "typed high first";
    public const string CarIsParked = "the car is parked; this is the stop";
    public const string FiguresCorrectIt = "figures correct it; ";
    public const string EscBackToDrive = "Esc: back to drive";
    public const string NothingInThisRunYet = "nothing in this run yet";
    public const string MissedNoReading = "missed, no reading";
    public const string AndTypedHighFirst = ", typed high first";
    public const string KeyIsOpen = "the key is open";
    public const string ThisCarsRunsDriven = "this car's runs driven";
    public const string MakePlanWithStartFirst = "make a plan with 'start' first";
    public const string ReadingsCantBeAddedOrChangedAnyMoreNotes = "readings can't be added or changed any more; notes can: '; your words'";
    public const string OrderIsDrivenAndMeterChecked = "the order is driven and the meter checked: go to the blind review, when parked";
    public const string NoWeatherIsNotedYet = "no weather is noted yet: weather air=6.1 road=5 wind=2.5 gust=4 surface=dry";
    public const string ThisCarsRunsAreDriven = "this car's runs are driven: 'calibration after 94.0', then leave and merge with the other laptop's file";

    public static string NeedsEntryWorks(int leastColumns, int leastRows) => $"needs {leastColumns}x{leastRows}; entry works";

    public static string SpoiltMissedInRun(int spoilt, int missed, Run run) => $"spoilt {spoilt}  missed {missed}  in run {run.Number}";

    public static string RunIsOnWhen(Run run) => $"run {run.Number} is on; when it is over, or after ':end', '{Parking.Word}' opens the stop";

    public static string NotSavedMakeRoomThenEnter(Outcome outcome) => $"not saved: {outcome.NotSavedBecause}; make room, then Enter tries again";

    public static string ToAskSpoiltMissed(int asked, int spoilt, Run run) => $"to ask {asked}  spoilt {spoilt}  missed {run.Passages.OfType<Missed>().Count()}";

    public static string RunOnAsTyped(Run run) => $"Run {run.Number} on {run.Code}, as typed";

    public static string MeterDbOnCalibratorBeforeThisSession(string clock, CalibrationCheck before) => $"meter {clock}: {before.LevelDb:0.0#} dB on the calibrator before this session";

    public static string StillToAskInOtherRuns(string[] elsewhere) => $"still to ask in other runs: {string.Join(", ", elsewhere)}; type 'confirm {elsewhere[0]}' or 'correct {elsewhere[0]} 58-60'";

    public static string StandsFiguresCorrectIt(Reading reading) => $"y: {reading.Levels} stands, figures correct it; ";

    public static string DoesNothingHere(char typed) => $"'{typed}' does nothing here; words begin with ':', notes with ';'";

    public static string WaitsForEmptyBox(char typed) => $"'{typed}' waits for an empty box: Enter stores, Esc empties";

    public static string AndMoreStandInPlansWarnings(string[] doubts) => $"; {doubts.Length - 1} more stand in the plan's warnings";

    public static string WeakInPlan(string[] doubts, string more) => $"weak in the plan: {doubts[0]}{more}";

    public static string OrderIsDriven(Objection open, KeyTable keys) => $"the order is driven; {open.Instead}, then {keys.KeyTo(KeyTable.Review)} goes to the blind review";

    public static string GoesOnWithEvening(string screen) => $"goes on with the evening: {screen}";

    public static string NotCheckedWithValuesYet(string[] unmade) => $"not checked with values yet: {string.Join(", ", unmade)}; such as '{CheckKinds.Of(unmade[0])!.Form}'";

    public static string StartsRunOnAndConfirms(Study study) => $"starts run {study.Runs.Count + 1} on {study.CodeAsked} and confirms: {study.Plan!.Protocol}";

    public static string ReadsRunBack(Run run) => $"reads run {run.Number} back: confirm, correct, shift, notes";

    public static string AndMoreWhenIsTyped(int doubtfulCount) => $"; {doubtfulCount} more when '{Parking.Word}' is typed";
}
