using System.Buffers;
using System.Text.Json;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Store.Exports;

/// <summary>The plan as JSON, in the words of <c>plan.toml</c>; its route is the table of segments. Unknown is null.</summary>
internal static class PlanJson
{
    /// <summary>The file of an export.</summary>
    public static ExportFile File { get; } =
        new WrittenFile("plan.json", "application/json", ExportWords.PlanDescription, source => BytesOf(source.Study.Plan!))
        {
            Is = source => source.Study.Plan is not null,
        };

    private static byte[] BytesOf(Plan plan)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, JsonNumbers.Layout))
        {
            json.WriteStartObject();
            Question(json, plan);
            Crew(json, plan);
            Worth(json, plan);
            EnergyDays(json, plan);
            json.Part("limits", plan.Limits, limits => Limits(json, limits));
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private static void Question(Utf8JsonWriter json, Plan plan)
    {
        json.WriteString("study", plan.StudyName);
        json.WriteString("question", plan.Question);
        json.WriteString("main_measure", plan.MainMeasure.ToString().ToLowerInvariant());
        if (plan.MainSegments is { } main)
        {
            json.Texts("main_segments", main);
        }

        json.WriteNumber("specs", plan.SpecCount);
        json.Texts("order", plan.Order.Select(place => place.ToString()));
        json.WriteString("units", plan.Units == UnitSystem.Imperial ? "imperial" : "metric");
        json.Figure("margin_db", plan.MarginDb);
        json.Figure("impact_margin_db", plan.ImpactMarginDb);
        json.Figure("ring_margin_db", plan.RingMarginDb);
        json.WriteStartArray("ring_band_hz");
        json.WriteNumberValue(plan.RingBand.LowerHz);
        json.WriteNumberValue(plan.RingBand.UpperHz);
        json.WriteEndArray();
        json.Figure("calibrator_db", plan.CalibratorDb);
        json.WriteString("protocol", plan.Protocol);
        json.WriteBoolean("covered_until_evening", plan.CoveredUntilEvening);
        json.WriteBoolean("all_pairs", plan.AllPairs == true);
        json.WriteString(
            "aborted_counts",
            plan.AbortRule switch
            {
                AbortRule.Both => "both",
                AbortRule.Neither => "no",
                _ => "repeat",
            }
        );
        json.WriteBoolean("filled_counts", plan.FilledLeftOut != true);
    }

    private static void Crew(Utf8JsonWriter json, Plan plan)
    {
        json.Parts(
            "crew",
            plan.Crew,
            member =>
            {
                json.WriteString("name", member.Name);
                json.WriteString("seat", member.Seat);
            }
        );
        json.WriteString("custodian", plan.Custodian);
        json.Texts("phrases", plan.Phrases);
        json.Texts("attributes", plan.Attributes);
    }

    private static void Worth(Utf8JsonWriter json, Plan plan)
    {
        json.Figure("price_premium", plan.PricePremium);
        json.Figure("price_worth", plan.PriceWorth);
        json.WriteString("currency", plan.Currency.Length == 0 ? null : plan.Currency);
        json.Figure("set_life_km", plan.SetLifeKm);
    }

    private static void EnergyDays(Utf8JsonWriter json, Plan plan)
    {
        json.Figure("energy_margin_percent", plan.Energy.MarginPercent);
        json.Figure("usable_kwh", plan.Energy.Usable is { Carrier: EnergyCarrier.Electricity } battery ? battery.KwhOrLitres : null);
        json.Figure("tank_l", plan.Energy.Usable is { Carrier: EnergyCarrier.Fuel } tank ? tank.KwhOrLitres : null);
        json.Figure("energy_distance_short_km", plan.Energy.DistanceShortKm);
        json.Figure("energy_charge_least_percent", plan.Energy.ChargeLeastPercent);
        json.Figure("consumption_lowest", plan.Energy.ConsumptionLowest);
        json.Figure("consumption_highest", plan.Energy.ConsumptionHighest);
        json.Texts("energy_days", plan.Energy.Days.Select(day => day.ToString()));
    }

    private static void Limits(Utf8JsonWriter json, Limits limits)
    {
        foreach (HeldLimit held in AllLimits.InOrder)
        {
            json.Figure(held.Limit.Name, held.Of(limits));
        }

        json.Part(
            "reasons",
            limits.Reasons,
            reasons =>
            {
                foreach ((string name, string reason) in reasons)
                {
                    json.WriteString(name, reason);
                }
            }
        );
    }
}
