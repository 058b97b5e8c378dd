using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Statistics;

namespace FieldSession.Tests.Comparing;

/// <summary>What the energy days say, and when they say nothing.</summary>
public sealed class EnergyVerdictsTests
{
    private static MeasuredLeg Leg(int day, string car, string code, double per, double km = 200) =>
        new(day, car, code, km, km * per / 100);

    /// <summary>
    /// Pairs of cars X and Y, swapped day by day, made up: code 2 takes a ratio more, Y 1 % more than X, with errors of a ratio given by
    /// the day.
    /// </summary>
    private static MeasuredLeg[] Days(double ratio, params double[] errors) =>
        [
            .. errors
                .Index()
                .SelectMany(day =>
                {
                    double x = 18 + (day.Index * 0.3);
                    double y = x * 1.01 * (1 + day.Item);
                    bool swapped = day.Index % 2 == 1;
                    return new[]
                    {
                        Leg(day.Index + 1, "X", swapped ? "222" : "111", swapped ? x * ratio : x),
                        Leg(day.Index + 1, "Y", swapped ? "111" : "222", swapped ? y : y * ratio),
                    };
                }),
        ];

    private static EnergyFinding Finding(IReadOnlyList<MeasuredLeg> legs, EnergyTerms? terms = null) =>
        Assert.Single(EnergyComparison.Of(legs, terms ?? new EnergyTerms("111")).Findings);

    [Theory]
    [InlineData(1.06, "difference shown and larger than 2 %")]
    [InlineData(1.02, "difference shown")]
    [InlineData(1.01, "difference shown, but smaller than 2 %")]
    [InlineData(1.000, "equivalent within ±2 %")]
    public void Careful_days_give_a_verdict(double ratio, string verdict) =>
        Assert.Equal(verdict, Finding(Days(ratio, 0.004, -0.003, 0.002, 0.001, -0.004, 0.003)).Verdict);

    [Fact]
    public void Rough_days_are_within_the_noise_and_say_what_they_could_have_shown_and_how_many_more_would_do()
    {
        EnergyFinding finding = Finding(Days(1.012, 0.03, -0.02, 0.01, 0.02, -0.03, 0.01));
        Assert.StartsWith("within the noise of the method", finding.Verdict, StringComparison.Ordinal);
        Assert.InRange(finding.Estimate!.Mdd80Percent!.Value, 2, 20);
        Assert.True(finding.MoreDaysCautious is null || finding.MoreDaysCautious >= finding.MoreDaysAsSeen);
    }

    // n paired days, swapped half-way: the ratio of each day has variance 2 s^2, so the variance of their mean is 2 s^2 / n
    [Fact]
    public void More_days_shrink_the_error_as_more_ratios_do()
    {
        EnergyFinding finding = Finding(Days(1.02, 0.02, 0.02, -0.02, -0.02));
        EnergyEstimate seen = finding.Estimate!;
        int more = finding.MoreDaysAsSeen!.Value;
        double Limit(int days) => StudentT.Quantile(0.975, seen.Df + days) * seen.StandardError!.Value * Math.Sqrt(4.0 / (4 + days));
        Assert.True(more > 0 && seen.LogRatio >= Limit(more) && seen.LogRatio < Limit(more - 1));
    }

    [Fact]
    public void Cars_that_never_swapped_are_not_comparable_and_give_no_number()
    {
        EnergyFinding finding = Finding([
            Leg(1, "X", "111", 18),
            Leg(1, "Y", "222", 19),
            Leg(2, "X", "111", 18.2),
            Leg(2, "Y", "222", 19.1),
        ]);
        Assert.Null(finding.Estimate);
        Assert.Equal(
            "no verdict: not comparable: tyres and car cannot be told apart, the tyres were not swapped between the cars",
            finding.Verdict
        );
    }

    [Fact]
    public void A_day_of_one_car_alone_is_left_out_and_said_so()
    {
        MeasuredLeg[] legs = [.. Days(1.02, 0.004, -0.003, 0.002, 0.001), Leg(5, "X", "222", 99)];
        EnergyComparison days = EnergyComparison.Of(legs, new EnergyTerms("111"));
        Assert.Equal(Finding(Days(1.02, 0.004, -0.003, 0.002, 0.001)).Estimate, days.Findings[0].Estimate);
        Assert.Contains("not comparable, because no other car drove alongside, and left out: day 5, car X on 222", days.Remarks);
    }

    [Fact]
    public void Codes_that_no_days_join_are_not_comparable()
    {
        EnergyFinding finding = EnergyComparison
            .Of(
                [Leg(1, "X", "111", 18), Leg(1, "Y", "111", 19), Leg(2, "X", "222", 18.2), Leg(2, "Y", "222", 19.1)],
                new EnergyTerms("111")
            )
            .Findings[0];
        Assert.Null(finding.Estimate);
        Assert.Equal("no verdict: not comparable: no days lead from one code to the other", finding.Verdict);
    }

