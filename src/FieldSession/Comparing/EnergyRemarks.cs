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
            .Select(s => EnergyRemarkWords.StretchIsShort(Where(s), Number(s.DistanceKm), Number(terms.DistanceShortKm))),
        .. stretches.Where(s => s.ChargeUsedPercent < terms.ChargeLeastPercent)
            .Select(s => EnergyRemarkWords.LittleChargeUsed(Where(s), Number(s.ChargeUsedPercent!.Value), Number(terms.ChargeLeastPercent))),
        .. stretches.Where(s => s.WindMetresPerSecond > terms.WindWarnMetresPerSecond)
            .Select(s => EnergyRemarkWords.MeanWindIsStrong(Where(s), Number(s.WindMetresPerSecond!.Value), Number(terms.WindWarnMetresPerSecond))),
        .. MixedSources(stretches),
    ];

    /// <summary>What holds for one code against the reference.</summary>
    public static IReadOnlyList<string> OfPair(EnergyLine line)
    {
        (bool Holds, string Words)[] all =
        [
            (line.Obstacle == EnergyObstacle.Driver, EnergyRemarkWords.EachCodeHadItsOwnDriver),
            (line.ResolutionApplied, EnergyRemarkWords.DaysAgreeBetterThanDisplayStep),
            (line.StandardError == 0, ConclusionWords.NoScatterNoInterval),
        ];
        return [.. all.Where(remark => remark.Holds).Select(remark => remark.Words)];
    }

    private static IEnumerable<string> Pairing(IReadOnlyList<EnergyStretch> stretches, EnergyModel model)
    {
        if (!model.IsPaired)
        {
            yield return EnergyRemarkWords.NoCarsSideBySide;
            yield return model.TemperaturesKnown
                ? EnergyRemarkWords.AirTemperatureIsTakenOut
                : EnergyRemarkWords.AirTemperatureNotKnownThroughout;
            yield break;
        }

        string[] alone = [.. stretches.Except(model.Counted).Select(Where)];
        if (alone.Length > 0)
        {
            yield return EnergyRemarkWords.StretchesDrivenAlone(string.Join("; ", alone));
        }
    }

    private static IEnumerable<string> MixedSources(IReadOnlyList<EnergyStretch> stretches)
    {
        int byCharge = stretches.SelectMany(s => s.Legs).Count(leg => leg.ChargeUsedPercent is not null);
        bool isMixed = byCharge > 0 && byCharge < stretches.Sum(s => s.Legs.Count);
        return isMixed ? [EnergyRemarkWords.MeterAndStateOfChargeMixed] : [];
    }

    private static string Where(EnergyStretch stretch) => EnergyRemarkWords.NameOfStretch(stretch);

    private static string Number(double number) => number.ToString("0.#", CultureInfo.CurrentCulture);
}
