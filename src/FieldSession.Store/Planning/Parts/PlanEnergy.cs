using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>What the plan says of the energy days: margin, usable capacity, and which car carries which place on which day.</summary>
internal static class PlanEnergy
{
    // nobody drives a comparison of consumption on more days than these
    private const int MostDays = 60;
    private const int LongestDay = 200;

    /// <summary>The words of the plan that are read here.</summary>
    public static IEnumerable<string> Names =>
        [
            "energy_margin_percent",
            "usable_kwh",
            "tank_l",
            "tank_us_gal",
            "tank_imp_gal",
            "energy_days",
            "energy_distance_short_km",
            "energy_charge_least_percent",
            "consumption_lowest",
            "consumption_highest",
        ];

    /// <summary>The plan with what is said of its energy days.</summary>
    public static Plan With(Plan plan, PlanWords words, Troubles troubles) =>
        Names.Any(name => words.Find(name) is not null)
            ? plan with
            {
                EnergyTold = Of(plan.Energy, plan.SpecCount, words, troubles),
            }
            : plan;

    private static EnergyPlan Of(EnergyPlan energy, int specCount, PlanWords words, Troubles troubles) =>
        energy with
        {
            MarginPercent = words.Positive("energy_margin_percent", 50, troubles) ?? energy.MarginPercent,
            Usable = UsableOf(words, troubles),
            Days = DaysOf(words, specCount, troubles),
            DistanceShortKm = words.Positive("energy_distance_short_km", 1000, troubles) ?? energy.DistanceShortKm,
            ChargeLeastPercent = words.Positive("energy_charge_least_percent", 100, troubles) ?? energy.ChargeLeastPercent,
            ConsumptionLowest = words.Positive("consumption_lowest", 1000, troubles) ?? energy.ConsumptionLowest,
            ConsumptionHighest = words.Positive("consumption_highest", 1000, troubles) ?? energy.ConsumptionHighest,
        };

    private static Energy? UsableOf(PlanWords words, Troubles troubles)
    {
        (string Name, EnergyUnit Unit)[] ways =
        [
            ("usable_kwh", EnergyUnit.KilowattHour),
            ("tank_l", EnergyUnit.Litre),
            ("tank_us_gal", EnergyUnit.UsGallon),
            ("tank_imp_gal", EnergyUnit.ImperialGallon),
        ];
        (string Name, EnergyUnit Unit)[] said = [.. ways.Where(way => words.Find(way.Name) is not null)];
        if (said.Length > 1)
        {
            words.Find(said[1].Name)!.Refuse(troubles, $"'{said[1].Name}' beside '{said[0].Name}'", PlanFolderWords.GiveBatteryOrTankOnce);
        }

        return said.Length > 0 && words.Positive(said[0].Name, 400, troubles) is { } amount ? Energy.Of(amount, said[0].Unit) : null;
    }

    private static ImmutableList<EnergyDay> DaysOf(PlanWords words, int specCount, Troubles troubles)
    {
        if (words.Find("energy_days") is not { } word)
        {
            return [];
        }

        if (word.Items is not { Count: > 0 and <= MostDays } items)
        {
            word.Refuse(troubles, $"'energy_days' is {word.Sort}", PlanFolderWords.EnergyDaysForm(MostDays));
            return [];
        }

        List<EnergyDay> days = [];
        foreach (PlanWord item in items)
        {
            Objection? objection = null;
            EnergyDay? day = PlanWords.TextOf(item, LongestDay, troubles) is { } text
                ? EnergyDayText.Parse(text, specCount, out objection)
                : null;
            if (objection is not null)
            {
                item.Refuse(troubles, objection.Why, objection.Instead);
            }
            else if (day is not null)
            {
                days.Add(day);
            }
        }

        foreach (string doubt in EnergyDayText.DoubtsOf(days))
        {
            word.Warn(troubles, doubt, PlanFolderWords.CanBeDriven);
        }

        return [.. days];
    }
}
