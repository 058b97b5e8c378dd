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
        doubts.AddRange(
            Enumerable
                .Range(0, specCount)
                .Select(index => new Place(index))
                .Where(place => !order.Contains(place))
                .Select(place => OrderDoubtWords.PlaceIsNeverDriven(place))
        );
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
                place,
                runs,
                later > 0 ? "later" : "earlier",
                isTakenOut: RunDesign.TakesDriftOut(order.Count, order.Distinct().Count())
            );
    }

    private static double MeanPosition(IReadOnlyList<Place> order, Place place) =>
        order.Index().Where(run => run.Item == place).Average(run => run.Index);
}

/// <summary>What makes a plan weak although it can be driven: said before the first run, and again in the report.</summary>
public static class PlanDoubts
{
    /// <summary>Every weakness in words, the order's first; empty for a good plan.</summary>
    public static IEnumerable<string> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. OrderDoubts.Of(plan.Order, plan.SpecCount),
            .. OfCars(plan) is { } cars ? [cars] : Array.Empty<string>(),
            .. plan.Route.Select(segment => OfSegment(segment, plan)).OfType<string>(),
        ];
    }

    /// <summary>Why car and tyre can't be told apart; null: one car, or the tyres change between them.</summary>
    public static string? OfCars(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Cars is null)
        {
            return null;
        }

        if (plan.CarOrder is not { } cars)
        {
            return OrderDoubtWords.NoRunNamesItsCar;
        }

        IGrouping<Place, string>? split = plan
            .Order.Zip(cars)
            .GroupBy(run => run.First, run => run.Second)
            .FirstOrDefault(runs => runs.Distinct(StringComparer.OrdinalIgnoreCase).Count() == 1);
        return split is null ? null : OrderDoubtWords.CarAndTyreAreNotSeparated(split);
    }

    /// <summary>Why a segment is weak; null: it is long enough, or an impact, where one peak is read.</summary>
    public static string? OfSegment(Segment segment, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(segment);
        ArgumentNullException.ThrowIfNull(plan);
        return segment.Kind.IsImpact || segment.Seconds >= plan.Limits.SegmentShortestSeconds
            ? null
            : $"'{segment.Name}' lasts {segment.Seconds:0.0} s at {segment.Speed.In(plan.Units)}";
    }
}

/// <summary>What is said of an order of runs before it is driven.</summary>
internal static class OrderDoubtWords
{
    // The order and the cars
    public const string OrderNotFramedByReference =
        "the order does not begin and end with R: runs outside a bracket rest on the fit of the drift alone";
    public const string NoRunNamesItsCar =
        "two cars, and no run says which one drives it: car and tyre are told apart only if every place is driven in both";

    public static string PlaceIsNeverDriven(Place place) => $"spec {place} is never driven";

    public static string PlaceInTooFewBrackets(Place place, int brackets, string plural, int bracketsWanted) =>
        $"spec {place} has {brackets} bracket{plural} from R to R; use at least {bracketsWanted}";

    public static string SteadyDriftDoesNotCancel(Place place, string runs, string laterOrEarlier, bool isTakenOut) =>
        $"a steady drift does not cancel{(isTakenOut ? " by itself" : "")}: spec {place} is driven on average {runs} runs "
        + $"{laterOrEarlier} than R; {(isTakenOut ? "the comparison takes it out, at a price in precision; " : "")}R 1 R or "
        + "R 1 2 R 2 1 R cancel it";

    public static string CarAndTyreAreNotSeparated(IGrouping<Place, string> carsOfPlace) =>
        $"car and tyre are not separated: place {carsOfPlace.Key} is only driven in {carsOfPlace.First()}";
}
