using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Tests.Planning;

public class OrdersCancelADrift
{
    private static readonly SizeTerms Terms = new(0.35, 0.75, 10, 1, 1);

    public static TheoryData<int> Specs => [2, 3, 4, 5];

    [Theory]
    [MemberData(nameof(Specs))]
    public void Every_proposed_order_of_any_length_is_bracketed_and_cancels_a_steady_drift(int specs)
    {
        for (int runs = OrderProposals.FewestRuns(specs); runs <= 30; runs++)
        {
            IReadOnlyList<ImmutableList<Place>> orders = OrderProposals.Of(specs, runs);
            Assert.NotEmpty(orders);
            foreach (ImmutableList<Place> order in orders)
            {
                Assert.Equal(runs, order.Count);
                Assert.True(order[0].IsReference && order[^1].IsReference, string.Join(' ', order));
                Assert.Equal(specs, order.Distinct().Count());
                Assert.All(OrderSize.Of(order, null, Terms), size => Assert.True(size.DriftCancels, string.Join(' ', order)));
                Assert.All(order.Distinct(), place => Assert.Equal(0, DriftSeen(order, place, t => t), 1e-9));
            }
        }
    }

    [Theory]
    [InlineData(2, 3, "R 1 R")]
    [InlineData(2, 4, "R 1 1 R")]
    [InlineData(2, 5, "R 1 R 1 R")]
    [InlineData(2, 8, "R 1 1 R R 1 1 R")]
    [InlineData(3, 7, "R 1 2 R 2 1 R")]
    [InlineData(3, 9, "R 1 R 2 R 2 R 1 R")]
    [InlineData(4, 9, "R 1 2 3 R 3 2 1 R")]
    public void The_orders_of_the_trade_are_among_them(int specs, int runs, string order) =>
        Assert.Contains(order, OrderProposals.Of(specs, runs).Select(proposed => string.Join(' ', proposed)));

    [Fact]
    public void Too_few_runs_for_the_specs_give_no_order() => Assert.Empty(OrderProposals.Of(3, 4));

    [Fact]
    public void The_next_day_goes_backwards_or_changes_the_candidates_places()
    {
        Assert.Equal("1 R 1 R", string.Join(' ', OrderProposals.NextDay(Order("R 1 R 1"))));
        Assert.Equal("R 2 1 R 1 2 R", string.Join(' ', OrderProposals.NextDay(Order("R 1 2 R 2 1 R"))));
        Assert.Equal("R 1 1 R", string.Join(' ', OrderProposals.NextDay(Order("R 1 1 R"))));
    }

    [Theory]
    [InlineData("R 1 R 1", 1 / 3.0)]
    [InlineData("R R 1 1", 2 / 3.0)]
    [InlineData("R 1 R 1 R", 0)]
    [InlineData("1 R R 1", 0)]
    public void An_order_of_ones_own_is_judged_by_the_same_computation(string order, double shift)
    {
        OrderSize size = Assert.Single(OrderSize.Of(Order(order), null, Terms));
        Assert.Equal(shift, size.DriftShift, 1e-12);
        Assert.Equal(shift, DriftSeen(Order(order), new Place(1), t => t), 1e-12);
    }

    // balanced, 8 degrees of freedom: C. W. Dunnett, Biometrics 20 (1964), table II, two candidates: 2.67, from memory
    [Fact]
    public void What_an_order_could_show_allows_for_all_candidates_asked_at_once()
    {
        ImmutableList<Place> order = Order("R 1 2 2 1 R R 1 2 2 1 R");
        IReadOnlyList<OrderSize> sizes = OrderSize.Of(order, null, Terms);
        double dunnett = StudentT.TwoSidedP(2.67, 8);
        Assert.All(sizes, size => Assert.Equal((8, 2), (size.Df, size.Comparisons)));
        Assert.All(
            sizes,
            size =>
                Assert.Equal(
                    NoncentralT.NoncentralityForPower(0.8, 8, dunnett)!.Value * Terms.RunMeanSdDb * Math.Sqrt(0.5),
                    size.SmallestDb!.Value,
                    0.005
                )
        );
        Assert.All(
            OrderSize.Of(order, null, Terms, asksAllPairs: true),
            size =>
                Assert.Equal(
                    NoncentralT.NoncentralityForPower(0.8, 8, 0.05 / 3)!.Value * Terms.RunMeanSdDb * Math.Sqrt(0.5),
                    size.SmallestDb!.Value,
                    1e-9
                )
        );
    }

