using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>Holds the names of main segments against the route: the day's question is answered on these segments only.</summary>
public static class MainSegmentNames
{
    /// <summary>The names as the route spells them, in route order; null where one can't be a main segment.</summary>
    /// <param name="names">The names as typed; capitals don't tell them apart.</param>
    /// <param name="route">The route.</param>
    /// <param name="measure">The main measure, which every main segment must be read for.</param>
    /// <param name="objection">What is wrong, and what is allowed; null where the names are good.</param>
    public static ImmutableList<string>? On(IReadOnlyList<string> names, IReadOnlyList<Segment> route, MainMeasure measure, out Objection? objection)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(route);
        string? unknown = names.FirstOrDefault(name => !route.Any(segment => IsNamed(segment, name)));
        Segment[] found = [.. route.Where(segment => names.Any(name => IsNamed(segment, name)))];
        objection = names.Count == 0 ? new Objection(PlanningWords.NoMainSegmentIsNamed, PlanningWords.NameSegmentsOfRoute)
            : unknown is not null ? new Objection(PlanningWords.IsNoSegmentOfRoute(unknown), PlanningWords.SegmentsOfRouteAre(string.Join(", ", route.Select(segment => segment.Name))))
            : AgainstMeasure(found, measure);
        return objection is null ? [.. found.Select(segment => segment.Name)] : null;
    }

    /// <summary>What rules out segments under a main measure; null: nothing.</summary>
    public static Objection? AgainstMeasure(IEnumerable<Segment> segments, MainMeasure measure) =>
        segments.FirstOrDefault(segment => measure != MainMeasure.All && segment.Kind.IsImpact != (measure == MainMeasure.Impact)) is { } other
            ? new Objection(
                PlanningWords.MainSegmentIsNotMeasured(other, measure),
                PlanningWords.NameSegmentsOfMainMeasure)
            : null;

    private static bool IsNamed(Segment segment, string name) => string.Equals(segment.Name, name.Trim(), StringComparison.OrdinalIgnoreCase);
}
