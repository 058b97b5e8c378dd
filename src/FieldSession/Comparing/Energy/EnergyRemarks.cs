using System.Globalization;

namespace FieldSession.Comparing;

/// <summary>What a reader has to know beside the numbers of the energy days, in plain words.</summary>
internal static class EnergyRemarks
{
    /// <summary>What holds for all codes.</summary>
    public static IReadOnlyList<string> OfDays(IReadOnlyList<EnergyStretch> stretches, EnergyModel model, EnergyTerms terms) =>
        [
            .. Pairing(stretches, model),
            .. stretches
                .Where(s => s.DistanceKm < terms.DistanceShortKm)
                .Select(s => EnergyRemarkWords.StretchIsShort(Where(s), Number(s.DistanceKm), Number(terms.DistanceShortKm))),
            .. stretches
                .Where(s => s.ChargeUsedPercent < terms.ChargeLeastPercent)
                .Select(s =>
                    EnergyRemarkWords.LittleChargeUsed(Where(s), Number(s.ChargeUsedPercent!.Value), Number(terms.ChargeLeastPercent))
                ),
            .. stretches
                .Where(s => s.WindMetresPerSecond > terms.WindWarnMetresPerSecond)
                .Select(s =>
                    EnergyRemarkWords.MeanWindIsStrong(
                        Where(s),
                        Number(s.WindMetresPerSecond!.Value),
                        Number(terms.WindWarnMetresPerSecond)
                    )
                ),
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

/// <summary>What is said beside the figures of energy days.</summary>
internal static class EnergyRemarkWords
{
    // Energy days
    public const string EnergyWordsAllowForAllCodes =
        "several codes are asked at once: the words allow for all of them (Holm), each interval is for its code alone";
    public const string EachCodeHadItsOwnDriver = "each code had its own driver: the difference may be the driver's";
    public const string DaysAgreeBetterThanDisplayStep =
        "the days agree more closely than the display can show: the error is raised to match";
    public const string NoCarsSideBySide =
        "days not comparable: no two cars drove side by side; air, wind and traffic of the days are in the difference";
    public const string AirTemperatureIsTakenOut = "a straight influence of the air temperature is taken out, nothing else of the days";
    public const string AirTemperatureNotKnownThroughout =
        "the air temperature is not known for every stretch: its influence is not taken out";
    public const string MeterAndStateOfChargeMixed =
        "energy by meter and by state of charge are mixed: they can differ by more than the specs do";
    public const string CodeNotDrivenBesideAnother = "not comparable: a code was not driven beside another car";
    public const string NoDaysLeadBetweenCodes = "not comparable: no days lead from one code to the other";
    public const string TyresAndCarNotSeparated =
        "not comparable: tyres and car cannot be told apart, the tyres were not swapped between the cars";
    public const string TyresAndDriverNotSeparated = "not comparable: tyres and driver cannot be told apart";
    public const string NoSecondCarBeside = "days are not comparable: no second car drove beside";
    public const string TooFewDaysForAnyInterval = "too few days for any interval";
    public const string TooFewDaysToTrust = "too few days: one comparison of like with like gives no interval that can be trusted";
    public const string EnergyDaysNotFinished = "the planned energy days are not driven to their end";
    public const string WithinNoiseOfMethod = "within the noise of the method: these days can neither show a difference nor rule one out";

    public static string NoLegOnReferenceYet(string askedReference, string reference) =>
        $"no leg on the reference {askedReference} yet: compared with {reference}";

    public static string StretchIsShort(string stretch, string distanceKm, string leastKm) =>
        $"{stretch}: {distanceKm} km, less than {leastKm}: on short legs starts and readings count too much";

    public static string LittleChargeUsed(string stretch, string usedPercent, string leastPercent) =>
        $"{stretch}: {usedPercent} % of charge used, less than {leastPercent}: the display's step is too coarse for that";

    public static string MeanWindIsStrong(string stretch, string windMetresPerSecond, string limitMetresPerSecond) =>
        $"{stretch}: mean wind {windMetresPerSecond} m/s, above {limitMetresPerSecond}";

    public static string StretchesDrivenAlone(string stretches) =>
        $"not comparable, because no other car drove alongside, and left out: {stretches}";

    public static string NameOfStretch(EnergyStretch stretch) => $"day {stretch.Day}, car {stretch.Car} on {stretch.Code}";
}