    [Fact]
    public void A_bent_drift_stays_in_part_and_is_told()
    {
        // R at 0, 1, candidate at 1/2: (1/2)^2 - (0 + 1)/2
        OrderSize size = Assert.Single(OrderSize.Of(Order("R 1 R"), null, Terms));
        Assert.Equal(-0.25, size.BentShift, 1e-12);
    }

    /// <summary>Source: the planning figures of R, case 19 (pt with ncp): 4 runs a code, run SD 0.2, reading SD 0.5, 10 segments.</summary>
    [Fact]
    public void Without_a_drift_column_the_smallest_difference_is_that_of_two_equal_samples()
    {
        OrderSize size = Assert.Single(OrderSize.Of(Order("R 1 1 R"), null, new SizeTerms(0.35, 0.75, 10, 1, 1)));
        Assert.Equal(DaySize.Row(Terms, 2).SmallestDifferenceDb!.Value, size.SmallestDb!.Value, 1e-9);
        Assert.Equal(2, size.Df);
        OrderSize eight = Assert.Single(OrderSize.Of(Order("R 1 1 R R 1 1 R"), null, Terms));
        Assert.True(eight.DriftInModel);
        Assert.Equal(DaySize.Row(Terms, 4).SmallestWithDriftDb!.Value, eight.SmallestDb!.Value, 1e-9);
    }

    [Theory]
    [InlineData(2, 4)]
    [InlineData(2, 8)]
    [InlineData(3, 12)]
    [InlineData(4, 8)]
    public void Two_cars_change_their_tyres_half_way_and_car_and_code_can_be_told_apart(int specs, int runs)
    {
        foreach (ImmutableList<Place> order in OrderProposals.Of(specs, runs))
        {
            OrderProposal shared = OrderSharing.Of(order, ["X", "Y"], ["Ro", "Tam"]);
            Assert.All(
                OrderSize.Of(order, shared.Cars, Terms),
                size =>
                {
                    Assert.Null(size.ConfoundedWith);
                    Assert.True(size.DriftCancels);
                }
            );
        }
    }

    [Fact]
    public void Two_cars_that_keep_their_codes_are_told_as_confounded()
    {
        OrderSize size = Assert.Single(OrderSize.Of(Order("R 1 1 R"), ["X", "Y", "Y", "X"], Terms));
        Assert.Equal("car", size.ConfoundedWith);
    }

    [Theory]
    [InlineData("R 1 1 R R 1 1 R")]
    [InlineData("R 1 2 2 1 R R 1 2 2 1 R")]
    public void Drivers_take_every_code_equally_often_where_the_order_allows_it(string order)
    {
        OrderProposal shared = OrderSharing.Of(Order(order), [], ["Ro", "Tam"]);
        Assert.Equal(0, OrderSharing.Unevenness(shared.Order, shared.Drivers!), 1e-12);
        Assert.Equal(2, shared.Drivers!.Distinct().Count());
    }

    [Fact]
    public void An_order_takes_its_segments_its_turn_rounds_and_its_changes_of_tyres()
    {
        Segment[] route = [ASegment(100, 3.6), ASegment(200, 3.6)];
        OrderProposal oneCar = new(Order("R 1 1 R"));
        Assert.Equal(2, OrderTime.Refits(oneCar));
        Assert.Equal((4 * 300 / 60.0) + 10 + (2 * 60), OrderTime.Minutes(oneCar, route, new TurnRound()), 1e-9);
        Assert.Equal(0, OrderTime.Refits(oneCar with { Cars = ["X", "Y", "Y", "X"] }));
        Assert.Equal(2, OrderTime.Refits(OrderSharing.Of(Order("R 1 1 R"), ["X", "Y"], [])));
    }

    private static Segment ASegment(double metres, double kmh) =>
        new(1, "a", SegmentKind.Of("smooth"), Measures.Speed.FromKmh(kmh), Measures.Distance.FromMetres(metres));

    private static ImmutableList<Place> Order(string text) =>
        [
            .. text.Split(' ')
                .Select(word =>
                    word == "R" ? Place.Reference : new Place(int.Parse(word, System.Globalization.CultureInfo.InvariantCulture))
                ),
        ];

    // what a drift would be taken for, by plain means of its values at the runs of a place and of R
    private static double DriftSeen(ImmutableList<Place> order, Place place, Func<double, double> drift)
    {
        double MeanOf(Place of) => order.Index().Where(run => run.Item == of).Average(run => drift(run.Index / (order.Count - 1.0)));
        return MeanOf(place) - MeanOf(Place.Reference);
    }
}
