using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Signals;
using FieldSession.State;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>Reads what the day's one question is answered on: the main measure, and the segments where only some of them count.</summary>
internal static class PlanMain
{
    private const int MostSegments = 1000;
    private const int LongestName = 120;

    /// <summary>The plan with its main measure and main segments; it has its route already.</summary>
    public static Plan With(Plan plan, PlanWords words, Troubles troubles)
    {
        Plan measured = plan with { MainMeasure = MeasureOf(words, troubles) ?? plan.MainMeasure };
        return measured with { MainSegments = SegmentsOf(measured, words, troubles) };
    }

    private static ImmutableList<string>? SegmentsOf(Plan plan, PlanWords words, Troubles troubles)
    {
        // without a route no name can be called unknown
        if (words.Texts("main_segments", MostSegments, LongestName, troubles) is not { } names || plan.Route.IsEmpty)
        {
            return null;
        }

        ImmutableList<string>? main = MainSegmentNames.On(names, plan.Route, plan.MainMeasure, out Objection? objection);
        if (objection is not null)
        {
            words.Find("main_segments")!.Refuse(troubles, objection.Why, objection.Instead);
        }

        return main;
    }

    private static MainMeasure? MeasureOf(PlanWords words, Troubles troubles)
    {
        string? word = words.Text("main_measure", 20, troubles);
        MainMeasure? measure = word?.ToLowerInvariant() switch
        {
            "steady" => MainMeasure.Steady,
            "impact" => MainMeasure.Impact,
            "all" => MainMeasure.All,
            _ => null,
        };
        if (word is null || measure is not null)
        {
            return measure;
        }

        words.Find("main_measure")!.Refuse(troubles, $"'main_measure' is {Troubles.Quoted(word)}", PlanFolderWords.MainMeasureForm);
        return null;
    }
}

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
            word.Refuse(
                troubles,
                $"'{name}' names {Troubles.Quoted(unknown)}",
                known.Count == 0 ? PlanFolderWords.NameCarsFirst : $"known are {string.Join(", ", known)}"
            );
        }
        else if (texts.Length != runs && runs > 0)
        {
            word.Refuse(troubles, PlanFolderWords.NamesDoNotMatchRuns(name, texts, runs), PlanFolderWords.NameOneForEachRun);
        }

        return [.. texts];
    }
}

/// <summary>Reads the ring band of a plan: <c>ring_band_hz = [178, 282]</c>.</summary>
internal static class PlanRing
{
    private const double LowestHz = 100;
    private const double HighestHz = 400;
    private const double NarrowestHz = 20;

    /// <summary>The band; null: not told, or refused.</summary>
    public static FrequencyBand? BandOf(PlanWords words, Troubles troubles)
    {
        if (words.Find("ring_band_hz") is not { } word)
        {
            return null;
        }

        double?[] edges = [.. (word.Items ?? []).Select(NumberOf)];
        if (edges is [{ } low, { } high] && low >= LowestHz && high <= HighestHz && high - low >= NarrowestHz)
        {
            return new(low, high);
        }

        word.Refuse(troubles, PlanFolderWords.RingBandIsNone, PlanFolderWords.RingBandForm);
        return null;
    }

    private static double? NumberOf(PlanWord item) =>
        item.Value switch
        {
            IntegerValueSyntax whole => whole.Value,
            FloatValueSyntax real => real.Value,
            _ => null,
        };
}
