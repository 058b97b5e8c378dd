using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>The energy days: what each spec takes, the difference with its interval, what it means for the range.</summary>
public static class EnergySection
{
    /// <summary>The section; null: no leg was driven.</summary>
    public static ReportSection? Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        if (day.Study.Legs.Count == 0)
        {
            return null;
        }

        EnergyTerms terms = StudyLegs.TermsOf(day.Study);
        EnergyComparison days = EnergyComparison.Of(
            SpecsMerged.Of(StudyLegs.Of(day.Study), day.Names.Key),
            terms with
            {
                Reference = day.Names.ReferenceIn(day.Study)?.Digits ?? terms.Reference,
            }
        );
        UnitSystem units = day.Study.Plan?.Units ?? UnitSystem.Metric;
        return new ReportSection(
            ReportPart.Energy,
            "Energy days",
            [
                new Paragraph(ReportingWords.HowEnergyDaysAreCompared),
                new ReportTable(
                    ["Spec", "Stretches", "Distance", "Consumption"],
                    [.. days.Codes.Select(code => Code(code, days, day, units))]
                ),
                .. days.Findings.SelectMany(finding => Finding(finding, days, day, units)),
                new Paragraph(ReportingWords.WhatEachCarDrove),
                new ReportTable(
                    ["Day", "Car", "Spec", "Legs", "Distance", "Consumption"],
                    [.. days.Stretches.Select(stretch => Stretch(stretch, days, day, units))]
                ),
                new Points([.. days.Cars.Select(car => ReportingWords.CarAgainstCar(car)), .. Spoilt(day.Study), .. days.Remarks]),
            ]
        );
    }

    private static IEnumerable<ReportBlock> Finding(EnergyFinding finding, EnergyComparison days, ReportDay day, UnitSystem units)
    {
        string pair = $"{day.Names.Of(finding.Code)} against {day.Names.Of(finding.Reference)}";
        yield return new Paragraph($"{pair}: {finding.Verdict}.");
        yield return new ReportTable(
            ["Legs", "Difference", "95 % interval", "90 % interval", ReportingWords.CouldHaveShown, ReportingWords.DegreesOfFreedom],
            [.. Row("clean", finding.Estimate), .. days.Spoilt > 0 ? Row("all", finding.WithSpoilt) : []]
        );
        yield return new IntervalChart(
            ReportingWords.ExploredConsumption(pair),
            "%",
            [.. Line("clean legs", finding.Estimate, days), .. days.Spoilt > 0 ? Line("all legs", finding.WithSpoilt, days) : []]
        )
        {
            Ends = ChartEnds.OfEnergy,
        };
        string[] points =
        [
            .. finding.Range is { } range
                ?
                [
                    ReportingWords.RangeOnUsable(
                        Number(range.Usable),
                        days.Carrier == EnergyCarrier.Electricity ? "kWh" : "l",
                        range,
                        units
                    ),
                ]
                : Array.Empty<string>(),
            .. finding.Estimate?.Lo95Percent is null || finding.IsUnfinished ? [] : new[] { ReportingWords.MorePairedDays(finding) },
            .. finding.Remarks,
        ];
        yield return new Points(points);
    }

    private static IEnumerable<IntervalRow> Line(string legs, EnergyEstimate? estimate, EnergyComparison days) =>
        estimate is null
            ? []
            :
            [
                new IntervalRow(
                    legs,
                    estimate.Percent,
                    EnergyWords.Percent(estimate),
                    estimate.Lo95Percent,
                    estimate.Hi95Percent,
                    days.MarginPercent
                )
                {
                    ShownInterval = estimate.Lo95Percent is null ? "" : EnergyWords.Interval95(estimate),
                },
            ];

    private static IEnumerable<IReadOnlyList<string>> Row(string legs, EnergyEstimate? estimate) =>
        estimate is null
            ? []
            :
            [
                [
                    legs,
                    EnergyWords.Percent(estimate),
                    EnergyWords.Interval95(estimate),
                    EnergyWords.Interval90(estimate),
                    EnergyWords.CouldHaveShown(estimate),
                    $"{estimate.Df}",
                ],
            ];

    private static IReadOnlyList<string> Code(CodeConsumption code, EnergyComparison days, ReportDay day, UnitSystem units) =>
        [
            day.Names.Of(code.Code),
            $"{code.Stretches}",
            code.DistanceKm > 0 ? Distance.FromKilometres(code.DistanceKm).OnTheRoadIn(units) : "",
            code.PerHundredKm is { } per ? new Consumption(per, days.Carrier).In(units) : Figures.Unknown,
        ];

    private static IReadOnlyList<string> Stretch(EnergyStretch stretch, EnergyComparison days, ReportDay day, UnitSystem units) =>
        [
            $"{stretch.Day}",
            stretch.Car,
            day.Names.Of(stretch.Code),
            $"{stretch.Legs.Count}",
            Distance.FromKilometres(stretch.DistanceKm).OnTheRoadIn(units),
            new Consumption(stretch.PerHundredKm, days.Carrier).In(units),
        ];

    private static IEnumerable<string> Spoilt(Study study) =>
        from leg in study.Legs
        let spoilt = leg.Spoilt
        where spoilt is not null
        let words = spoilt.Words is { } said ? $" ({said})" : ""
        let late = spoilt.Late ? ReportingWords.FlaggedLate : ""
        select ReportingWords.SpoiltLeg(leg.Number, leg.Figures.Day, leg.Figures.Car, spoilt.Cause.Word(), words, late);

    private static string Number(double number) => number.ToString("0.##", CultureInfo.CurrentCulture);
}
