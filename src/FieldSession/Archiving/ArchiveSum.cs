using System.Collections.Immutable;

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
public sealed record ArchiveSum(string By, string Name, string Group, int Studies, double? RunSdDb, double NuRun, double? ReadingSdDb, double NuE)
{
    /// <summary>The sums by class, by kind, and by class of each crew, route, car, meter and season; groups without any degrees of freedom are left away.</summary>
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
        studies.SelectMany(study => study.Scatter.Where(one => one.IsKind == isKind).Select(scatter => (Name: nameOf(study), Scatter: scatter)))
            .GroupBy(one => (one.Name, one.Scatter.Group))
            .OrderBy(found => found.Key.Name, StringComparer.Ordinal).ThenBy(found => Place(found.Key.Group)).ThenBy(found => found.Key.Group, StringComparer.Ordinal)
            .Select(found => One(by, found.Key.Name, found.Key.Group, [.. found.Select(one => one.Scatter)]));

    private static int Place(string group) => group switch
    {
        ArchivedScatter.All => 0,
        "steady" => 1,
        _ => 2,
    };

    private static ArchiveSum One(string by, string name, string group, ArchivedScatter[] scatter)
    {
        double nuRun = scatter.Where(one => one.SRunDb is not null).Sum(one => one.NuRun);
        double nuE = scatter.Where(one => one.SEDb is not null).Sum(one => one.NuE);
        double run = scatter.Sum(one => one.SRunDb is { } s ? one.NuRun * Math.Max(0, (s * s) - (one.Kbar * (one.SEDb ?? 0) * (one.SEDb ?? 0))) : 0);
        double reading = scatter.Sum(one => one.SEDb is { } s ? one.NuE * s * s : 0);
        return new ArchiveSum(
            by, name, group, scatter.Length, nuRun > 0 ? Math.Sqrt(run / nuRun) : null, nuRun, nuE > 0 ? Math.Sqrt(reading / nuE) : null, nuE);
    }
}
