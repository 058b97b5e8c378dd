using System.Globalization;

namespace FieldSession.Comparing;

/// <summary>What a reader has to know beside the numbers of the energy days, in plain words.</summary>
internal static class EnergyRemarks
{
    /// <summary>What holds for all codes.</summary>
    public static IReadOnlyList<string> OfDays(IReadOnlyList<EnergyStretch> stretches, EnergyModel model, EnergyTerms terms) =>
    [
        .. Pairing(stretches, model),
        .. stretches.Where(s => s.DistanceKm < terms.DistanceShortKm)
            .Select(s => $"{Where(s)}: {Number(s.DistanceKm)} km, less than {Number(terms.DistanceShortKm)}: short ways weigh starts and readings too much"),
        .. stretches.Where(s => s.ChargeUsedPercent < terms.ChargeLeastPercent)
            .Select(s => $"{Where(s)}: {Number(s.ChargeUsedPercent!.Value)} % of charge used, less than {Number(terms.ChargeLeastPercent)}: its step is large beside it"),
        .. stretches.Where(s => s.WindMetresPerSecond > terms.WindWarnMetresPerSecond)
            .Select(s => $"{Where(s)}: mean wind {Number(s.WindMetresPerSecond!.Value)} m/s, above {Number(terms.WindWarnMetresPerSecond)}"),
        .. MixedSources(stretches),
    ];

    /// <summary>What holds for one code against the reference.</summary>
    public static IReadOnlyList<string> OfPair(EnergyLine line)
    {
        (bool Holds, string Words)[] all =
        [
            (line.Obstacle == EnergyObstacle.Driver, "each code had its own driver: the difference may be the driver's"),
            (line.ResolutionApplied, "the days agree better than the step of the display allows: the error is raised to what the step allows"),
            (line.StandardError == 0, "no scatter seen at this display resolution: no interval"),
        ];
        return [.. all.Where(remark => remark.Holds).Select(remark => remark.Words)];
    }

    private static IEnumerable<string> Pairing(IReadOnlyList<EnergyStretch> stretches, EnergyModel model)
    {
        if (!model.IsPaired)
        {
            yield return "days not comparable: no two cars drove side by side; air, wind and traffic of the days are in the difference";
            yield return model.TemperaturesKnown
                ? "a straight influence of the air temperature is taken out, nothing else of the days"
                : "the air temperature is not known for every stretch: its influence is not taken out";
            yield break;
        }

        string[] alone = [.. stretches.Except(model.Counted).Select(Where)];
        if (alone.Length > 0)
        {
            yield return $"not comparable, because no other car drove beside, and left out: {string.Join("; ", alone)}";
        }
    }

    private static IEnumerable<string> MixedSources(IReadOnlyList<EnergyStretch> stretches)
    {
        int byCharge = stretches.SelectMany(s => s.Legs).Count(leg => leg.ChargeUsedPercent is not null);
        bool isMixed = byCharge > 0 && byCharge < stretches.Sum(s => s.Legs.Count);
        return isMixed ? ["energy by meter and by state of charge are mixed: they can differ by more than the specs do"] : [];
    }

    private static string Where(EnergyStretch stretch) => $"day {stretch.Day}, car {stretch.Car} on {stretch.Code}";

    private static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
