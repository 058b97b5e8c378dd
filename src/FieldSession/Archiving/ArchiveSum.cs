using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Reporting;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>How well runs and readings repeat over several studies, each weighing by its degrees of freedom.</summary>
/// <param name="By">What the studies have in common: "class", "kind", "crew", "route", "car", "meter" or "season".</param>
/// <param name="Name">Which of these.</param>
/// <param name="Group">Class or kind the scatter is of.</param>
/// <param name="Studies">Studies behind it.</param>
/// <param name="RunSdDb">Standard deviation of the runs themselves, reading scatter taken off, dB; null without degrees of freedom.</param>
/// <param name="NuRun">Its degrees of freedom.</param>
/// <param name="ReadingSdDb">Standard deviation of a reading, dB; null without degrees of freedom.</param>
/// <param name="NuE">Its degrees of freedom.</param>
public sealed record ArchiveSum(
    string By,
    string Name,
    string Group,
    int Studies,
    double? RunSdDb,
    double NuRun,
    double? ReadingSdDb,
    double NuE
)
{
    /// <summary>
    /// The sums by class, by kind, and by class of each crew, route, car, meter and season; groups without any degrees of freedom are left
    /// away.
    /// </summary>
    public static ImmutableArray<ArchiveSum> Of(IEnumerable<ArchivedStudy> studies)
    {
        ArchivedStudy[] all = [.. studies.Where(study => study.IsFinished)];
        return
        [
            .. Pooled("class", _ => "", all, isKind: false),
            .. Pooled("kind", _ => "", all, isKind: true),
            .. Pooled("crew", study => study.CrewInWords, all, isKind: false),
            .. Pooled("route", study => study.RouteInWords, all, isKind: false),
            .. Pooled("car", study => study.Details.Car ?? ArchiveWords.NotTold, all, isKind: false),
            .. Pooled("meter", study => study.Details.Meter ?? ArchiveWords.NotTold, all, isKind: false),
            .. Pooled("season", study => ArchiveWords.Season(study.Began), all, isKind: false),
        ];
    }

    private static IEnumerable<ArchiveSum> Pooled(string by, Func<ArchivedStudy, string> nameOf, ArchivedStudy[] studies, bool isKind) =>
        studies
            .SelectMany(study =>
                study.Scatter.Where(one => one.IsKind == isKind).Select(scatter => (Name: nameOf(study), Scatter: scatter))
            )
            .GroupBy(one => (one.Name, one.Scatter.Group))
            .OrderBy(found => found.Key.Name, StringComparer.Ordinal)
            .ThenBy(found => Place(found.Key.Group))
            .ThenBy(found => found.Key.Group, StringComparer.Ordinal)
            .Select(found => One(by, found.Key.Name, found.Key.Group, [.. found.Select(one => one.Scatter)]));

    private static int Place(string group) =>
        group switch
        {
            ArchivedScatter.All => 0,
            "steady" => 1,
            _ => 2,
        };

    private static ArchiveSum One(string by, string name, string group, ArchivedScatter[] scatter)
    {
        double nuRun = scatter.Where(one => one.SRunDb is not null).Sum(one => one.NuRun);
        double nuE = scatter.Where(one => one.SEDb is not null).Sum(one => one.NuE);
        double run = scatter.Sum(one =>
            one.SRunDb is { } s ? one.NuRun * Math.Max(0, (s * s) - (one.Kbar * (one.SEDb ?? 0) * (one.SEDb ?? 0))) : 0
        );
        double reading = scatter.Sum(one => one.SEDb is { } s ? one.NuE * s * s : 0);
        return new ArchiveSum(
            by,
            name,
            group,
            scatter.Length,
            nuRun > 0 ? Math.Sqrt(run / nuRun) : null,
            nuRun,
            nuE > 0 ? Math.Sqrt(reading / nuE) : null,
            nuE
        );
    }
}

