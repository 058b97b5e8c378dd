using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.Sealing;
using FieldSession.State;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>Makes the plan of the words and the route. What the plan does not say has the plan's own default.</summary>
internal static class PlanDraft
{
    /// <summary>The plan; of use only where no trouble was found.</summary>
    public static Plan Of(PlanWords words, string folderName, RouteReading? route, Troubles troubles)
    {
        PlanNames.Check(words, troubles);
        int specs = SpecsOf(words, troubles);
        ImmutableList<CrewMember> crew = PlanCrew.Of(words, troubles);
        Plan plan = new()
        {
            StudyName = StudyOf(words, folderName, troubles),
            SpecCount = specs,
            Order = OrderOf(words, specs, troubles),
            Route = route?.Segments ?? [],
            Units = UnitsOf(words, route, troubles),
            Crew = crew,
            Custodian = PlanCrew.CustodianOf(words, crew, troubles),
            Limits = PlanLimits.Of(words, troubles),
        };
        plan = PlanTyres.With(PlanOrder.With(PlanMain.With(plan, words, troubles), words, troubles), words, troubles);
        return PlanFacts.With(
            PlanEnergy.With(WithWorth(WithWords(WithMargins(plan, words, troubles), words, troubles), words, troubles), words, troubles),
            words,
            troubles
        );
    }

    private static Plan WithMargins(Plan plan, PlanWords words, Troubles troubles) =>
        plan with
        {
            MarginDb = words.Positive("margin_db", 20, troubles) ?? plan.MarginDb,
            ImpactMarginDb = words.Positive("impact_margin_db", 20, troubles) ?? plan.ImpactMarginDb,
            RingMarginToldDb = words.Positive("ring_margin_db", 20, troubles),
            RingBandTold = PlanRing.BandOf(words, troubles),
            CalibratorDb = words.Number("calibrator_db", 60, 130, troubles) ?? plan.CalibratorDb,
        };

    private static Plan WithWords(Plan plan, PlanWords words, Troubles troubles) =>
        plan with
        {
            Question = words.Text("question", 400, troubles) ?? plan.Question,
            Phrases = words.Texts("phrases", 9, 120, troubles)?.ToImmutableList() ?? plan.Phrases,
            Attributes = words.Texts("attributes", 20, 60, troubles)?.ToImmutableList() ?? plan.Attributes,
            Protocol = words.Text("protocol", 400, troubles) ?? plan.Protocol,
            AllPairs = words.YesNo("all_pairs", troubles) ?? plan.AllPairs,
            CoveredUntilEvening = CoveredOf(words, troubles) ?? plan.CoveredUntilEvening,
        };

    // the short word and the long one
    private static bool? CoveredOf(PlanWords words, Troubles troubles)
    {
        bool? brief = words.YesNo("covered", troubles);
        bool? full = words.YesNo("covered_until_evening", troubles);
        if (brief is not null && full is not null && brief != full)
        {
            words.Find("covered")!.Refuse(troubles, PlanFolderWords.CoveredIsThereTwice, PlanFolderWords.WriteOneOfThem);
        }

        return brief ?? full;
    }

    private static Plan WithWorth(Plan plan, PlanWords words, Troubles troubles) =>
        plan with
        {
            PricePremium = words.Number("price_premium", 0, 1e9, troubles),
            PriceWorth = words.Number("price_worth", 0, 1e9, troubles),
            Currency = words.Text("currency", 20, troubles) ?? plan.Currency,
            SetLifeKm = words.Positive("set_life_km", 1e6, troubles),
        };

    private static string StudyOf(PlanWords words, string folderName, Troubles troubles)
    {
        string name = words.Text("study", SealableText.Longest, troubles) ?? folderName;
        if (SealableText.FaultIn(name) is { } fault)
        {
            troubles.Refuse(
                PlanFile.Plan,
                words.Find("study")?.Line,
                null,
                PlanFolderWords.StudyNameIsRefused(fault),
                $"'study' is {SealableText.Allowed}"
            );
        }

        return name;
    }

    private static int SpecsOf(PlanWords words, Troubles troubles)
    {
        string allowed = PlanFolderWords.SpecsForm;
        PlanWord? word = words.Find("specs");
        if (word is null)
        {
            troubles.Refuse(PlanFile.Plan, null, null, PlanFolderWords.SpecsIsMissing, allowed);
        }
        else if (word.Value is not IntegerValueSyntax { Value: >= SpecList.Fewest and <= SpecList.Most })
        {
            string what =
                word.Value is IntegerValueSyntax many ? $"{many.Value}"
                : word.Value is FloatValueSyntax ? PlanFolderWords.NoWholeNumber
                : word.Sort;
            word.Refuse(troubles, $"'specs' is {what}", PlanFolderWords.SpecsFormWithoutNames(allowed));
        }

        return word?.Value is IntegerValueSyntax { Value: >= SpecList.Fewest and <= SpecList.Most } whole ? (int)whole.Value : 0;
    }

    private static ImmutableList<Place> OrderOf(PlanWords words, int specs, Troubles troubles)
    {
        if (words.Find("order") is not { } word)
        {
            troubles.Refuse(PlanFile.Plan, null, null, PlanFolderWords.OrderIsMissing, PlanFolderWords.OrderForm);
            return [];
        }

        if (words.Text("order", 4000, troubles) is not { } text)
        {
            return [];
        }

        // without a number of specs no place can be called unknown
        ImmutableList<Place>? order = OrderText.Parse(text, specs == 0 ? SpecList.Most : specs, out Objection? objection);
        if (objection is not null)
        {
            word.Refuse(troubles, objection.Why, objection.Instead);
        }

        return order ?? [];
    }

    private static UnitSystem UnitsOf(PlanWords words, RouteReading? route, Troubles troubles)
    {
        string? written = words.Text("units", 20, troubles)?.ToLowerInvariant();
        if (written is not (null or "metric" or "imperial"))
        {
            words.Find("units")?.Refuse(troubles, $"'units' is {Troubles.Quoted(written)}", PlanFolderWords.UnitsForm);
        }

        bool isImperial = written is null ? route?.IsImperial == true : written == "imperial";
        return isImperial ? UnitSystem.Imperial : UnitSystem.Metric;
    }
}
