using System.Globalization;
using FieldSession.Reporting;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>An archive in plain words.</summary>
public static class ArchiveWords
{
    /// <summary>The list of studies, a line each.</summary>
    public static IEnumerable<string> Listed(IEnumerable<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(studies);
        return studies.Select(study => string.Create(
            CultureInfo.InvariantCulture,
            $"{study.Began?.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "not driven",-10}  {study.Identity.ShortHash}  {study.Name,-16} {study.Runs,3} runs  {(study.IsFinished ? "finished" : "key shut"),-8}  {study.CrewInWords}; {study.RouteInWords}"));
    }

    /// <summary>How well runs and readings repeated, a line a group.</summary>
    public static IEnumerable<string> Summed(IEnumerable<ArchiveSum> sums)
    {
        ArgumentNullException.ThrowIfNull(sums);
        string by = "";
        foreach (ArchiveSum sum in sums)
        {
            if (sum.By != by)
            {
                by = sum.By;
                yield return $"by {by}: standard deviation of a run and of a reading, dB (degrees of freedom)";
            }

            string name = sum.Name.Length > 0 ? $"{sum.Name}, {sum.Group}" : sum.Group;
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"  {name}: run {Sd(sum.RunSdDb)} ({sum.NuRun:0.#}), reading {Sd(sum.ReadingSdDb)} ({sum.NuE:0.#}), {sum.Studies} stud{(sum.Studies == 1 ? "y" : "ies")}");
        }
    }

    /// <summary>What is in the place of a name that the crew did not write down.</summary>
    public const string NotTold = "not given";

    /// <summary>Three months of the year, by their names.</summary>
    public static string Season(DateTimeOffset? began) => began?.UtcDateTime.Month switch
    {
        null => NotTold,
        12 or 1 or 2 => "December to February",
        <= 5 => "March to May",
        <= 8 => "June to August",
        _ => "September to November",
    };

    /// <summary>The answers to the questions of a test department, a line each under a head.</summary>
    public static IEnumerable<string> Answered(ArchiveAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        return
        [
            .. Headed("segments: information per minute driven, 1/dB^2; standard deviation of a reading, dB; readings left out", answers.Segments, InWords),
            .. Headed("verdicts: how often each word", answers.Words, count => $"{Of(count.Line)}: {count.Word} {count.Verdicts}"),
            .. Headed("predictions: how sure, and how often right", answers.Calibration, InWords),
            .. Headed("meters: drift over a session, and with the air", answers.Drifts, InWords),
            .. Headed("flags: by driver", answers.Flags, InWords),
        ];
    }

    private static IEnumerable<string> Headed<T>(string head, IReadOnlyCollection<T> rows, Func<T, FormattableString> inWords) =>
        rows.Count == 0 ? [] : rows.Select(row => $"  {FormattableString.Invariant(inWords(row))}").Prepend(head);

    private static FormattableString InWords(SegmentSum sum) => sum.PerDb2Minute is { } told
        ? (FormattableString)$"{sum.Segment} ({sum.Kind}): {told:0.0}; {sum.ReadingSdDb:0.00}; {sum.SpoiltShare * 100:0} % of {sum.Taken}"
        : $"{sum.Segment} ({sum.Kind}): says nothing yet; {sum.Counted} of {sum.Taken} readings count";

    private static FormattableString InWords(CalibrationStep step) => $"stated {step.Stated * 100:0} %: right {step.CameTrue * 100:0} %, {step.Predictions} predictions";

    private static FormattableString InWords(MeterDrift drift) => drift.DbPerDegree is { } slope
        ? (FormattableString)$"{(drift.Meter.Length == 0 ? NotTold : drift.Meter)}: {drift.DriftDb:+0.00;-0.00;0.00} dB, {slope:+0.000;-0.000;0.000} dB a degree, {drift.Sessions} sessions"
        : $"{(drift.Meter.Length == 0 ? NotTold : drift.Meter)}: {drift.DriftDb:+0.00;-0.00;0.00} dB, one temperature only, {drift.Sessions} sessions";

    private static FormattableString InWords(DriverFlags flags) =>
        $"{(flags.Driver.Length == 0 ? NotTold : flags.Driver)}: {100.0 * flags.Flags.Sum(flag => flag.Readings) / flags.Readings:0} % of {flags.Readings} readings{string.Concat(flags.Flags.Select(flag => $"; {flag.Cause.Word()} {flag.Readings}"))}";

    private static string Of(VerdictLineKind line) => line switch
    {
        VerdictLineKind.Meter => "meter",
        VerdictLineKind.Ring => "ring",
        VerdictLineKind.Ear => "ear",
        _ => "worth",
    };

    private static string Sd(double? sd) => sd?.ToString("0.00", CultureInfo.InvariantCulture) ?? "unknown";
}
