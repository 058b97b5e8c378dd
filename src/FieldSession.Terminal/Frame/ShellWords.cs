using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>
/// What the frame around all screens says: header, what comes next, what was not written and why, and why it does not open.
/// </summary>
internal static class ShellWords
{
    public const string DriveScreenIs = "readings, flags and notes while the car is driven";
    public const string StopScreenIs = "read back and correct the last run, when parked";
    public const string RateScreenIs = "ratings at a stop, each alone";
    public const string ReviewScreenIs = "the blind summary by code, when parked";
    public const string PredictScreenIs = "each locks a prediction, alone";
    public const string RevealScreenIs = "the custodian opens the key";
    public const string ReportScreenIs = "the report, and its file";
    public const string LegsScreenIs = "the legs of an energy day, typed at a charging stop";
    public const string PlanScreenIs = "question, order, crew and route, before the day";

    public const string NoStudyYet = " no study yet";
    public const string OwnOrderDriven = "this car's runs are driven";

    public static string StoppedBeforeRun(Study study, int planned, SpecCode code) =>
        $"stop, next {RunOfOrder(study.Runs.Count + 1, study.NextTurn(), planned)}  {code}";

    // once a run was aborted, the runs and the places of the order are counted apart
    public static string RunOfOrder(int run, int turn, int planned) =>
        turn + 1 == run ? $"run {run} of {planned}" : $"run {run}, place {turn + 1} of {planned}";

    public static string AllRunsDriven(int planned, int aborted) =>
        aborted == 0 ? $"all {planned} runs driven" : $"order of {planned} driven, {aborted} aborted";

    public const string GoBackToDriving = "back to driving";
    public const string GoToBlindReview = "the blind review";
    public const string LockThePredictions = "lock the predictions, each alone";
    public const string OpenTheKey = "all predictions are locked, open the key";

    public static string CarIsParked(string screen) => $"the car is parked; this is the {screen} screen";

    // what to do about it comes with the reason: the disk knows best
    public static string NotWritten(Outcome outcome) => outcome.Objection?.ToString() ?? $"not saved: {outcome.NotSavedBecause}";

    public const string NoTerminal = "there is no terminal; run this in one, or use 'enter', which reads lines from standard input";
    public const string TerminalPlacesNoCursor =
        "this terminal can't place the cursor (TERM=dumb); use 'enter', which reads lines from standard input";

    public static string FaultInProgram(Exception fault) => $" fault in the program, what was stored is safe: {fault.Message}";

    private const string HabitForms =
        "write 'decimal = comma' or 'decimal = point', 'clock = 12' or 'clock = 24', 'letters = block' or 'letters = plain'";

    public static string NoHabit(int line, string typed) => $"line {line}: '{typed}' is not a habit; {HabitForms}";
}
