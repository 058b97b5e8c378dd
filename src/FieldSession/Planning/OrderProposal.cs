using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>An order of runs to choose or to judge, with who and what drives each run where there is more than one.</summary>
/// <param name="Order">The runs by place.</param>
public sealed record OrderProposal(ImmutableList<Place> Order)
{
    /// <summary>The car of each run; null: one car.</summary>
    public ImmutableList<string>? Cars { get; init; }

    /// <summary>The driver of each run; null: one driver.</summary>
    public ImmutableList<string>? Drivers { get; init; }

    /// <summary>The runs as they are written in the plan.</summary>
    public override string ToString() => string.Join(' ', Order);

    /// <summary>The order that a plan holds.</summary>
    public static OrderProposal In(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new OrderProposal(plan.Order) { Cars = plan.CarOrder, Drivers = plan.DriverOrder };
    }
}

/// <summary>
/// Shares the runs of an order out between two cars and between two drivers, so that neither stays with one code. Every way
/// that changes over only now and then is tried; the one with the most even shares is taken, the fewest changes first.
/// </summary>
public static class OrderSharing
{
    /// <summary>The order with its cars and drivers.</summary>
    /// <param name="order">The runs by place.</param>
    /// <param name="cars">The cars of the plan; fewer than two leave the order as it is.</param>
    /// <param name="drivers">Those of the crew who may drive; fewer than two leave the seats as they are.</param>
    public static OrderProposal Of(ImmutableList<Place> order, IReadOnlyList<string> cars, IReadOnlyList<string> drivers)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(cars);
        ArgumentNullException.ThrowIfNull(drivers);
        bool[]? byCar = cars.Count >= 2 ? Swapped(order) : null;
        bool[]? byDriver = drivers.Count >= 2 ? Evenest(order, byCar) : null;
        return new OrderProposal(order)
        {
            Cars = byCar is null ? null : [.. byCar.Select(other => cars[other ? 1 : 0])],
            Drivers = byDriver is null ? null : [.. byDriver.Select(other => drivers[other ? 1 : 0])],
        };
    }

    /// <summary>How far a sharing is from even: the largest difference of shares between two places, 0..1.</summary>
    /// <param name="order">The runs by place.</param>
    /// <param name="shared">The car, or the driver, of each run.</param>
    public static double Unevenness(IReadOnlyList<Place> order, IReadOnlyList<string> shared)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(shared);
        (Place Place, string Who)[] runs = [.. order.Zip(shared)];
        double largest = 0;
        foreach (string who in shared.Distinct())
        {
            double[] shares =
            [
                .. runs.GroupBy(run => run.Place).Select(place => place.Count(run => run.Who == who) / (double)place.Count()),
            ];
            largest = Math.Max(largest, shares.Max() - shares.Min());
        }

        return largest;
    }

    // R on the first car until half-way, then on the second; every candidate the other way round: one change of tyres between the cars
    private static bool[] Swapped(ImmutableList<Place> order) =>
        [.. order.Select((place, run) => place.IsReference == (2 * run >= order.Count))];

    private static bool[] Evenest(ImmutableList<Place> order, bool[]? byCar)
    {
        int runs = order.Count;
        bool[][] ways =
        [
            [.. Enumerable.Range(0, runs).Select(run => 2 * run >= runs)],
            [.. Enumerable.Range(0, runs).Select(run => (4 * run / runs) is 1 or 2)],
            [.. Enumerable.Range(0, runs).Select(run => (4 * run / runs) % 2 == 1)],
            [.. Enumerable.Range(0, runs).Select(run => run / 2 % 2 == 1)],
            [.. Enumerable.Range(0, runs).Select(run => run % 2 == 1)],
        ];
        return ways.MinBy(way => Unevenness(order, Named(way)) + (byCar is null ? 0 : UnevennessOfCars(byCar, way)))!;
    }

    private static double UnevennessOfCars(bool[] byCar, bool[] byDriver) =>
        Unevenness([.. byCar.Select(other => new Place(other ? 1 : 0))], Named(byDriver));

    private static string[] Named(bool[] way) => [.. way.Select(other => other ? "1" : "0")];
}
