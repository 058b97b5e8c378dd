namespace FieldSession.Comparing;

/// <summary>A segment that the plan asks for, in the order of the route.</summary>
/// <param name="Segment">Its name.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Class">How it is read.</param>
/// <param name="Seconds">How long a run stays on it, above 0; null: not known.</param>
public sealed record PlannedSegment(string Segment, string Kind, MeasureClass Class, double? Seconds = null);

/// <summary>Everything read on one study, ready to be compared: readings by code, no identity behind a code.</summary>
/// <param name="Levels">All readings, spoilt ones included; several of one run and segment are several readings of it.</param>
/// <param name="Missed">How many planned readings were not taken.</param>
/// <param name="Planned">The planned segments in route order; null: the segments that occur in the readings, in the order of their first one.</param>
public sealed record MeasuredDay(
    IReadOnlyList<MeasuredLevel> Levels,
    int Missed = 0,
    IReadOnlyList<PlannedSegment>? Planned = null)
{
    /// <summary>Runs of the order as it was planned, then after each time it was lengthened when a comparison could be seen (<see cref="Looks"/>); null: not known.</summary>
    public IReadOnlyList<int>? OrderRuns { get; init; }
}