    // own arithmetic, from the normal equations: with the air balanced over the codes the difference is that of the means of the logarithms
    [Fact]
    public void One_car_alone_gives_numbers_with_the_air_taken_out_but_no_verdict()
    {
        (string Code, double Air, double Per)[] days =
        [
            ("111", 5, 19.0),
            ("222", 5, 19.6),
            ("111", 15, 17.9),
            ("222", 15, 18.2),
            ("111", 10, 18.5),
            ("222", 10, 18.8),
        ];
        MeasuredLeg[] legs =
        [
            .. days.Index().Select(day => Leg(day.Index + 1, "X", day.Item.Code, day.Item.Per) with { AirCelsius = day.Item.Air }),
        ];
        EnergyComparison found = EnergyComparison.Of(legs, new EnergyTerms("111"));
        double means = new[] { 19.6 / 19.0, 18.2 / 17.9, 18.8 / 18.5 }.Average(Math.Log);
        EnergyFinding finding = Assert.Single(found.Findings);
        Assert.Equal(means, finding.Estimate!.LogRatio, 1e-12);
        Assert.Equal(3, finding.Estimate.Df);
        Assert.NotNull(finding.Estimate.Lo95Percent);
        Assert.Equal("no verdict: days are not comparable: no second car drove beside", finding.Verdict);
        Assert.Null(finding.MoreDaysAsSeen);
        Assert.Contains(found.Remarks, remark => remark.StartsWith("days not comparable", StringComparison.Ordinal));
        Assert.Equal(4, Finding([.. legs.Select(leg => leg with { AirCelsius = null })]).Estimate!.Df);
    }

    [Fact]
    public void Tyres_that_follow_their_driver_cannot_be_told_from_him()
    {
        MeasuredLeg[] legs =
        [
            .. Days(1.02, 0.004, -0.003, 0.002, 0.001).Select(leg => leg with { Driver = leg.Code == "111" ? "RO" : "UNA" }),
        ];
        Assert.Equal("no verdict: not comparable: tyres and driver cannot be told apart", Finding(legs).Verdict);
    }

    [Fact]
    public void A_driver_who_stays_in_his_car_costs_no_degree_of_freedom()
    {
        MeasuredLeg[] legs = Days(1.02, 0.004, -0.003, 0.002, 0.001);
        EnergyEstimate without = Finding(legs).Estimate!;
        EnergyEstimate with = Finding([.. legs.Select(leg => leg with { Driver = leg.Car })]).Estimate!;
        Assert.Equal(without.Df, with.Df);
        Assert.Equal(without.LogRatio, with.LogRatio, 1e-12);
    }

    [Fact]
    public void Legs_are_summed_before_anything_is_divided_and_are_no_repeats()
    {
        MeasuredLeg[] whole = Days(1.02, 0.004, -0.003, 0.002, 0.001);
        MeasuredLeg[] inThree =
        [
            .. whole.SelectMany(leg =>
                new[] { 0.5, 0.3, 0.2 }.Zip(
                    new[] { 0.6, 0.25, 0.15 },
                    (km, energy) => leg with { DistanceKm = leg.DistanceKm * km, KwhOrLitres = leg.KwhOrLitres * energy }
                )
            ),
        ];
        EnergyEstimate one = Finding(whole).Estimate!;
        EnergyEstimate three = Finding(inThree).Estimate!;
        Assert.Equal(one.Df, three.Df);
        Assert.Equal(one.LogRatio, three.LogRatio, 1e-12);
        Assert.Equal(one.StandardError!.Value, three.StandardError!.Value, 1e-12);
    }

    [Fact]
    public void A_spoilt_leg_is_left_out_of_the_sums_and_put_back_beside()
    {
        MeasuredLeg[] legs = [.. Days(1.02, 0.004, -0.003, 0.002, 0.001), Leg(1, "X", "111", 40, km: 60) with { Spoilt = true }];
        EnergyFinding finding = Finding(legs);
        Assert.Equal(Finding(legs[..^1]).Estimate, finding.Estimate);
        Assert.True(finding.WithSpoilt!.Percent < finding.Estimate!.Percent);
    }

    [Fact]
    public void A_change_of_code_within_the_day_begins_a_new_stretch()
    {
        IReadOnlyList<EnergyStretch> stretches = EnergyStretch.Of(
            [Leg(1, "X", "111", 18), Leg(1, "X", "222", 19), Leg(1, "X", "222", 20), Leg(1, "X", "111", 18.5)],
            withSpoilt: false
        );
        Assert.Equal([(1, "111", 1), (2, "222", 2), (3, "111", 1)], stretches.Select(s => (s.Slot, s.Code, s.Legs.Count)));
    }

