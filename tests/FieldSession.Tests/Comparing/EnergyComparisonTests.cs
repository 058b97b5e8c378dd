using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Tests.References;
using static FieldSession.Tests.References.ReferenceCase;

namespace FieldSession.Tests.Comparing;

/// <summary>The energy days against numbers from outside.</summary>
public sealed class EnergyComparisonTests
{
    private static MeasuredLeg Leg(int day, string car, string code, double per) => new(day, car, code, 200, 2 * per);

    /// <summary>The four paired days of the Quillmere ring; made up with it, checked by hand from the log ratios of each day.</summary>
    private static MeasuredLeg[] Quillmere =>
        [
            Leg(1, "X", "417", 17.9),
            Leg(1, "Y", "862", 18.5),
            Leg(2, "X", "417", 18.3),
            Leg(2, "Y", "862", 18.8),
            Leg(3, "X", "862", 18.4),
            Leg(3, "Y", "417", 18.3),
            Leg(4, "X", "862", 19.1),
            Leg(4, "Y", "417", 18.8),
        ];

    /// <summary>The four paired days of the Dunmarrow loop, given in mi/kWh; three codes.</summary>
    private static MeasuredLeg[] Dunmarrow =>
        [
            Mile(1, "X", "158", 3.42),
            Mile(1, "Y", "704", 3.38),
            Mile(2, "X", "704", 3.47),
            Mile(2, "Y", "158", 3.41),
            Mile(3, "X", "158", 3.35),
            Mile(3, "Y", "391", 3.30),
            Mile(4, "X", "391", 3.39),
            Mile(4, "Y", "158", 3.36),
        ];

    private static MeasuredLeg Mile(int day, string car, string code, double milesPerKwh) =>
        new(day, car, code, 100 * Speed.KmPerMile, 100 / milesPerKwh);

    [Fact]
    public void The_crossover_equals_the_linear_model_of_R_in_every_row()
    {
        ReferenceCase reference = Open("16-energy-crossover");
        MeasuredLeg[] legs =
        [
            .. reference
                .Table("data.csv")
                .Select(row => new MeasuredLeg(
                    int.Parse(row["day"]),
                    row["car"],
                    row["code"],
                    Number(row["distance_km"]),
                    Number(row["energy_kWh"])
                )
                {
                    Driver = row["driver"],
                    AirCelsius = Number(row["temp_C"]),
                }),
        ];
        EnergyComparison days = EnergyComparison.Of(legs, new EnergyTerms("A"));
        EnergyFinding finding = Assert.Single(days.Findings);
        EnergyEstimate b = finding.Estimate!;
        Dictionary<string, object?> found = new()
        {
            ["units"] = days.Stretches.Count,
            ["energy.log_ratio"] = b.LogRatio,
            ["energy.se"] = b.StandardError,
            ["energy.df"] = b.Df,
            ["energy.percent"] = b.Percent,
            ["energy.lo95_percent"] = b.Lo95Percent,
            ["energy.hi95_percent"] = b.Hi95Percent,
            ["energy.p"] = b.P,
            ["energy.lo90_percent"] = b.Lo90Percent,
            ["energy.hi90_percent"] = b.Hi90Percent,
            ["energy.p_tost_2percent"] = b.PTost,
            ["energy.s_unit_percent"] = b.StretchScatterPercent,
            ["energy.mdd80_percent"] = b.Mdd80Percent,
            ["energy.car2_vs_car1_percent"] = Assert.Single(days.Cars).Percent,
        };
        foreach (EnergyStretch unit in days.Stretches)
        {
            found[$"unit.day{unit.Day}.{unit.Car}.kWh_per_100km"] = unit.PerHundredKm;
        }

        Assert.Equal(26, reference.Check(found, leaveOut: quantity => quantity.StartsWith("chowliu", StringComparison.Ordinal)));
        Assert.Equal("within the noise of the method: these days can neither show a difference nor rule one out", finding.Verdict);
    }

    [Fact]
    public void Four_days_with_one_swap_separate_tyres_and_car()
    {
        EnergyComparison days = EnergyComparison.Of(Quillmere, new EnergyTerms("417", Usable: 75));
        EnergyFinding finding = Assert.Single(days.Findings);
        Assert.Equal(2.05, finding.Estimate!.Percent, 0.005);
        Assert.Equal(0.74, finding.Estimate.Lo95Percent!.Value, 0.005);
        Assert.Equal(3.38, finding.Estimate.Hi95Percent!.Value, 0.005);
        Assert.Equal(2, finding.Estimate.Df);
        Assert.Equal(0.97, Assert.Single(days.Cars).Percent, 0.005);
        Assert.Equal("difference shown", finding.Verdict);
        double totalPer100Km = (17.9 + 18.3 + 18.3 + 18.8) / 4;
        Assert.Equal(7500 / totalPer100Km, finding.Range!.ReferenceKm, 1e-9);
        Assert.Equal(7500 / totalPer100Km / 1.0205, finding.Range.Km, 0.05);
        Assert.Equal(finding.Range.ReferenceKm / 1.0338, finding.Range.Lo95Km!.Value, 0.05);
    }

    [Fact]
    public void Three_codes_with_one_swap_each_are_not_resolved()
    {
        EnergyComparison days = EnergyComparison.Of(Dunmarrow, new EnergyTerms("158"));
        Assert.Equal(["704", "391"], days.Findings.Select(f => f.Code));

        // given in mi/kWh: +0.28 % and -0.31 % there is as much less and more energy
        Assert.Equal(100 * ((1 / 1.0028) - 1), days.Findings[0].Estimate!.Percent, 0.01);
        Assert.Equal(100 * ((1 / 0.9969) - 1), days.Findings[1].Estimate!.Percent, 0.01);
        Assert.All(
            days.Findings,
            finding =>
            {
                Assert.Null(finding.Estimate!.Lo95Percent);
                Assert.Null(finding.Estimate.PTost);
                Assert.Null(finding.MoreDaysAsSeen);
                Assert.Contains("too few days", finding.Verdict, StringComparison.Ordinal);
            }
        );
    }
}
