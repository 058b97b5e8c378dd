using FieldSession.Comparing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Comparing;

/// <summary>
/// A coarse display must not make readings suspicious: rounding alone puts a level up to one step away from what the others predict.
/// </summary>
public sealed class SuspiciousReadingsOnRoundedDataTests
{
    [Theory]
    [InlineData("A B B A", 6, 1, 0)]
    [InlineData("A B B A", 6, 1, 0.1)]
    [InlineData("A B B A", 12, 1, 0.3)]
    [InlineData("A B A B A B", 11, 1, 0.75)]
    [InlineData("A B B A A B B A", 4, 1, 0.02)]
    [InlineData("A B C C B A", 10, 1, 0.2)]
    [InlineData("A B B A", 20, 0.5, 0.05)]
    [InlineData("A B A B A B", 5, 0.1, 0)]
    [InlineData("A B A B A B", 8, 0.1, 0.01)]
    [InlineData("A B A B A B", 8, 0.1, 0.5)]
    public void Rounded_days_of_many_shapes_raise_no_more_than_the_5_percent_of_false_alarms(
        string order,
        int segments,
        double stepDb,
        double readingSdDb
    )
    {
        const int Days = 300;
        Random lot = new(7);
        int alarmed = 0;
        for (int day = 0; day < Days; day++)
        {
            double[] runs = [.. order.Split(' ').Select(_ => 0.3 * Normal(lot))];
            double[] places = [.. Enumerable.Range(0, segments).Select(_ => 60 + 8 * lot.NextDouble())];
            MeasuredDay typed = InventedReadings.Day(
                order,
                segments,
                (run, s) => Math.Round((places[s] + runs[run] + readingSdDb * Normal(lot)) / stepDb) * stepDb
            );
            IReadOnlyList<SuspiciousReading> listed = BlindComparison.Of(typed, new ComparisonTerms("A")).Suspicious;
            Assert.All(listed, reading => Assert.InRange(reading.StudentisedResidual, 0, 50));
            alarmed += listed.Count > 0 ? 1 : 0;
        }

        // three standard errors of 5 % in 300 days above it
        Assert.InRange(alarmed, 0, (int)(Days * (0.05 + 3 * Math.Sqrt(0.05 * 0.95 / Days))));
    }

    [Fact]
    public void One_step_of_the_display_alone_is_never_suspicious_and_a_lorry_is()
    {
        MeasuredDay Day(double awayDb) => InventedReadings.Day("A B B A A B", 8, (run, s) => 60 + s + (run == 2 && s == 3 ? awayDb : 0));
        Assert.Empty(BlindComparison.Of(Day(1), new ComparisonTerms("A")).Suspicious);
        SuspiciousReading lorry = Assert.Single(BlindComparison.Of(Day(7), new ComparisonTerms("A")).Suspicious);
        Assert.Equal((3, "s3"), (lorry.Run, lorry.Segment));
        // 7 dB, the variance of ranges rounded to 1 dB is 1/24: sqrt(24) 7 sqrt(1 - h), h = 1/3 + 1/8 - 1/24
        Assert.Equal(7 * Math.Sqrt(24 * (1 - (1 / 3.0 + 1 / 8.0 - 1 / 24.0))), lorry.StudentisedResidual, 9);
    }

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());
}