    // GUM 4.3.7: a step of 1 % of 75 kWh, two readings, on 36 kWh: 0.85 % a stretch; four swapped days: variance of the difference 2 u^2 /
    // 4
    [Fact]
    public void The_step_of_the_charge_display_carries_the_error_where_the_days_agree_better_than_it_allows()
    {
        double u = 75 * Math.Sqrt(2.0 / 12) / 100;
        MeasuredLeg[] legs =
        [
            .. Days(1.02, 0.0002, -0.0001, 0.0001, 0).Select(leg => leg with { EnergyUncertainty = u, ChargeUsedPercent = 48 }),
        ];
        EnergyFinding finding = Finding(legs);
        Assert.True(finding.Estimate!.ResolutionApplied);
        Assert.Equal(0.0085 / Math.Sqrt(2), finding.Estimate.StandardError!.Value, 0.0003);
        Assert.Contains(finding.Remarks, remark => remark.Contains("than the display can show", StringComparison.Ordinal));
        Assert.False(Finding(Days(1.02, 0.0002, -0.0001, 0.0001, 0)).Estimate!.ResolutionApplied);
    }

    [Fact]
    public void Days_that_agree_exactly_give_no_interval()
    {
        EnergyFinding finding = Finding([
            Leg(1, "X", "111", 18),
            Leg(1, "Y", "222", 18),
            Leg(2, "X", "222", 18),
            Leg(2, "Y", "111", 18),
            Leg(3, "X", "111", 18),
            Leg(3, "Y", "222", 18),
            Leg(4, "X", "222", 18),
            Leg(4, "Y", "111", 18),
        ]);
        Assert.Null(finding.Estimate!.Lo95Percent);
        Assert.Equal("no verdict: no scatter seen at this display resolution", finding.Verdict);
    }

    [Fact]
    public void Until_the_planned_days_are_driven_there_are_numbers_but_no_words()
    {
        EnergyFinding finding = Finding(Days(1.06, 0.004, -0.003, 0.002, 0.001), new EnergyTerms("111", PlanComplete: false));
        Assert.NotNull(finding.Estimate!.Lo95Percent);
        Assert.Equal("no verdict: the planned energy days are not driven to their end", finding.Verdict);
    }

    [Fact]
    public void Short_ways_little_charge_wind_and_mixed_sources_are_warned_of()
    {
        MeasuredLeg[] legs =
        [
            Leg(1, "X", "111", 18, km: 80) with
            {
                WindMetresPerSecond = 6,
            },
            Leg(1, "Y", "222", 18.4) with
            {
                ChargeUsedPercent = 30,
            },
        ];
        IReadOnlyList<string> remarks = EnergyComparison.Of(legs, new EnergyTerms("111")).Remarks;
        Assert.Contains(remarks, remark => remark.StartsWith("day 1, car X on 111: 80 km, less than 100", StringComparison.Ordinal));
        Assert.Contains(
            remarks,
            remark => remark.StartsWith("day 1, car Y on 222: 30 % of charge used, less than 40", StringComparison.Ordinal)
        );
        Assert.Contains("day 1, car X on 111: mean wind 6 m/s, above 5", remarks);
        Assert.Contains(remarks, remark => remark.Contains("mixed", StringComparison.Ordinal));
    }

    [Fact]
    public void Fuel_is_compared_by_the_same_code()
    {
        EnergyComparison fuel = EnergyComparison.Of(
            [.. Days(1.02, 0.004, -0.003, 0.002, 0.001).Select(leg => leg with { KwhOrLitres = leg.KwhOrLitres / 3 })],
            new EnergyTerms("111", Carrier: EnergyCarrier.Fuel, Usable: 50)
        );
        EnergyEstimate electricity = Finding(Days(1.02, 0.004, -0.003, 0.002, 0.001)).Estimate!;
        Assert.Equal(electricity.Percent, fuel.Findings[0].Estimate!.Percent, 1e-9);
        Assert.Equal(100 * 50 / fuel.Codes[0].PerHundredKm!.Value, fuel.Findings[0].Range!.ReferenceKm, 1e-9);
    }

    [Theory]
    [InlineData(0, 36)]
    [InlineData(200, 0)]
    [InlineData(200, double.NaN)]
    public void A_leg_without_a_figure_is_a_programmers_mistake(double km, double kwh) =>
        Assert.Throws<ArgumentException>(() => EnergyComparison.Of([new MeasuredLeg(1, "X", "111", km, kwh)], new EnergyTerms()));
}
