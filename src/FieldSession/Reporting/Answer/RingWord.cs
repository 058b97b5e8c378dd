using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>
/// The word of the recordings on one pair, by the same rules as the meter's; and what it answers where the ear heard more than the meter.
/// </summary>
public static class RingWord
{
    /// <summary>The line of the verdict as data; null: nothing was recorded.</summary>
    public static VerdictLine? Line(Study study, RingFinding? ring, CodeComparison pair)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(pair);
        if (study.Recordings.IsEmpty || !IsAsked(ring, pair))
        {
            return null;
        }

        if (ring is null)
        {
            return new(
                pair.Code,
                pair.Reference,
                VerdictLineKind.Ring,
                RingReportWords.RingCoveredWord,
                RingReportWords.RingIsCovered,
                null,
                null,
                null,
                null
            );
        }

        ClassComparison? main = ring.Of(pair.Code)?.Main;
        return new(
            pair.Code,
            pair.Reference,
            VerdictLineKind.Ring,
            MeterWord.Word(Of(ring, pair.Code), ring.MarginDb),
            ring.WhyNone is { } why ? $"{why}; {MeterWord.Reason(main)}" : MeterWord.Reason(main),
            HangsOn(ring, pair.Code),
            main?.Basis?.Lengthened,
            main?.Overall,
            ring.WhyNone is null ? main?.Basis : null
        );
    }

    /// <summary>The point in the report; null: nothing was recorded.</summary>
    public static LabelledLine? InReport(ReportDay day, CodeComparison pair)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(pair);
        return day switch
        {
            { Study.Recordings.IsEmpty: true } => null,
            _ when !IsAsked(day.Ring, pair) => null,
            { Ring: null } => new LabelledLine("Ring", "", $"{RingReportWords.RingCoveredWord}: {RingReportWords.RingIsCovered}."),
            { Ring: { } ring } => new LabelledLine("Ring", "", $"{InWords(ring, pair.Code)}."),
        };
    }

    /// <summary>
    /// What the recordings answer where the ear heard what the meter did not show; null: there is no recording of the pair, or it is
    /// covered.
    /// </summary>
    public static string? Answer(RingFinding? ring, CodeComparison asked) =>
        ring?.Of(asked.Code) is not { } pair || pair.Reference != asked.Reference || ring.WhyNone is not null
            ? null
            : Of(ring, asked.Code) switch
            {
                MeterVerdict.Measured or MeterVerdict.MeasuredButSmall => RingReportWords.RingAnswers(ring.Band, pair.Main.Overall!),
                MeterVerdict.SameWithin => RingReportWords.RingIsTheSame(ring.Band, Figures.MarginDb(ring.MarginDb)),
                _ => RingReportWords.RingNotResolved(ring.Band),
            };

    /// <summary>The word; NOT RESOLVED where no verdict can rest on the recordings.</summary>
    public static MeterVerdict Of(RingFinding ring, string code)
    {
        ArgumentNullException.ThrowIfNull(ring);
        return ring.WhyNone is null ? MeterWord.Of(ring.Of(code)?.Main) : MeterVerdict.NotResolved;
    }

    // the recordings are asked of every code against the reference; of candidates against each other only the meter is
    private static bool IsAsked(RingFinding? ring, CodeComparison pair) =>
        ring?.Of(pair.Code) is not { } found || found.Reference == pair.Reference;

    private static string InWords(RingFinding ring, string code)
    {
        string words = ring.WhyNone is { } why ? $"NOT RESOLVED ({why})" : MeterWord.InWords(ring.Of(code)?.Main, ring.MarginDb);
        return HangsOn(ring, code) is { Length: > 0 } hangs ? $"{words}. Hangs on: {hangs}" : words;
    }

    private static string? HangsOn(RingFinding ring, string code)
    {
        string? single = HangsOnWords.Sentence(ring.Of(code)?.Main.Sensitivity);
        return ring.Of(code)?.HangsOnShortEvents == true
            ? string.IsNullOrEmpty(single)
                ? RingReportWords.ShortEvents
                : $"{single}; {RingReportWords.ShortEvents}"
            : single;
    }
}
