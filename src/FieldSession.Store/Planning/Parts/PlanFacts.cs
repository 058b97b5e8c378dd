using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads what the plan writes down of car, tyres and meter for whoever reads the report. Nothing is computed from it.</summary>
internal static partial class PlanFacts
{
    private const int Longest = 120;
    private const int MostHours = 14;
    private const int MinutesAnHour = 60;

    /// <summary>The words.</summary>
    public static IReadOnlyList<string> Names => ["car", "tyres_made", "tread", "hardness", "meter", "meter_position", "utc_offset"];

    /// <summary>The plan with these words; without one of them it has no facts.</summary>
    public static Plan With(Plan plan, PlanWords words, Troubles troubles) =>
        Names.All(name => words.Find(name) is null)
            ? plan
            : plan with
            {
                FactsTold = new DayFacts
                {
                    Car = words.Text("car", Longest, troubles),
                    TyresMade = words.Text("tyres_made", Longest, troubles),
                    Tread = words.Text("tread", Longest, troubles),
                    Hardness = words.Text("hardness", Longest, troubles),
                    Meter = words.Text("meter", Longest, troubles),
                    MeterPosition = words.Text("meter_position", Longest, troubles),
                    UtcOffsetMinutes = OffsetOf(words, troubles),
                },
            };

    private static int? OffsetOf(PlanWords words, Troubles troubles)
    {
        if (words.Text("utc_offset", Longest, troubles) is not { } text)
        {
            return null;
        }

        Match match = Offset().Match(text);
        int Part(int group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);
        if (match.Success && Part(2) <= MostHours && Part(3) < MinutesAnHour)
        {
            int minutes = Part(2) * MinutesAnHour + Part(3);
            return match.Groups[1].Value == "-" ? -minutes : minutes;
        }

        words.Find("utc_offset")!.Refuse(troubles, $"'utc_offset' is {Troubles.Quoted(text)}", PlanFolderWords.UtcOffsetForm);
        return null;
    }

    [GeneratedRegex(@"^([+-])(\d\d):(\d\d)$")]
    private static partial Regex Offset();
}

/// <summary>Reads the table <c>[limits]</c>: what the checks hold the day against.</summary>
internal static class PlanLimits
{
    private const string Table = "limits.";
    private const string Reasons = "limits.reasons.";
    private const int LongestReason = 200;

    /// <summary>The names of all limits, with their table.</summary>
    public static IEnumerable<string> Names => [.. LimitNames.Select(name => Table + name), .. LimitNames.Select(name => Reasons + name)];

    private static IEnumerable<string> LimitNames => AllLimits.InOrder.Select(held => held.Limit.Name);

    /// <summary>The limits of a plan; what it does not say keeps its default.</summary>
    public static Limits Of(PlanWords words, Troubles troubles)
    {
        Limits limits = new();
        foreach ((Limit limit, _, Func<Limits, double, Limits> set) in AllLimits.InOrder)
        {
            limits = words.Number(Table + limit.Name, limit.Lowest, limit.Highest, troubles) is { } number ? set(limits, number) : limits;
        }

        return limits with
        {
            Reasons = ReasonsOf(words, troubles),
        };
    }

    private static ImmutableSortedDictionary<string, string>? ReasonsOf(PlanWords words, Troubles troubles)
    {
        ImmutableSortedDictionary<string, string> reasons = ImmutableSortedDictionary<string, string>.Empty;
        foreach (string name in LimitNames)
        {
            if (words.Find(Table + name) is not { } changed)
            {
                continue;
            }

            if (words.Text(Reasons + name, LongestReason, troubles) is { } reason)
            {
                reasons = reasons.Add(name, reason);
            }
            else
            {
                changed.Warn(
                    troubles,
                    $"the limit '{name}' is changed without a reason",
                    $"write it under [limits.reasons]: {name} = \"why\""
                );
            }
        }

        return reasons.IsEmpty ? null : reasons;
    }
}

/// <summary>The words that a plan may hold, and what becomes of others.</summary>
internal static class PlanNames
{
    private static IEnumerable<string> Known =>
        [
            "study",
            "question",
            "specs",
            "order",
            "units",
            "margin_db",
            "impact_margin_db",
            "ring_margin_db",
            "ring_band_hz",
            "crew",
            "custodian",
            "cars",
            "car_order",
            "archive",
            "driver_order",
            "tyre_size",
            "required_checks",
            "rerun_counts",
            "aborted_counts",
            "filled_counts",
            "pressure_front_kpa",
            "pressure_rear_kpa",
            "pressure_front_psi",
            "pressure_rear_psi",
            "phrases",
            "attributes",
            "protocol",
            "calibrator_db",
            "covered_until_evening",
            "covered",
            "all_pairs",
            "main_measure",
            "main_segments",
            "price_premium",
            "price_worth",
            "currency",
            "set_life_km",
        ];

    /// <summary>Refuses words that are nearly known, and warns of words that nobody knows: they may be another program's.</summary>
    public static void Check(PlanWords words, Troubles troubles)
    {
        string[] known = [.. Known, .. PlanFacts.Names, .. PlanEnergy.Names, .. PlanLimits.Names];
        IEnumerable<(string Name, int Line)> written = words
            .Words.Select(word => (word.Name, word.Line))
            .Concat(words.Repeated.Where(table => table.Name != "crew").Select(table => (table.Name, table.Line)))
            .Concat(words.Words.Where(word => word.Name == "crew").SelectMany(word => word.Items ?? []).SelectMany(InCrew))
            .Concat(
                words
                    .Repeated.Where(table => table.Name == "crew")
                    .SelectMany(table => table.Words)
                    .Select(word => ($"crew.{word.Name}", word.Line))
            );
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
