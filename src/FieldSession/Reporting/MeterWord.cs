using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>The meter's word on one comparison, by fixed rules from what its verdict rests on (<see cref="Conclusion"/>); the intervals are those at a level of 5 %.</summary>
public enum MeterVerdict
{
    /// <summary>The 95 % interval leaves out 0.</summary>
    Measured,

    /// <summary>The same, and the 90 % interval lies within the margin.</summary>
    MeasuredButSmall,

    /// <summary>The 90 % interval lies within the margin and the 95 % interval holds 0.</summary>
    SameWithin,

    /// <summary>Anything else.</summary>
    NotResolved,
}

/// <summary>Says the meter's word and what it rests on.</summary>
public static class MeterWord
{
    private const double UsualAlpha = 0.05;

    /// <summary>The verdict of a comparison; <see cref="MeterVerdict.NotResolved"/> where the verdict is withheld.</summary>
    public static MeterVerdict Of(ClassComparison? comparison) => comparison?.Conclusion switch
    {
        { ShowsDifference: true, ShowsEquivalence: true } => MeterVerdict.MeasuredButSmall,
        { ShowsDifference: true } => MeterVerdict.Measured,
        { ShowsEquivalence: true } => MeterVerdict.SameWithin,
        _ => MeterVerdict.NotResolved,
    };

    /// <summary>The verdict in words, with what would settle an open one.</summary>
    public static string InWords(ClassComparison? comparison, double marginDb)
    {
        string margin = Figures.MarginDb(marginDb);
        return Of(comparison) switch
        {
            MeterVerdict.Measured => $"MEASURED: {Numbers(comparison)}",
            MeterVerdict.MeasuredButSmall => ReportingWords.MeasuredButSmall(margin, Numbers(comparison)),
            MeterVerdict.SameWithin => ReportingWords.SameWithin(margin, Numbers(comparison)),
            _ when comparison is { Conclusion: null } => $"NOT RESOLVED ({comparison.Verdict}): {Numbers(comparison)}",
            _ => $"NOT RESOLVED: {Numbers(comparison)}{MoreRuns(comparison)}",
        };
    }

    private static string Numbers(ClassComparison? comparison) => comparison?.Overall is { } overall
        ? ReportingWords.DifferenceWithInterval(overall) + (comparison.Conclusion is { Alpha: < UsualAlpha and var alpha } ? ReportingWords.LaterVerdictAsksForMore(alpha) : "")
        : ReportingWords.NothingCouldBeCompared;

    private static string MoreRuns(ClassComparison? comparison) => comparison switch
    {
        null => "",
        { Overall.StandardErrorDb: null } or { MoreRuns: null } => ReportingWords.MoreRunsNotKnown,
        { MoreRuns: { AsSeen: { } seen, Chance: { } chance, Cautious: var cautious } } => ReportingWords.MoreRunsWouldSettle(
            seen, chance, cautious is { } runs ? ReportingWords.RunsWhenCautious(runs) : ReportingWords.MoreThanTenWhenCautious),
        _ => ReportingWords.NotEvenTenMoreRuns,
    };
}
