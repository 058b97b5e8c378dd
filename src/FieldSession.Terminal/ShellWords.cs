using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>What the frame around all screens says, keys and what comes next among it.</summary>
internal static class ShellWords
{
    public const string ReadingsFlagsAndNotesWhileCar = "readings, flags and notes while the car is driven";
    public const string RatingsAtStop = "ratings at a stop, each alone";
    public const string BlindSummaryByCode = "the blind summary by code, when parked";
    public const string EachLocksPrediction = "each locks a prediction, alone";
    public const string CustodianOpensKey = "the custodian opens the key";
    public const string ReportAndItsFile = "the report, and its file";
    public const string LegsOfEnergyDay = "the legs of an energy day, typed at a charging stop";
    public const string QuestionOrderCrewAndRouteBefore = "question, order, crew and route, before the day";
    public const string LastRunReadBackAndMended = "the last run read back and mended, when parked";
    public const string WriteDecimalCommaOrDecimalPoint = "write 'decimal = comma' or 'decimal = point', 'clock = 12' or 'clock = 24'";
    public const string NoStudyYet = " no study yet";
    public const string ThisCarsRunsAreDriven = "this car's runs are driven";
    public const string TypeEndOnDriveFirst = "type 'end' on drive first";
    public const string FlagGoesToReadingInBox = "A flag goes to the reading in the box, or else to the last one.";
    public const string YourOwnKeysFileBelow = "\n## Your own keys\n\n" + "The file `fieldsession/keys` below XDG_CONFIG_HOME (or `.config` in the home folder) changes keys, a row a line: the screen, the first key\n" + "of the row as it stands below, `=`, and every key that shall do it; `everywhere` for the rows of every screen, `#` for a remark.\n\n" + "```\ndrive t = g +\nstop y = b\neverywhere F12 = Ctrl+R Alt+L\n```\n\n" + "A line that is wrong, or a key that would mean two things on a screen, is refused with file, line and what to do, and the program does\n" + "not start with half of the keys. Enter, Esc, Tab, `;` and `:` stay as they are, and figures are for readings.\n";
    public const string PgdnPagesAnyOtherKeyCloses = "PgDn pages, any other key closes ";
    public const string KeysPrintedFromKeyTableOfProgram = "# Keys\n\nPrinted from the key table of the program; on any screen `?` shows the keys that work there now,\n" + "and why one does not. The numeric keypad alone is enough to drive: figures, `-` and `.` for readings, `+` traffic,\n" + "`*` missed, `/` undo, Enter. ";
    public const string OnEveryScreen = "On every screen";
    public const string AllPredictionsAreLocked = "all predictions are locked, open the key";
    public const string LockPredictionsEachAlone = "lock the predictions, each alone";
    public const string BlindReview = "the blind review";
    public const string BackToDriving = "back to driving";
    public const string WhereNotSaidOtherwise = " where not said otherwise";
    public const string LastActIsNoNote = "the last act is no note";
    public const string TypeNoteFirst = "type the note first, ';3' or '; words', then the key";
    public const string OtherActsCameAfterReading = "other acts came after the reading";
    public const string ThereIsNoTerminal = "there is no terminal; run this in one, or use 'enter', which reads lines from standard input";
    public const string ThisTerminalCantPlaceCursor = "this terminal can't place the cursor (TERM=dumb); use 'enter', which reads lines from standard input";

    public static string IsNotInCrew(string stranger, string crew) => $"'{stranger}' is not in the crew; the crew is {crew}";

    public static string WrittenToStartStudyMakesStudy(string folder) => $"written to {folder}; 'start {folder} STUDY' makes the study";

    public static string WrittenToToMendBeforeItCanBeDriven(string folder, int problems) => $"written to {folder}; {problems} to mend before it can be driven";

    public static string LineIsNoHabit(int i, IReadOnlyList<string> lines, string form) => $"line {i + 1}: '{lines[i].Trim()}' is no habit; {form}";

    public static string StopNextRunOf(Study study, int planned, SpecCode code) => $"stop, next run {study.Runs.Count + 1} of {planned}  {code}";

    public static string AllRunsDriven(int planned) => $"all {planned} runs driven";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string KeyDoesWrites(string more) => $"\n## {more}\n\n| key | does | writes |\n|---|---|---|\n";

    public static string ForAnotherDayTypeAmendOrderBecauseWhy(Study study, string orderOf) => $"for another day type 'amend order={string.Join(' ', study.Plan!.Order)} {orderOf} because WHY', then 'calibration before'";

    public static string AssumedNotRunsRepeatWithinDb(string more, double assumedRunSdDb, double assumedReadingSdDb) => $"Assumed, not measured{more}: " + $"runs repeat within {assumedRunSdDb} dB and readings within {assumedReadingSdDb} dB (standard deviations). ";

    public static string ChanceMinFromRunToRun(TurnRound between) => $"Chance 80 %; {between.TurnRoundMinutes:0.#} min from run to run, {between.RefitMinutes:0.#} min where tyres are changed. ";

    public static string SegmentsLastRun(Plan plan) => $"The segments last {OrderTime.RunSeconds(plan.Route):0} s a run; the roads between them are in the turn-round.";

    public static string MinFromRunToRun(TurnRound between) => $"{between.TurnRoundMinutes:0.#} min from run to run, {between.RefitMinutes:0.#} where tyres are changed";

    public static string KnownFromEarlier(KnownRepeatability known, string more, string minutes) => $"Known from {known.Days} earlier day{more}: runs repeat within {Figures.FineDb(known.RunMeanSdDb)} dB. Assumed: {minutes}";

    public static string AssumedRunsRepeatWithinDb(string minutes, double assumedRunSdDb) => $"Assumed: {minutes}; runs repeat within {assumedRunSdDb} dB";

    public static string KnownFromEarlierRun(KnownRepeatability known, string more, string nameOf) => $"Known from {known.Days} earlier day{more}: run means on {nameOf} repeat within {Figures.FineDb(known.RunMeanSdDb)} dB.";

    public static string AndEmptyChangedLimitHasItsReason(Limit limit, string range, string plain) => $"{limit.Name}: {range}; empty: {plain}. A changed limit has its reason beside it, and both stand in the report";

    public static string FaultInProgram(Exception fault) => $" fault in the program, what was stored is safe: {fault.Message}";
}
