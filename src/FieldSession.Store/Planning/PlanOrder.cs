using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads which cars there are, and which car and which driver take each run of the order.</summary>
internal static class PlanOrder
{
    private const int MostCars = 2;
    private const int LongestPath = 400;
    private const int LongestName = 40;

    /// <summary>The plan with its cars and its sharing of runs.</summary>
    public static Plan With(Plan plan, PlanWords words, Troubles troubles)
    {
        ImmutableList<string>? cars = words.Texts("cars", MostCars, LongestName, troubles)?.ToImmutableList();
        Plan withCars = plan with { Cars = cars is { Count: > 1 } ? cars : null, Archive = words.Text("archive", LongestPath, troubles) };
        return withCars with
        {
            CarOrder = Shared(words, "car_order", cars ?? [], plan.Order.Count, troubles),
            DriverOrder = Shared(words, "driver_order", [.. plan.Crew.Select(member => member.Name)], plan.Order.Count, troubles),
        };
    }

    private static ImmutableList<string>? Shared(PlanWords words, string name, ImmutableList<string> known, int runs, Troubles troubles)
    {
        if (words.Find(name) is not { Items: { } items } word)
        {
            words.Find(name)?.Refuse(troubles, PlanFolderWords.IsNoList(name), PlanFolderWords.NameOfEachRunForm(name));
            return null;
        }

        string[] texts = [.. items.Select(item => PlanWords.TextOf(item, LongestName, troubles)).OfType<string>()];
        if (texts.FirstOrDefault(text => !known.Contains(text, StringComparer.OrdinalIgnoreCase)) is { } unknown)
        {
            word.Refuse(troubles, $"'{name}' names {Troubles.Quoted(unknown)}", known.Count == 0 ? PlanFolderWords.NameCarsFirst : $"known are {string.Join(", ", known)}");
        }
        else if (texts.Length != runs && runs > 0)
        {
            word.Refuse(troubles, PlanFolderWords.NamesDoNotMatchRuns(name, texts, runs), PlanFolderWords.NameOneForEachRun);
        }

        return [.. texts];
    }
}
