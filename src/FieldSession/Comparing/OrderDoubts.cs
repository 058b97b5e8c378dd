using System.Globalization;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>
/// What makes an order of runs weak although it can be driven. Weather, tyres and people drift through the day; runs of
/// the control before, between and after the others let the comparison take a steady drift out (bracketing by a control,
/// as tyre testing does: ASTM F1650, scope).
/// </summary>
public static class OrderDoubts
{
    /// <summary>Brackets that each code should be driven in; common practice, no source.</summary>
    public const int BracketsWanted = 2;

    /// <summary>The doubts in words, the gravest first; empty for a good order.</summary>
    /// <param name="order">The order by place.</param>
    /// <param name="specCount">How many specs are compared.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<Place> order, int specCount)
    {
        ArgumentNullException.ThrowIfNull(order);
        List<string> doubts = [];
        doubts.AddRange(Enumerable.Range(0, specCount).Select(index => new Place(index))
            .Where(place => !order.Contains(place)).Select(place => OrderDoubtWords.PlaceIsNeverDriven(place)));
        if (order.Count > 0 && !(order[0].IsReference && order[^1].IsReference))
        {
            doubts.Add(OrderDoubtWords.OrderNotFramedByReference);
        }

        foreach (Place place in Candidates(order))
        {
            doubts.AddRange(new[] { DoubtOfBrackets(order, place), DoubtOfDrift(order, place) }.OfType<string>());
        }

        return doubts;
    }

    /// <summary>In how many brackets, from one run of R to the next, a place is driven.</summary>
    public static int BracketsOf(IReadOnlyList<Place> order, Place place)
    {
        ArgumentNullException.ThrowIfNull(order);
        int brackets = 0;
        bool isOpen = false;
        bool isIn = false;
        foreach (Place run in order)
        {
            if (run.IsReference)
            {
                brackets += isOpen && isIn ? 1 : 0;
                (isOpen, isIn) = (true, false);
            }

            isIn |= run == place;
        }

        return brackets;
    }

    private static IEnumerable<Place> Candidates(IReadOnlyList<Place> order) =>
        order.Contains(Place.Reference) ? order.Where(place => !place.IsReference).Distinct().OrderBy(place => place.Index) : [];

    private static string? DoubtOfBrackets(IReadOnlyList<Place> order, Place place)
    {
        int brackets = BracketsOf(order, place);
        return brackets >= BracketsWanted
            ? null
            : OrderDoubtWords.PlaceInTooFewBrackets(place, brackets, brackets == 1 ? "" : "s", BracketsWanted);
    }

    private static string? DoubtOfDrift(IReadOnlyList<Place> order, Place place)
    {
        // runs count as equally spaced: a steady drift cancels where both are driven, on average, at the same time; where the order is
        // long enough the comparison takes it out, which costs a degree of freedom and some precision
        double later = MeanPosition(order, place) - MeanPosition(order, Place.Reference);
        string runs = Math.Abs(later).ToString("0.##", CultureInfo.CurrentCulture);
        return Math.Abs(later) < 1e-9
            ? null
            : OrderDoubtWords.SteadyDriftDoesNotCancel(
                place, runs, later > 0 ? "later" : "earlier", isTakenOut: RunDesign.TakesDriftOut(order.Count, order.Distinct().Count()));
    }

    private static double MeanPosition(IReadOnlyList<Place> order, Place place) =>
        order.Index().Where(run => run.Item == place).Average(run => run.Index);
}
