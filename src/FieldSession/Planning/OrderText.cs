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
        objection = words.Length is 0 or > MostRuns ? new Objection(PlanningWords.OrderHasWrongLength(words.Length), PlanningWords.PlacesAndMostRuns(allowed, MostRuns)) : null;
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

        bool isPlace = int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index >= 1 && index < specCount;
        return isPlace ? new Place(index) : null;
    }
}
