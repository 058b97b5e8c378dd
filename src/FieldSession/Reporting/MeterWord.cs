using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>The meter's word on one comparison, by fixed rules from its intervals and the margin.</summary>
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
    /// <summary>The verdict of a comparison; <see cref="MeterVerdict.NotResolved"/> where intervals are not known or the verdict is withheld.</summary>
    public static MeterVerdict Of(ClassComparison? comparison, double marginDb)
    {
        if (!CarriesVerdict(comparison) || comparison?.Overall is not { Lo95Db: { } lo95, Hi95Db: { } hi95, Lo90Db: { } lo90, Hi90Db: { } hi90 })
        {
            return MeterVerdict.NotResolved;
        }

        bool differs = lo95 > 0 || hi95 < 0;
        bool within = lo90 > -marginDb && hi90 < marginDb;
        return (differs, within) switch
        {
            (true, true) => MeterVerdict.MeasuredButSmall,
            (true, false) => MeterVerdict.Measured,
            (false, true) => MeterVerdict.SameWithin,
            _ => MeterVerdict.NotResolved,
        };
    }

    /// <summary>The verdict in words, with what would settle an open one.</summary>
    public static string InWords(ClassComparison? comparison, double marginDb)
    {
        string margin = Figures.MarginDb(marginDb);
        return Of(comparison, marginDb) switch
        {
            MeterVerdict.Measured => $"MEASURED: {Numbers(comparison)}",
            MeterVerdict.MeasuredButSmall => ReportingWords.MeasuredButSmallWithinDb(margin, Numbers(comparison)),
            MeterVerdict.SameWithin => ReportingWords.SameWithinDb(margin, Numbers(comparison)),
            _ when comparison is not null && !CarriesVerdict(comparison) => $"NOT RESOLVED ({comparison.Verdict}): {Numbers(comparison)}",
            _ => $"NOT RESOLVED: {Numbers(comparison)}{MoreRuns(comparison)}",
        };
    }

    // Too few runs, an unfinished plan, code and car not told apart: the comparison gives its reason in place of a verdict.
    private static bool CarriesVerdict(ClassComparison? comparison) =>
        comparison is not null && !comparison.Verdict.StartsWith("no ", StringComparison.Ordinal);

    private static string Numbers(ClassComparison? comparison) => comparison?.Overall is { } overall
        ? ReportingWords.DbIntervalDb(overall)
        : ReportingWords.NothingCouldBeCompared;

    private static string MoreRuns(ClassComparison? comparison) => comparison switch
    {
        null => "",
        { Overall.StandardErrorDb: null } => ReportingWords.AndHowManyRunsWouldSettleItIsNotKnown,
        { MoreRunsAsSeen: { } seen } => ReportingWords.AndMorePerCodeWouldSettleItIfThings(seen, seen == 1 ? "run" : "runs", comparison.MoreRunsCautious is { } cautious ? ReportingWords.AndToBeCautious(cautious) : ReportingWords.AndMoreThanToBeCautious),
        _ => ReportingWords.AndNotEvenMoreRunsPerCodeWouldSettle,
    };
}
