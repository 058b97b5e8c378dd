using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Measures;

namespace FieldSession.Store.Exports;

/// <summary>
/// The member 'energy' of the comparison as JSON: differences in percent of energy, positive means more. Unknown is null.
/// </summary>
internal static class EnergyJson
{
    /// <summary>Writes the members of the object.</summary>
    public static void Write(Utf8JsonWriter json, EnergyComparison days)
    {
        json.WriteString("reference", days.Reference);
        json.Figure("margin_percent", days.MarginPercent);
        json.WriteString("carrier", days.Carrier == EnergyCarrier.Electricity ? "electricity" : "fuel");
        json.WriteNumber("legs", days.Legs);
        json.WriteNumber("spoilt", days.Spoilt);
        json.Parts("codes", days.Codes, code => Code(json, code));
        json.Parts("cars", days.Cars, car => Car(json, car));
        json.Parts("comparisons", days.Findings, finding => Finding(json, finding));
        json.Parts("stretches", days.Stretches, stretch => Stretch(json, stretch));
        json.Texts("remarks", days.Remarks);
    }

    private static void Code(Utf8JsonWriter json, CodeConsumption code)
    {
        json.WriteString("code", code.Code);
        json.WriteNumber("stretches", code.Stretches);
        json.Figure("distance_km", code.DistanceKm);
        json.Figure("energy", code.KwhOrLitres);
        json.Figure("per_100_km", code.PerHundredKm);
    }

    private static void Car(Utf8JsonWriter json, CarDifference car)
    {
        json.WriteString("car", car.Car);
        json.WriteString("reference", car.FirstCar);
        json.Figure("percent", car.Percent);
    }

    private static void Finding(Utf8JsonWriter json, EnergyFinding finding)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("reference", finding.Reference);
        json.Part("overall", finding.Estimate, estimate => Estimate(json, estimate));
        json.Part("with_spoilt", finding.WithSpoilt, estimate => Estimate(json, estimate));
        json.Count("more_days_as_seen", finding.MoreDaysAsSeen);
        json.Count("more_days_cautious", finding.MoreDaysCautious);
        json.Part("range_km", finding.Range, range => Range(json, range));
        json.WriteString("verdict", finding.Verdict);
        json.Figure("verdict_adjusted_p", finding.PAmongAll);
        json.Texts("remarks", finding.Remarks);
    }

    private static void Estimate(Utf8JsonWriter json, EnergyEstimate estimate)
    {
        json.Figure("log_ratio", estimate.LogRatio);
        json.Figure("se", estimate.StandardError);
        json.WriteNumber("df", estimate.Df);
        json.Figure("percent", estimate.Percent);
        json.Figure("lo95_percent", estimate.Lo95Percent);
        json.Figure("hi95_percent", estimate.Hi95Percent);
        json.Figure("p", estimate.P);
        json.Figure("lo90_percent", estimate.Lo90Percent);
        json.Figure("hi90_percent", estimate.Hi90Percent);
        json.Figure("p_tost", estimate.PTost);
        json.Figure("s_stretch_percent", estimate.StretchScatterPercent);
        json.Figure("mdd80_percent", estimate.Mdd80Percent);
        json.WriteBoolean("resolution_applied", estimate.ResolutionApplied);
    }

    private static void Range(Utf8JsonWriter json, EnergyRange range)
    {
        json.Figure("usable", range.Usable);
        json.Figure("reference", range.ReferenceKm);
        json.Figure("code", range.Km);
        json.Figure("lo95", range.Lo95Km);
        json.Figure("hi95", range.Hi95Km);
    }

    private static void Stretch(Utf8JsonWriter json, EnergyStretch stretch)
    {
        json.WriteNumber("day", stretch.Day);
        json.WriteNumber("slot", stretch.Slot);
        json.WriteString("car", stretch.Car);
        json.WriteString("code", stretch.Code);
        json.WriteNumber("legs", stretch.Legs.Count);
        json.Figure("distance_km", stretch.DistanceKm);
        json.Figure("energy", stretch.KwhOrLitres);
        json.Figure("per_100_km", stretch.PerHundredKm);
    }
}
