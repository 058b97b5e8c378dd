using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>
/// The meter's word on one comparison, by fixed rules from what its verdict rests on (<see cref="Conclusion"/>); the intervals are those at
/// a level of 5 %.
/// </summary>
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
    public static MeterVerdict Of(ClassComparison? comparison) =>
        comparison?.Conclusion switch
        {
            { ShowsDifference: true, ShowsEquivalence: true } => MeterVerdict.MeasuredButSmall,
            { ShowsDifference: true } => MeterVerdict.Measured,
            { ShowsEquivalence: true } => MeterVerdict.SameWithin,
            _ => MeterVerdict.NotResolved,
        };

    /// <summary>The word alone: "SAME WITHIN 1 dB".</summary>
    public static string Word(MeterVerdict verdict, double marginDb) =>
        verdict switch
        {
            MeterVerdict.Measured => "MEASURED",
            MeterVerdict.MeasuredButSmall => VerdictReportWords.MeasuredButSmallWord,
            MeterVerdict.SameWithin => VerdictReportWords.SameWithinWord(Figures.MarginDb(marginDb)),
            _ => "NOT RESOLVED",
        };

    /// <summary>What the word rests on: the difference with its interval.</summary>
    public static string Reason(ClassComparison? comparison) =>
        (comparison is { Conclusion: null } ? $"{comparison.Verdict}; " : "") + Numbers(comparison);

    /// <summary>The verdict in words, with what would settle an open one.</summary>
    public static string InWords(ClassComparison? comparison, double marginDb)
    {
        string margin = Figures.MarginDb(marginDb);
        return Of(comparison) switch
        {
            MeterVerdict.Measured => $"MEASURED: {Numbers(comparison)}",
            MeterVerdict.MeasuredButSmall => VerdictReportWords.MeasuredButSmall(margin, Numbers(comparison)),
            MeterVerdict.SameWithin => VerdictReportWords.SameWithin(margin, Numbers(comparison)),
            _ when comparison is { Conclusion: null } => $"NOT RESOLVED ({comparison.Verdict}): {Numbers(comparison)}",
            _ => $"NOT RESOLVED: {Numbers(comparison)}{MoreRuns(comparison)}",
        };
    }

    private static string Numbers(ClassComparison? comparison) =>
        comparison?.Overall is { } overall
            ? VerdictReportWords.DifferenceWithInterval(overall, comparison.IsUnfinished) + AtItsLevel(comparison)
            : VerdictReportWords.NothingCouldBeCompared;

    private static string AtItsLevel(ClassComparison comparison) =>
        IntervalOfWord(comparison) is { } interval
            ? VerdictReportWords.WordsLevel(interval, comparison.Basis!.Comparisons, comparison.Basis.Lengthened)
            : "";

    /// <summary>
    /// The interval that agrees with the word, where the usual one alone would mislead: several asked at once, a lengthened order, or a p
    /// between the word's level and 5 %; null: the usual one does.
    /// </summary>
    public static string? IntervalOfWord(ClassComparison comparison)
    {
        if (comparison is not { Conclusion: { } conclusion, Basis: { } basis, Overall: { } overall })
        {
            return null;
        }

        bool usualDiffers =
            overall.P < UsualAlpha != conclusion.ShowsDifference || overall.PTost < UsualAlpha != conclusion.ShowsEquivalence;
        bool isEquivalence = conclusion is { ShowsDifference: false, ShowsEquivalence: true };
        return basis is { Comparisons: 1, Lengthened: 0 } && !usualDiffers ? null : Figures.IntervalOfWord(basis, overall, isEquivalence);
    }

    private static string MoreRuns(ClassComparison? comparison) =>
        comparison switch
        {
            null => "",
            { Overall.StandardErrorDb: null } or { MoreRuns: null } => VerdictReportWords.MoreRunsNotKnown,
            { MoreRuns: { AsSeen: { } seen, Chance: { } chance, Cautious: var cautious } } => VerdictReportWords.MoreRunsWouldSettle(
                seen,
                chance,
                cautious is { } runs ? VerdictReportWords.RunsWhenCautious(runs) : VerdictReportWords.MoreThanTenWhenCautious
            ),
            _ => VerdictReportWords.NotEvenTenMoreRuns,
        };
}
