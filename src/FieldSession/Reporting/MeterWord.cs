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
            MeterVerdict.MeasuredButSmall => $"MEASURED, BUT SMALL (within {margin} dB): {Numbers(comparison)}",
            MeterVerdict.SameWithin => $"SAME WITHIN {margin} dB: {Numbers(comparison)}",
            _ when comparison is not null && !CarriesVerdict(comparison) => $"NOT RESOLVED ({comparison.Verdict}): {Numbers(comparison)}",
            _ => $"NOT RESOLVED: {Numbers(comparison)}{MoreRuns(comparison)}",
        };
    }

    // Too few runs, an unfinished plan, code and car not told apart: the comparison gives its reason in place of a verdict.
    private static bool CarriesVerdict(ClassComparison? comparison) =>
        comparison is not null && !comparison.Verdict.StartsWith("no ", StringComparison.Ordinal);

    private static string Numbers(ClassComparison? comparison) => comparison?.Overall is { } overall
        ? $"{Figures.Difference(overall)} dB, 95 % interval {Figures.Interval95(overall)} dB"
        : "nothing could be compared";

    private static string MoreRuns(ClassComparison? comparison) => comparison switch
    {
        null => "",
        { Overall.StandardErrorDb: null } => "; how many runs would settle it is not known yet",
        { MoreRunsAsSeen: { } seen } => $"; {seen} more {(seen == 1 ? "run" : "runs")} per code would settle it if things go on as seen{(comparison.MoreRunsCautious is { } cautious ? $", {cautious} to be cautious" : ", more than 10 to be cautious")}",
        _ => "; not even 10 more runs per code would settle it",
    };
}
