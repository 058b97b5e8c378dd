using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>Reads the order of runs by place: <c>R 1 R 1 R</c>, R the reference code, 1, 2, ... the others.</summary>
public static class OrderText
{
    /// <summary>Most runs that an order may name; a long day has twenty.</summary>
    public const int MostRuns = 500;

    /// <summary>The order; null where it is none.</summary>
    /// <param name="text">Places cut by spaces, commas or hyphens.</param>
    /// <param name="specCount">How many specs the plan compares: places go from R to <paramref name="specCount"/> - 1.</param>
    /// <param name="objection">What is wrong and what is allowed; null where the order is good.</param>
    public static ImmutableList<Place>? Parse(string text, int specCount, out Objection? objection)
    {
        ArgumentNullException.ThrowIfNull(text);
        string allowed = PlanningWords.PlacesOfOrderAre(specCount);
        string[] words = text.Split([' ', ',', '-'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        objection = words.Length is 0 or > MostRuns
            ? new Objection(PlanningWords.OrderHasWrongLength(words.Length), PlanningWords.PlacesAndMostRuns(allowed, MostRuns))
            : null;
        List<Place> order = [];
        foreach (string word in objection is null ? words : [])
        {
            if (PlaceOf(word, specCount) is not Place place)
            {
                objection = new Objection(PlanningWords.OrderNamesUnknownPlace(word), allowed);
                return null;
            }

            order.Add(place);
        }

        return objection is null ? [.. order] : null;
    }

    private static Place? PlaceOf(string word, int specCount)
    {
        if (string.Equals(word, "R", StringComparison.OrdinalIgnoreCase))
        {
            return Place.Reference;
        }

        bool isPlace =
            int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index >= 1 && index < specCount;
        return isPlace ? new Place(index) : null;
    }
}

/// <summary>Reads one planned energy day: <c>X=R Y=1</c>, each car with the place whose tyres it carries.</summary>
public static class EnergyDayText
{
    /// <summary>The day; null where it is none.</summary>
    /// <param name="text">Cars with their places, cut by blanks or commas.</param>
    /// <param name="specCount">How many specs the plan compares.</param>
    /// <param name="objection">What is wrong and what is allowed; null where the day is good.</param>
    public static EnergyDay? Parse(string text, int specCount, out Objection? objection)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] words = text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        List<CarFit> fits = [];
        foreach (string word in words)
        {
            string[] halves = word.Split('=');
            if (halves is not [{ Length: > 0 } car, var place] || OrderText.Parse(place, specCount, out _) is not [var only])
            {
                objection = No(PlanningWords.IsNoCarWithPlace(word));
                return null;
            }

            if (fits.Any(fit => CrewMember.SamePerson(fit.Car, car)))
            {
                objection = No(PlanningWords.CarIsThereTwiceOnDay(car));
                return null;
            }

            fits.Add(new CarFit(car, only));
        }

        objection = fits.Count == 0 ? No(PlanningWords.DayNamesNoCar) : null;
        return objection is null ? new EnergyDay([.. fits]) : null;
    }

    /// <summary>What makes planned days weak although they can be driven; empty for good ones.</summary>
    public static IReadOnlyList<string> DoubtsOf(IReadOnlyList<EnergyDay> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        List<string> doubts = [];
        int[] alone = [.. days.Index().Where(day => day.Item.Fits.Count < 2).Select(day => day.Index + 1)];
        if (alone.Length > 0)
        {
            doubts.Add(PlanningWords.CarDrivesAloneOnDays(string.Join(", ", alone)));
        }

        ImmutableList<CarFit> fits = [.. days.SelectMany(day => day.Fits)];
        foreach (IGrouping<Place, CarFit> place in fits.GroupBy(fit => fit.Place).Where(place => !place.Key.IsReference))
        {
            // a swap puts one code on at least two of the cars
            if (place.Select(fit => fit.Car.ToUpperInvariant()).Distinct().Count() < 2)
            {
                doubts.Add(PlanningWords.PlaceStaysOnOneCar(place.Key));
            }
        }

        return doubts;
    }

    private static Objection No(string why) => new(why, PlanningWords.EnergyDayForm);
}
