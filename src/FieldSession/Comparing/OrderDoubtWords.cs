using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>What is said of an order of runs before it is driven.</summary>
internal static class OrderDoubtWords
{
    // The order and the cars
    public const string OrderNotFramedByReference = "the order does not begin and end with R: runs outside a bracket rest on the fit of the drift alone";
    public const string NoRunNamesItsCar = "two cars, and no run says which one drives it: car and tyre are told apart only if every place is driven in both";

    public static string PlaceIsNeverDriven(Place place) => $"spec {place} is never driven";

    public static string PlaceInTooFewBrackets(Place place, int brackets, string plural, int bracketsWanted) => $"spec {place} has {brackets} bracket{plural} from R to R; use at least {bracketsWanted}";

    public static string SteadyDriftDoesNotCancel(Place place, string runs, string laterOrEarlier, bool isTakenOut) => $"a steady drift does not cancel{(isTakenOut ? " by itself" : "")}: spec {place} is driven on average {runs} runs {laterOrEarlier} than R; {(isTakenOut ? "the comparison takes it out, at a price in precision; " : "")}R 1 R or R 1 2 R 2 1 R cancel it";

    public static string CarAndTyreAreNotSeparated(IGrouping<Place, string> carsOfPlace) => $"car and tyre are not separated: place {carsOfPlace.Key} is only driven in {carsOfPlace.First()}";
}
