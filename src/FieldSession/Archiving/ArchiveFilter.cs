using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>Which studies of an archive are meant; null: any.</summary>
/// <param name="Person">Someone of the crew.</param>
/// <param name="Crew">Exactly this crew, in words.</param>
/// <param name="Segment">Part of the name of a segment, or a kind of surface, of the route.</param>
/// <param name="Route">Exactly this route.</param>
/// <param name="Since">Begun on this day or later, UTC.</param>
/// <param name="Until">Begun on this day or earlier, UTC.</param>
public sealed record ArchiveFilter(
    string? Person = null, string? Crew = null, string? Segment = null, string? Route = null, DateOnly? Since = null, DateOnly? Until = null)
{
    /// <summary>The finished studies of a plan's own crew and loop, begun before a time.</summary>
    public static IEnumerable<ArchivedStudy> LikeOf(Plan plan, IEnumerable<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string crew = string.Join(", ", plan.Crew.Select(member => member.Name).Order(StringComparer.OrdinalIgnoreCase));
        ArchiveFilter own = new(Crew: crew, Route: ArchivedStudy.RouteOf(plan));
        return studies.Where(study => study.IsFinished && study.Name != plan.StudyName && own.Takes(study));
    }

    /// <summary>How well runs and readings repeated in the finished studies of a plan's own crew and loop.</summary>
    public static IEnumerable<EarlierScatter> ScatterLikeOf(Plan plan, IEnumerable<ArchivedStudy> studies) =>
        from study in LikeOf(plan, studies)
        from scatter in study.Scatter
        where !scatter.IsKind
        select new EarlierScatter(study.Name, scatter.Group, scatter.NuRun, scatter.SRunDb, scatter.Kbar, scatter.NuE, scatter.SEDb);

    /// <summary>Whether a study is meant.</summary>
    public bool Takes(ArchivedStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return IsCrewOf(study) && IsRouteOf(study) && IsInTime(study.Began);
    }

    private bool IsCrewOf(ArchivedStudy study) =>
        (Person is null || study.Crew.Any(name => Study.SamePerson(name, Person))) && (Crew is null || Study.SamePerson(study.CrewInWords, Crew));

    private bool IsRouteOf(ArchivedStudy study) =>
        (Segment is null || study.Route.Contains(Segment, StringComparison.OrdinalIgnoreCase)) && (Route is null || study.Route == Route);

    private bool IsInTime(DateTimeOffset? began)
    {
        if (Since is null && Until is null)
        {
            return true;
        }

        return began is { } at && DateOnly.FromDateTime(at.UtcDateTime) is { } day && !(day < Since) && !(day > Until);
    }
}