/// <summary>An archive in plain words.</summary>
public static class ArchiveWords
{
    /// <summary>The list of studies, a line each.</summary>
    public static IEnumerable<string> Listed(IEnumerable<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(studies);
        return studies.Select(study =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{study.Began?.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "not driven", -10}  "
                    + $"{study.Identity.ShortHash}  {study.Name, -16} {study.Runs, 3} runs  "
                    + $"{(study.IsFinished ? "finished" : "key shut"), -8}  {study.CrewInWords}; {study.RouteInWords}"
            )
        );
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
                $"  {name}: run {Sd(sum.RunSdDb)} ({sum.NuRun:0.#}), reading {Sd(sum.ReadingSdDb)} ({sum.NuE:0.#}), {sum.Studies} "
                    + $"stud{(sum.Studies == 1 ? "y" : "ies")}"
            );
        }
    }

    /// <summary>What is in the place of a name that the crew did not write down.</summary>
    public const string NotTold = "not given";

    /// <summary>Three months of the year, by their names.</summary>
    public static string Season(DateTimeOffset? began) =>
        began?.UtcDateTime.Month switch
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
            .. Headed(
                "segments: information per minute driven, 1/dB^2; standard deviation of a reading, dB; readings left out",
                answers.Segments,
                InWords
            ),
            .. Headed("verdicts: how often each word", answers.Words, count => $"{Of(count.Line)}: {count.Word} {count.Verdicts}"),
            .. Headed("predictions: how sure, and how often right", answers.Calibration, InWords),
            .. Headed("meters: drift over a session, and with the air", answers.Drifts, InWords),
            .. Headed("flags: by driver", answers.Flags, InWords),
        ];
    }

    private static IEnumerable<string> Headed<T>(string head, IReadOnlyCollection<T> rows, Func<T, FormattableString> inWords) =>
        rows.Count == 0 ? [] : rows.Select(row => $"  {FormattableString.Invariant(inWords(row))}").Prepend(head);

    private static FormattableString InWords(SegmentSum sum) =>
        sum.PerDb2Minute is { } told
            ? (FormattableString)
                $"{sum.Segment} ({sum.Kind}): {told:0.0}; {sum.ReadingSdDb:0.00}; {sum.SpoiltShare * 100:0} % of {sum.Taken}"
            : $"{sum.Segment} ({sum.Kind}): says nothing yet; {sum.Counted} of {sum.Taken} readings count";

    private static FormattableString InWords(CalibrationStep step) =>
        $"stated {step.Stated * 100:0} %: right {step.CameTrue * 100:0} %, {step.Predictions} predictions";

    private static FormattableString InWords(MeterDrift drift)
    {
        string meter = OrNotTold(drift.Meter);
        return drift.DbPerDegree is { } slope
            ? $"{meter}: {drift.DriftDb:+0.00;-0.00;0.00} dB, {slope:+0.000;-0.000;0.000} dB a degree, {drift.Sessions} sessions"
            : (FormattableString)$"{meter}: {drift.DriftDb:+0.00;-0.00;0.00} dB, one temperature only, {drift.Sessions} sessions";
    }

    private static string OrNotTold(string name) => name.Length == 0 ? NotTold : name;

    private static FormattableString InWords(DriverFlags flags)
    {
        double percent = 100.0 * flags.Flags.Sum(flag => flag.Readings) / flags.Readings;
        string byCause = string.Concat(flags.Flags.Select(flag => $"; {flag.Cause.Word()} {flag.Readings}"));
        return $"{OrNotTold(flags.Driver)}: {percent:0} % of {flags.Readings} readings{byCause}";
    }

    private static string Of(VerdictLineKind line) =>
        line switch
        {
            VerdictLineKind.Meter => "meter",
            VerdictLineKind.Ring => "ring",
            VerdictLineKind.Ear => "ear",
            _ => "worth",
        };

    private static string Sd(double? sd) => sd?.ToString("0.00", CultureInfo.InvariantCulture) ?? "unknown";
}

/// <summary>Which studies of an archive are meant; null: any.</summary>
/// <param name="Person">Someone of the crew.</param>
/// <param name="Segment">Part of the name of a segment, or a kind of surface, of the route.</param>
/// <param name="Since">Begun on this day or later, UTC.</param>
/// <param name="Until">Begun on this day or earlier, UTC.</param>
public sealed record ArchiveFilter(string? Person = null, string? Segment = null, DateOnly? Since = null, DateOnly? Until = null)
{
    /// <summary>Whether a study is meant.</summary>
    public bool Takes(ArchivedStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return IsCrewOf(study) && IsRouteOf(study) && IsInTime(study.Began);
    }

    private bool IsCrewOf(ArchivedStudy study) => Person is null || study.Crew.Any(name => CrewMember.SamePerson(name, Person));

    private bool IsRouteOf(ArchivedStudy study) => Segment is null || study.Route.Contains(Segment, StringComparison.OrdinalIgnoreCase);

    private bool IsInTime(DateTimeOffset? began)
    {
        if (Since is null && Until is null)
        {
            return true;
        }

        return began is { } at && DateOnly.FromDateTime(at.UtcDateTime) is { } day && !(day < Since) && !(day > Until);
    }
}
