using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Reviewing;

public sealed class NoRoundedNumberContradictsItsWordTests
{
    [Theory]
    [InlineData(0.04, 1.2, "+0.04 to +1.20")]
    [InlineData(-0.04, 1.2, "-0.04 to +1.20")]
    [InlineData(0.0004, 1.2, "+0.0004 to +1.2000")]
    [InlineData(-0.6, 0.96, "-0.60 to +0.96")]
    [InlineData(-1.03, 0.6, "-1.03 to +0.60")]
    [InlineData(-0.6, 0.7, "-0.6 to +0.7")]
    public void A_limit_is_printed_on_its_own_side_of_0_and_of_the_margin(double low, double high, string words)
    {
        Estimate estimate = new((low + high) / 2, 0.3, 4, low, high, 0.04, low, high, 0.04) { MarginDb = 1 };
        Assert.Equal(words, Figures.Interval95(estimate));
        Assert.Equal(words, Figures.Interval90(estimate));
    }

    [Theory]
    [InlineData(0.031, "0.031")]
    [InlineData(0.05, "0.05")]
    [InlineData(0.04996, "0.04996")]
    [InlineData(0.0502, "0.0502")]
    [InlineData(0.02497, "0.02497")]
    [InlineData(0.00001, "< 0.0001")]
    public void A_p_is_printed_on_its_own_side_of_5_and_of_2_and_a_half_percent(double p, string words) =>
        Assert.Equal(words, Figures.Probability(p));

    [Theory]
    [InlineData(-1.2, 9.3, "-1 % to +9 %")]
    [InlineData(0.74, 3.38, "+0.7 % to +3.4 %")]
    [InlineData(0.04, 3.38, "+0.04 % to +3.38 %")]
    [InlineData(0.74, 1.02, "+0.74 % to +1.02 %")]
    [InlineData(-0.74, 1.98, "-0.74 % to +1.98 %")]
    public void A_percentage_of_energy_has_the_digits_that_its_interval_carries_and_those_that_the_word_needs(
        double low,
        double high,
        string words
    ) =>
        Assert.Equal(
            words,
            EnergyWords.Interval95(
                new EnergyEstimate(0, 0)
                {
                    Df = 4,
                    Lo95Percent = low,
                    Hi95Percent = high,
                    MarginPercent = 2,
                }
            )
        );

    [Fact]
    public void On_random_days_no_printed_limit_contradicts_the_verdict()
    {
        Random lot = new(20);
        for (int day = 0; day < 400; day++)
        {
            string order = day % 2 == 0 ? "A B B A A B" : "A B B A";
            double difference = 1.4 * lot.NextDouble();
            double[] runs = [.. order.Split(' ').Select(code => 0.3 * Normal(lot) + (code == "B" ? difference : 0))];
            MeasuredDay readings = InventedReadings.Day(order, 6, (run, s) => Math.Round(60 + s + runs[run] + 0.5 * Normal(lot)));
            ClassComparison steady = BlindComparison.Of(readings, new ComparisonTerms("A")).Comparisons.Single().Classes.Steady!;
            if (steady.Conclusion is { } conclusion)
            {
                Assert.Equal(conclusion.ShowsDifference, LeavesOut0(Figures.Interval95(steady.Overall)));
                Assert.Equal(conclusion.ShowsEquivalence, LiesWithin(1, Figures.Interval90(steady.Overall)));
                Assert.Equal(
                    LeavesOut0(Figures.Interval95(steady.Overall)),
                    LeavesOut0(Figures.Short95(steady.Overall)!.Replace("..", " to ", StringComparison.Ordinal))
                );
            }
        }
    }

    [Fact]
    public void Digits_end_where_nobody_looks_any_more() => Assert.Equal(EnoughDigits.Most, EnoughDigits.For(1, [1e-30], [0]));

    private static bool LeavesOut0(string interval) => Limits(interval) is [> 0, > 0] or [< 0, < 0];

    private static bool LiesWithin(double margin, string interval) => Limits(interval).All(limit => Math.Abs(limit) < margin);

    private static double[] Limits(string interval) =>
        [.. interval.Split(" to ").Select(limit => double.Parse(limit, CultureInfo.CurrentCulture))];

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());
}
