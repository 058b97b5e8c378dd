using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>The route as read.</summary>
/// <param name="Segments">The segments in driven order.</param>
/// <param name="Lines">The line of the file in which each segment is.</param>
/// <param name="IsImperial">Whether its speeds are written in miles per hour.</param>
internal sealed record RouteReading(ImmutableList<Segment> Segments, ImmutableList<int> Lines, bool IsImperial);
