using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>What is assumed between two runs; both figures are stated wherever they are used.</summary>
/// <param name="TurnRoundMinutes">From the last segment of a run to the first of the next on the same tyres, minutes; 10 by default (common
/// practice, no source).</param>
/// <param name="RefitMinutes">The same where the tyres of the car are changed between them, minutes; 60 by default (common practice: one to
/// two hours, no source).</param>
public sealed record TurnRound(double TurnRoundMinutes = 10, double RefitMinutes = 60);

/// <summary>
/// How long an order takes on a route. The roads between the segments are in the turn-round or in nothing: the route does not know them.
/// </summary>
public static class OrderTime
{
    /// <summary>Seconds that all segments of the route last at their speeds.</summary>
    public static double RunSeconds(IEnumerable<Segment> route)
    {
        ArgumentNullException.ThrowIfNull(route);
        return route.Sum(segment => segment.Seconds);
    }

    /// <summary>How often the tyres on a car are changed for the next run.</summary>
    public static int Refits(OrderProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        Dictionary<string, Place> fitted = [];
        int refits = 0;
        foreach ((Place place, string car) in proposal.Order.Select((place, run) => (place, proposal.Cars?[run] ?? "")))
        {
            refits += fitted.TryGetValue(car, out Place before) && before != place ? 1 : 0;
            fitted[car] = place;
        }

        return refits;
    }

    /// <summary>Minutes from the start of the first run to the end of the last.</summary>
    public static double Minutes(OrderProposal proposal, IEnumerable<Segment> route, TurnRound between)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        ArgumentNullException.ThrowIfNull(between);
        int refits = Refits(proposal);
        int plain = Math.Max(0, proposal.Order.Count - 1 - refits);
        return (proposal.Order.Count * RunSeconds(route) / 60) + (plain * between.TurnRoundMinutes) + (refits * between.RefitMinutes);
    }
}

/// <summary>
/// What a speed error costs in level. Rolling noise rises by about 30 to 40 lg v (from memory; the rolling coefficients of light
/// vehicles in the Harmonoise source model give 32 lg v, A-weighted, over 50..110 km/h).
/// </summary>
public static class SpeedCost
{
    /// <summary>Factor of lg v at the lower end.</summary>
    public const double LeastFactor = 30;

    /// <summary>Factor of lg v at the upper end.</summary>
    public const double MostFactor = 40;

    /// <summary>Rise of the level, dB, where a segment is driven too fast by so much.</summary>
    /// <param name="planned">The plan's speed.</param>
    /// <param name="tooFastKmh">How much too fast, km/h.</param>
    /// <param name="factor">Factor of lg v.</param>
    public static double Db(Speed planned, double tooFastKmh, double factor) =>
        factor * Math.Log10((planned.Kmh + tooFastKmh) / planned.Kmh);
}
