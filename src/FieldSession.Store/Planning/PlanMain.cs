using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.State;

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
