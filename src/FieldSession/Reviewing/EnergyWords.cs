using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Measures;

namespace FieldSession.Reviewing;

/// <summary>The blind comparison of the energy days as plain text of 80 columns. Codes only, nobody's identity.</summary>
public static class EnergyWords
{
    /// <summary>The lines of the text.</summary>
    /// <param name="days">What was found.</param>
    /// <param name="units">The crew's units.</param>
    public static IReadOnlyList<string> Of(EnergyComparison days, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(days);
        return
        [
            $"Energy days, reference {days.Reference}",
            .. PlainLines.Wrapped(
                "",
                $"Legs: {days.Legs} driven, {days.Spoilt} left out as spoilt. Margin: "
                    + $"{days.MarginPercent.ToString("0.####", CultureInfo.CurrentCulture)} %."
            ),
            .. PlainLines.Wrapped("", "Differences are code minus reference in percent of energy: positive means more energy, less range."),
            "",
            .. Codes(days, units),
            .. days.Cars.Select(car => $"car {car.Car} against car {car.FirstCar} on the same tyres: {Percent(car.Percent)}"),
            .. days.Findings.SelectMany(finding => Finding(finding, days, units)),
            .. days.Remarks.Count == 0 ? [] : new[] { "" },
            .. days.Remarks.SelectMany(remark => PlainLines.Wrapped("- ", remark)),
        ];
    }

    /// <summary>A difference with its sign, to what its interval carries: "+2.1 %".</summary>
    public static string Percent(EnergyEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return Percent(estimate.Percent, PercentDigits.Of(estimate));
    }

    /// <summary>A difference that has no interval: "+2.1 %".</summary>
    public static string Percent(double percent) => Percent(percent, PercentDigits.WithoutInterval);

    /// <summary>The 95 % interval: "+0.7 % to +3.4 %".</summary>
    public static string Interval95(EnergyEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return Interval(estimate.Lo95Percent, estimate.Hi95Percent, PercentDigits.Of(estimate));
    }

    /// <summary>The 90 % interval, the one to hold against the margin.</summary>
    public static string Interval90(EnergyEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return Interval(estimate.Lo90Percent, estimate.Hi90Percent, PercentDigits.Of(estimate));
    }

    /// <summary>A range in words: "409 km, against 417 km; 95 % interval 404 to 414 km".</summary>
    public static string Range(EnergyRange range, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(range);
        string interval = range is { Lo95Km: { } low, Hi95Km: { } high } ? $"; 95 % interval {Way(low, units)} to {Way(high, units)}" : "";
        return $"{Way(range.Km, units)} against {Way(range.ReferenceKm, units)} ({Percent(range.Percent, range.Digits())}){interval}";
    }

    /// <summary>More paired days in words.</summary>
    public static string MoreDays(EnergyFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Estimate?.Lo95Percent is null ? Figures.Unknown
            : finding.IsSettled ? ReviewingWords.NoMoreDaysNeeded
            : $"{Figures.Count(finding.MoreDaysAsSeen, "over 30")}, cautious {Figures.Count(finding.MoreDaysCautious, "over 30")}";
    }

    private static IEnumerable<string> Codes(EnergyComparison days, UnitSystem units)
    {
        yield return Row("code", "stretches", "distance", "consumption, total over total");
        foreach (CodeConsumption code in days.Codes)
        {
            string consumption = code.PerHundredKm is { } per ? new Consumption(per, days.Carrier).In(units) : Figures.Unknown;
            yield return Row(code.Code, $"{code.Stretches}", Way(code.DistanceKm, units), consumption);
        }

        static string Row(string code, string stretches, string distance, string consumption) =>
            PlainLines.Left(code, 10)
            + PlainLines.Right(stretches, 10)
            + PlainLines.Right(distance, 12)
            + PlainLines.Right(consumption, 34);
    }

