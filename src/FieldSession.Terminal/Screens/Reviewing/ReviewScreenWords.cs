using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>What the review screen says.</summary>
internal static class ReviewScreenWords
{
    public const string NothingToCompare = "nothing can be compared yet: fewer than two codes are driven";
    public const string CountsHead = "code  runs  readings  spoilt  late  missed";
    public const string KindsOfSurfaceHead = "explored: kinds of surface";
    public const string SegmentsHead = "explored: segments, each interval for its segment alone";
    public const string HowToReadSegments =
        "n: clean readings on the code / on the reference. Of many segments some differ by chance alone: they say where, "
        + "the main measure says whether.";
    public const string AllSegmentsTogether = "all segments together";
    public const string SteadySegments = "the steady segments";
    public const string MakePlanFirst = "no plan; make one with 'start' first";
    public const string SegmentRunsHead = "run  code  read       ";
    public const string TypedHighFirst = "typed high first";

    public static string RatingsCovered(int ratings) =>
        $"{ratings} ratings are covered until the others have stored theirs, or 'ratings closed'";

    public static string WarningsBelow(int count) =>
        $"LOOK OUT: {count} warning{(count == 1 ? "" : "s")} below this answer; PgDn shows {(count == 1 ? "it" : "them")}.";

    public static string HowToReadSummary(string reference) =>
        $"Blind summary, by code only; {reference} is the reference. Differences are code minus reference in dB: + is louder.";

    public static string JournalHead(int lines, string hashBegins) =>
        $"journal: {lines} lines, head {hashBegins}; note it on paper, it pins every line before it";

    public static string SegmentKeys(string lateFlagForm) => $"Left Right: other segments; Esc: summary{lateFlagForm}";

    public static string LateFlagForm(int segment) => $"; late flag: 'flag 1.{segment} t words'";

    public const string TypedLater = "typed later from paper";
    public const string FilledAtStop = "filled in at the stop";

    public static string RunsMissing(Study study) =>
        $"{study.Runs.Count - Aborts.CountIn(study)} of {study.Plan?.Order.Count ?? 0} planned runs are driven: numbers, but no verdict";

    public static string AndReplaced(int readings) => readings == 0 ? "" : $", {readings} of runs that were driven again";

    public static string MeterDrifted(Session session) =>
        $"the meter drifted {session.DriftDb:+0.0;-0.0} dB in session {session.Number}: its readings count as spoilt";

    public static string ReadingToAsk(string place, string segment, Reading reading) =>
        $"{place} {segment}: {reading.Doubt}; 'confirm {place}' or 'correct {place} 58-60'";

    public static string FlaggedLate(int readings) =>
        $"{readings} {(readings == 1 ? "reading was" : "readings were")} flagged late: kept in the clean result";

    public static string SuspiciousReading(SuspiciousReading reading) =>
        $"run {reading.Run}, {reading.Segment}: louder than expected here; look at its notes, but that alone is no reason to leave it out";
}
