using FieldSession.Comparing;
using FieldSession.Statistics;

namespace FieldSession.Tests.Verdicts;

/// <summary>What the energy days may say, and what must then be true of the numbers. Rules: docs/formulas.md, "Energy days".</summary>
public sealed class EveryWordOfTheEnergyDaysTests
{
    /// <summary>A finding of energy days, and the terms it was made on.</summary>
    private sealed record EnergyNumbers(EnergyFinding Finding, EnergyTerms Terms)
    {
        private EnergyEstimate E => Finding.Estimate!;

        private double Half(double tail) => StudentT.Quantile(1 - tail, E.Df) * E.StandardError!.Value;

        // two codes asked at once: of three only two can be wrong, and each has half of the 5 %
        public int Share { get; init; } = 1;

        public bool HasInterval => Finding.Estimate is { Lo95Percent: not null };

        public bool LeavesOut0 => HasInterval && Math.Abs(E.LogRatio) > Half(0.025 / Share);

        public bool LiesWithin =>
            HasInterval
            && E.LogRatio + Half(0.05 / Share) < Math.Log(1 + Terms.MarginPercent / 100)
            && E.LogRatio - Half(0.05 / Share) > Math.Log(1 - Terms.MarginPercent / 100);

        public bool LiesBeyond =>
            HasInterval
            && (
                E.LogRatio - Half(0.025 / Share) > Math.Log(1 + Terms.MarginPercent / 100)
                || E.LogRatio + Half(0.025 / Share) < Math.Log(1 - Terms.MarginPercent / 100)
            );
    }

    private static WordTable<EnergyNumbers> OfEnergy =>
        new(
            new(
                "difference shown",
                "0 lies outside the interval, neither within the margin nor beyond",
                n => n is { LeavesOut0: true, LiesWithin: false, LiesBeyond: false }
            ),
            new(
                "difference shown and larger than 2 %",
                "the whole interval lies beyond the margin",
                n => n is { LeavesOut0: true, LiesBeyond: true }
            ),
            new(
                "difference shown, but smaller than 2 %",
                "0 lies outside, and within the margin",
                n => n is { LeavesOut0: true, LiesWithin: true }
            ),
            new("equivalent within ±2 %", "within the margin, 0 not outside", n => n is { LeavesOut0: false, LiesWithin: true }),
            new("within the noise of the method: .*", "neither", n => n is { HasInterval: true, LeavesOut0: false, LiesWithin: false }),
            new("no verdict: not comparable: a code was not driven beside another car", "no line", n => n.Finding.Estimate is null),
            new("no verdict: not comparable: no days lead from one code to the other", "no line", n => n.Finding.Estimate is null),
            new("no verdict: not comparable: tyres and car cannot be told apart, .*", "no line", n => n.Finding.Estimate is null),
            new("no verdict: not comparable: tyres and driver cannot be told apart", "numbers only", n => true),
            new("no verdict: days are not comparable: no second car drove beside", "numbers only", n => n.Finding.MoreDaysAsSeen is null),
            new("no verdict: too few days for any interval", "no degree of freedom", n => n.Finding.Estimate is { StandardError: null }),
            new(
                "no verdict: too few days: one comparison of like with like .*",
                "one degree of freedom",
                n => n.Finding.Estimate is { Df: 1, Lo95Percent: null }
            ),
            new(
                "no verdict: no scatter seen at this display resolution",
                "the standard error is 0",
                n => n.Finding.Estimate is { StandardError: 0 }
            ),
            new("no verdict: the planned energy days are not driven to their end", "days are open", n => !n.Terms.PlanComplete)
        );

    [Fact]
    public void Every_word_of_the_energy_days_is_true_of_its_numbers()
    {
        WordTable<EnergyNumbers> table = OfEnergy;
        foreach ((MeasuredLeg[] legs, EnergyTerms terms) in Random().Concat(ByHand()))
        {
            foreach (EnergyFinding finding in EnergyComparison.Of(legs, terms).Findings)
            {
                table.Read(finding.Verdict, new EnergyNumbers(finding, terms));
            }
        }

        table.HasNoIdleLine();
    }

    [Fact]
    public void Of_three_codes_every_word_allows_for_both_candidates()
    {
        WordTable<EnergyNumbers> table = OfEnergy;
        Random lot = new(21);
        for (int set = 0; set < 300; set++)
        {
            double scatter = 0.001 + 0.02 * lot.NextDouble() * lot.NextDouble();
            MeasuredLeg[] legs = Trios(
                1 + 0.07 * (lot.NextDouble() - 0.3),
                1 + 0.03 * lot.NextDouble(),
                [.. Enumerable.Range(0, 6 + set % 4).Select(_ => scatter * (2 * lot.NextDouble() - 1))]
            );
            EnergyComparison days = EnergyComparison.Of(legs, new EnergyTerms("111"));
            foreach (EnergyFinding finding in days.Findings)
            {
                // a code whose two questions are both answered leaves the other all of it
                EnergyFinding other = days.Findings.Single(one => one != finding);
                int share =
                    other.Verdict.Contains("but smaller", StringComparison.Ordinal)
                    || finding.Verdict.Contains("but smaller", StringComparison.Ordinal)
                        ? 0
                        : 2;
                if (share > 0)
                {
                    table.Read(finding.Verdict, new EnergyNumbers(finding, new EnergyTerms("111")) { Share = share });
                }

                Assert.True(finding.Estimate?.P is not double alone || finding.PAmongAll >= alone * (1 - 1e-12));
            }
        }
    }

