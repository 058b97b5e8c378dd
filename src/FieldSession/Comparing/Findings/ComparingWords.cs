using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>What the comparison says beside its figures.</summary>
internal static class ComparingWords
{
    // Codes, runs and segments that are compared
    public const string FewerThanTwoCodesDriven = "fewer than two codes driven: levels only";
    public const string FewerThanTwoCodesToCompare = "fewer than two codes to compare: levels only";
    public const string NoRunReadOnEnoughSegments = "no run has valid levels on half of these segments";
    public const string NoSegmentReadOnEveryCode = "no segment has a valid level on every code";

    public static string NoRunOnReferenceYet(ComparisonTerms terms) => $"no run on the reference {terms.Reference} yet";

    public static string RunsNotCounted(string runs) => $"not counted, because too few of their segments have a valid level: run {runs}";

    public static string RunsReplaced(string runs) => $"replaced or aborted, so left out of the clean result: run {runs}";

    public static string SegmentsNotCompared(string segments) =>
        $"not compared, because not every code has a valid level there: {segments}";

    // Spoilt readings and what the result hangs on
    public const string SensitivityNotWorkedOut = "what the result hangs on is not worked out for so many readings";

    public static string SpoiltReadingsDifferByCode(CodeReadings most, CodeReadings least) =>
        $"{most.Code} has {most.Spoilt} spoilt readings, {least.Code} has {least.Spoilt}: look at the comparison with spoilt readings too";

    public static string DisplayWanderedUnevenly(CodeReadings[] byWidth) =>
        $"the display wandered over {byWidth[^1].MeanWidthDb:0.0} dB on {byWidth[^1].Code} and "
        + $"{byWidth[0].MeanWidthDb:0.0} dB on {byWidth[0].Code}: a finding in itself; the midpoints of such ranges are not alike";

    public static string DifferenceHangsOnReadingsLeftOut(string quieter) =>
        $"the difference hangs on readings left out of {quieter}, the quieter code: with those alone put back, and none "
        + "of the other code's, it is not shown; traffic only raises levels, so look at those flags first";

    public static string SpoiltReadingsAreUneven(string percentByCode) =>
        $"spoilt readings are uneven: {percentByCode}; if the result hangs on them, it hangs on the flags";

    public static string EveryReadingIsSpoilt(SpecCode code, string segment) =>
        $"every reading of {code} on {segment} is spoilt: the segment is left out of the headline";

    // Brackets
    public const string LookForWhatChanged = "look for what changed";

    public static string VoidDriveAgain(Limits limits, int bracket) =>
        $"more than {limits.Of(FurtherLimits.RepeatVoid):0.0#} dB: void, drive it again with 'rerun bracket {bracket} WHY'";

    public static string ControlRepeatsApart(string bracket, double? repeatDb, double[] limits, string consequence) =>
        $"{bracket}: the control repeats "
        + $"{EnoughDigits.WithSign(repeatDb ?? 0, EnoughDigits.For(1, [repeatDb ?? 0], limits))} dB apart, {consequence}";

    public static string AirChangedInBracket(string bracket, double? airSpreadCelsius, double? levelShiftDb) =>
        $"{bracket}: the air changed by {airSpreadCelsius:0.#} degC, outdoors about {levelShiftDb:0.0} dB";

    public static string LongGapBetweenRuns(string bracket, double gapMinutes) => $"{bracket}: {gapMinutes:0} min between two of its runs";

    public static string RunLargelySpoilt(string bracket, double share, int run, int bracketNumber) =>
        $"{bracket}: {100 * share:0} % of run {run} is spoilt; 'rerun bracket {bracketNumber} WHY' drives it again";

    // One pair of codes
    public const string NotBracketed = "not bracketed: no code was driven twice";
    public const string OneComparisonOfLikeOnly = "only one comparison of like with like: the interval is wide for that reason";
    public const string TodayIsRougherThanArchive = "today is rougher than the archive: the archive's repeatability is not used";
    public const string RunsAgreeBetterThanReadingsAllow =
        "the runs agree more closely than the readings can show: the error is raised to match";
    public const string SideBySideComparedWithinSlot = "runs side by side are compared within their slot";
    public const string StraightDriftIsTakenOut = "a straight drift over the day is taken out";
    public const string NoTimesKnown = "no usable run times: runs count as equally spaced, without a drift per hour";
    public const string OneCodeAfterTheOther = "one code was driven after the other: a drift of the day shows in full as a difference";

    public static string CodeNotToldApart(PairLine pair) =>
        $"code and {pair.ConfoundedWith} cannot be told apart: the difference may be either";

    public static string RepeatabilityFromEarlierDays(Scatter scatter) =>
        $"with repeatability from {scatter.Prior?.Days} earlier days: it holds if today repeats as they did";

    public static string DriftWouldShiftDifference(double shiftDb) =>
        $"a real drift of 1 dB per hour would shift the difference by {shiftDb:0.00} dB";
}