    private static IEnumerable<string> Finding(EnergyFinding finding, EnergyComparison days, UnitSystem units)
    {
        bool anySpoilt = days.Spoilt > 0;
        string Line(string label, Func<EnergyEstimate, string> cell) =>
            (
                PlainLines.Left($"    {label}", 30)
                + PlainLines.Right(Cell(finding.Estimate, cell), 24)
                + PlainLines.Right(anySpoilt ? Cell(finding.WithSpoilt, cell) : "", 24)
            ).TrimEnd();
        return
        [
            "",
            $"{finding.Code} against {finding.Reference}, energy",
            .. anySpoilt
                ? [PlainLines.Left("", 30) + PlainLines.Right("clean legs", 24) + PlainLines.Right("all legs", 24)]
                : Array.Empty<string>(),
            Line("difference", Percent),
            Line(finding.IsUnfinished ? "95 % unfinished" : "95 % interval", Interval95),
            Line(finding.IsUnfinished ? "90 % unfinished" : "90 % interval", Interval90),
            Line(
                "df, scatter of a stretch",
                one => one.StretchScatterPercent is { } scatter ? $"{one.Df}, {Plain(scatter)} %" : Figures.Unknown
            ),
            .. finding.IsUnfinished ? [] : Probabilities(finding, Line),
            Line("could have shown (80 %)", CouldHaveShown),
            .. finding.IsUnfinished
                ? []
                : new[] { (PlainLines.Left("    more paired days", 30) + PlainLines.Right(MoreDays(finding), 24)).TrimEnd() },
            .. finding.Range is { } range ? PlainLines.Wrapped("    range: ", Range(range, units)) : [],
            .. PlainLines.Wrapped("    verdict: ", finding.Verdict),
            .. finding.Remarks.SelectMany(remark => PlainLines.Wrapped("    - ", remark)),
        ];
    }

    private static IEnumerable<string> Probabilities(EnergyFinding finding, Func<string, Func<EnergyEstimate, string>, string> line) =>
        [
            line(ReviewingWords.ProbabilityIfNoDifference, one => Figures.Probability(one.P)),
            line(ReviewingWords.ProbabilityIfBeyondMargin, one => Figures.Probability(one.PTost)),
            .. finding.PAmongAll is { } all
                ? new[]
                {
                    (
                        PlainLines.Left($"    {ReviewingWords.ProbabilityAmongAll}", 30) + PlainLines.Right(Figures.Probability(all), 24)
                    ).TrimEnd(),
                }
                : [],
        ];

    /// <summary>The smallest difference that such days show with a chance of 80 %, to what the interval carries.</summary>
    public static string CouldHaveShown(EnergyEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return estimate.Mdd80Percent is { } mdd ? $"{EnoughDigits.Plain(mdd, PercentDigits.Of(estimate))} %" : Figures.Unknown;
    }

    private static string Percent(double percent, int decimals) => $"{EnoughDigits.WithSign(percent, decimals)} %";

    private static string Interval(double? low, double? high, int decimals) =>
        low is { } from && high is { } to ? $"{Percent(from, decimals)} to {Percent(to, decimals)}" : Figures.Unknown;

    private static string Cell(EnergyEstimate? estimate, Func<EnergyEstimate, string> cell) =>
        estimate is null ? Figures.Unknown : cell(estimate);

    private static string Way(double km, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{(km / Speed.KmPerMile).ToString("0", CultureInfo.CurrentCulture)} mi" : $"{km:0} km";

    private static string Plain(double number) => number.ToString("0.##", CultureInfo.CurrentCulture);
}

/// <summary>
/// Decimals of a percentage of energy, as many as its 95 % interval carries: none where the interval is 5 % wide and more, two where it is
/// narrower than 0.5 %, one between (own rule, the same as for dB); more where a rounded limit would contradict the verdict's word.
/// </summary>
public static class PercentDigits
{
    /// <summary>Decimals of a percentage that has no interval.</summary>
    public const int WithoutInterval = 1;

    private const double WidePercent = 5;
    private const double NarrowPercent = 0.5;

    /// <summary>Decimals for all that is told of an estimate.</summary>
    public static int Of(EnergyEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        double[] limits =
        [
            .. new[] { estimate.Lo95Percent, estimate.Hi95Percent, estimate.Lo90Percent, estimate.Hi90Percent }.OfType<double>(),
        ];
        double[] bounds = estimate.MarginPercent is { } margin ? [0, margin, -margin] : [0];
        return EnoughDigits.For(Least(estimate.Hi95Percent - estimate.Lo95Percent), limits, bounds);
    }

    /// <summary>Decimals of the difference of two ranges.</summary>
    internal static int Digits(this EnergyRange range) =>
        Least(range is { Lo95Km: { } low, Hi95Km: { } high } ? 100 * (high - low) / range.ReferenceKm : null);

    private static int Least(double? width) =>
        width switch
        {
            null => WithoutInterval,
            >= WidePercent => 0,
            >= NarrowPercent => 1,
            _ => 2,
        };
}
