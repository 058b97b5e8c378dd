using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>Which studies of an archive are meant; null: any.</summary>
/// <param name="Person">Someone of the crew.</param>
/// <param name="Segment">Part of the name of a segment, or a kind of surface, of the route.</param>
/// <param name="Since">Begun on this day or later, UTC.</param>
/// <param name="Until">Begun on this day or earlier, UTC.</param>
public sealed record ArchiveFilter(
    string? Person = null, string? Segment = null, DateOnly? Since = null, DateOnly? Until = null)
{
    /// <summary>Whether a study is meant.</summary>
    public bool Takes(ArchivedStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return IsCrewOf(study) && IsRouteOf(study) && IsInTime(study.Began);
    }

    private bool IsCrewOf(ArchivedStudy study) =>
        Person is null || study.Crew.Any(name => CrewMember.SamePerson(name, Person));

    private bool IsRouteOf(ArchivedStudy study) =>
        Segment is null || study.Route.Contains(Segment, StringComparison.OrdinalIgnoreCase);

    private bool IsInTime(DateTimeOffset? began)
    {
        if (Since is null && Until is null)
        {
            return true;
        }

        return began is { } at && DateOnly.FromDateTime(at.UtcDateTime) is { } day && !(day < Since) && !(day > Until);
    }
}