    [Fact]
    public void Before_the_last_planned_day_no_p_is_known_and_once_settled_no_more_days_are_asked_for()
    {
        MeasuredLeg[] legs = Pairs(1.06, 0.004, -0.003, 0.002, 0.001, -0.002);
        EnergyFinding open = EnergyComparison.Of(legs, new EnergyTerms("111", PlanComplete: false)).Findings[0];
        Assert.Equal((null, null, null, true), (open.Estimate!.P, open.Estimate.PTost, open.MoreDaysAsSeen, open.IsUnfinished));
        EnergyFinding settled = EnergyComparison.Of(legs, new EnergyTerms("111")).Findings[0];
        Assert.Equal((null, null, true), (settled.MoreDaysAsSeen, settled.MoreDaysCautious, settled.IsSettled));
    }

    private static IEnumerable<(MeasuredLeg[] Legs, EnergyTerms Terms)> Random()
    {
        Random lot = new(20);
        for (int set = 0; set < 300; set++)
        {
            double scatter = 0.001 + 0.02 * lot.NextDouble() * lot.NextDouble();
            yield return (
                Pairs(
                    1 + 0.07 * (lot.NextDouble() - 0.3),
                    [.. Enumerable.Range(0, 3 + set % 5).Select(_ => scatter * (2 * lot.NextDouble() - 1))]
                ),
                new EnergyTerms("111")
            );
        }
    }

    private static IEnumerable<(MeasuredLeg[] Legs, EnergyTerms Terms)> ByHand()
    {
        EnergyTerms plain = new("111");
        yield return (Pairs(1.03, 0.01, -0.01, 0.02, 0), plain with { PlanComplete = false });
        yield return (Pairs(1.03, 0.01), plain);
        yield return (Pairs(1.03, 0.01, -0.01), plain);
        yield return (Pairs(1.03, 0.01, -0.01, 0.02), plain);
        yield return (
            [
                Leg(1, "X", "111", 18),
                Leg(1, "Y", "222", 18),
                Leg(2, "X", "222", 18),
                Leg(2, "Y", "111", 18),
                Leg(3, "X", "111", 18),
                Leg(3, "Y", "222", 18),
                Leg(4, "X", "222", 18),
                Leg(4, "Y", "111", 18),
            ],
            plain
        );
        yield return ([Leg(1, "X", "111", 18), Leg(1, "Y", "222", 19), Leg(2, "X", "111", 18.2), Leg(2, "Y", "222", 19.1)], plain);
        yield return ([Leg(1, "X", "111", 18), Leg(1, "Y", "111", 19), Leg(2, "X", "222", 18.2), Leg(2, "Y", "222", 19.1)], plain);
        yield return ([Leg(1, "X", "111", 18), Leg(1, "Y", "111", 19), Leg(2, "X", "222", 18.2)], plain);
        yield return (
            [.. Pairs(1.02, 0.004, -0.003, 0.002, 0.001).Select(leg => leg with { Driver = leg.Code == "111" ? "RO" : "UNA" })],
            plain
        );
        yield return (
            [
                Leg(1, "X", "111", 18),
                Leg(2, "X", "222", 18.4),
                Leg(3, "X", "111", 18.2),
                Leg(4, "X", "222", 18.5),
                Leg(5, "X", "111", 18.3),
            ],
            plain
        );
    }

    /// <summary>Two cars side by side; the pair of codes changes day by day, and so do the cars of a pair.</summary>
    private static MeasuredLeg[] Trios(double ratio, double other, double[] errors) =>
        [
            .. errors
                .Index()
                .SelectMany(day =>
                {
                    string[] codes = [.. new[] { "111", "222", "333" }.Where((_, place) => place != day.Index % 3)];
                    (string first, string second) = day.Index / 3 % 2 == 0 ? (codes[0], codes[1]) : (codes[1], codes[0]);
                    double Of(string code) =>
                        code == "222" ? ratio
                        : code == "333" ? other
                        : 1;
                    return new[]
                    {
                        Leg(day.Index + 1, "X", first, 18 * Of(first)),
                        Leg(day.Index + 1, "Y", second, 18.2 * Of(second) * (1 + day.Item)),
                    };
                }),
        ];

    private static MeasuredLeg Leg(int day, string car, string code, double per) => new(day, car, code, 200, 2 * per);

    /// <summary>Cars X and Y side by side, swapped day by day; code 222 takes a ratio more, with an error a day.</summary>
    private static MeasuredLeg[] Pairs(double ratio, params double[] errors) =>
        [
            .. errors
                .Index()
                .SelectMany(day =>
                {
                    (string first, string second) = day.Index % 2 == 0 ? ("111", "222") : ("222", "111");
                    double Of(string code) => code == "222" ? ratio : 1;
                    return new[]
                    {
                        Leg(day.Index + 1, "X", first, 18 * Of(first)),
                        Leg(day.Index + 1, "Y", second, 18.2 * Of(second) * (1 + day.Item)),
                    };
                }),
        ];
}
