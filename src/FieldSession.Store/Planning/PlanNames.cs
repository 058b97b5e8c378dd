using FieldSession.Journal;

namespace FieldSession.Store.Planning;

/// <summary>The words that a plan may hold, and what becomes of others.</summary>
internal static class PlanNames
{
    private static IEnumerable<string> Known =>
    [
        "study", "question", "specs", "order", "units", "margin_db", "impact_margin_db", "ring_margin_db", "ring_band_hz", "crew", "custodian", "cars", "car_order", "archive", "driver_order", "tyre_size", "required_checks", "rerun_counts", "aborted_counts", "filled_counts",
        "pressure_front_kpa", "pressure_rear_kpa", "pressure_front_psi", "pressure_rear_psi", "phrases", "attributes",
        "protocol", "calibrator_db", "covered_until_evening", "covered", "all_pairs", "main_measure", "main_segments", "price_premium", "price_worth", "currency", "set_life_km",
    ];

    /// <summary>Refuses words that are nearly known, and warns of words that nobody knows: they may be another program's.</summary>
    public static void Check(PlanWords words, Troubles troubles)
    {
        string[] known = [.. Known, .. PlanFacts.Names, .. PlanEnergy.Names, .. PlanLimits.Names];
        IEnumerable<(string Name, int Line)> written = words.Words.Select(word => (word.Name, word.Line))
            .Concat(words.Repeated.Where(table => table.Name != "crew").Select(table => (table.Name, table.Line)))
            .Concat(words.Words.Where(word => word.Name == "crew").SelectMany(word => word.Items ?? []).SelectMany(InCrew))
            .Concat(words.Repeated.Where(table => table.Name == "crew").SelectMany(table => table.Words).Select(word => ($"crew.{word.Name}", word.Line)));
        foreach ((string name, int line) in written)
        {
            Check(name, line, name.StartsWith("crew.", StringComparison.Ordinal) ? ["crew.name", "crew.seat"] : known, troubles);
        }
    }

    private static void Check(string name, int line, string[] known, Troubles troubles)
    {
        if (known.Contains(name, StringComparer.Ordinal))
        {
            return;
        }

        if (NearWord.Of(name.ToLowerInvariant(), known) is { } near)
        {
            troubles.Refuse(PlanFile.Plan, line, null, PlanFolderWords.UnknownWord(name), PlanFolderWords.DidYouMean(near));
            return;
        }

        troubles.Warn(PlanFile.Plan, line, null, PlanFolderWords.UnknownWord(name), PlanFolderWords.UnknownWordIsPassedOver);
    }

    private static IEnumerable<(string Name, int Line)> InCrew(PlanWord item) =>
        (item.Members ?? []).Select(word => ($"crew.{word.Name}", word.Line));
}
