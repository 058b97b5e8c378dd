using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>What the review screen says.</summary>
internal static class ReviewScreenWords
{
    public const string NothingCanBeComparedYet = "nothing can be compared yet: fewer than two codes are driven";
    public const string CodeRunsReadingsSpoiltLateMissed = "code  runs  readings  spoilt  late  missed";
    public const string ExploredKindsOfSurface = "explored: kinds of surface";
    public const string ExploredSegmentsEachIntervalForItsSegment = "explored: segments, each interval for its segment alone";
    public const string CleanReadingsOnCodeOnReference = "n: clean readings on the code / on the reference. Of many segments some differ by chance alone: they say where, the main measure says whether.";
    public const string AllSegmentsTogether = "all segments together";
    public const string SteadySegments = "the steady segments";
    public const string NoPlanMakeOneWithStart = "no plan; make one with 'start' first";
    public const string RunCodeRead = "run  code  read       ";
    public const string TypedHighFirst = "typed high first";

    public static string RatingsAreCoveredUntilOthersHaveStoredTheirs(EarFindings ear) => $"{ear.Covered} ratings are covered until the others have stored theirs, or 'ratings closed'";

    public static string BlindSummaryByCodeOnlyIsReference(string reference) => $"Blind summary, by code only; {reference} is the reference. Differences are code minus reference in dB: + is louder.";

    public static string JournalLinesHeadNoteItOnPaper(ReviewSight sight, string headHash) => $"journal: {sight.Journal.Lines} lines, head {headHash}; note it on paper, it pins every line before it";

    public static string LeftRightOtherSegmentsEscSummary(string lateFlag) => $"Left Right: other segments; Esc: summary{lateFlag}";

    public static string AndLateFlagFlagWords(int segment) => $"; late flag: 'flag 1.{segment} t words'";

    public static string OfPlannedRunsAreDriven(Study study) => $"{study.Runs.Count} of {study.Plan?.Order.Count ?? 0} planned runs are driven: numbers, but no verdict";

    public static string MeterDriftedDbInSession(Session session) => $"the meter drifted {session.DriftDb:+0.0;-0.0} dB in session {session.Number}: its readings count as spoilt";

    public static string ConfirmOrCorrect(string place, string name, Reading reading) => $"{place} {name}: {reading.Doubt}; 'confirm {place}' or 'correct {place} 58-60'";

    public static string FlaggedLateKeptInCleanResult(int late, string more) => $"{late} {more} flagged late: kept in the clean result";

    public static string RunLouderThanItsRunAndSegment(SuspiciousReading reading) => $"run {reading.Run}, {reading.Segment}: louder than its run and segment let expect; look at its notes, it is no reason by itself to leave it out";
}
