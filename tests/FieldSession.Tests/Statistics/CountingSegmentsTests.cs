using System.Globalization;
using FieldSession.Benchmarks;
using FieldSession.Statistics;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Statistics;

/// <summary>
/// What would happen if segments were counted as repetitions: the table of docs/formulas.md, "One comparison", worked out and drawn.
/// </summary>
public class CountingSegmentsTests
{
    private const int Segments = 10;
    private const int Days = 4000;
    private const double ReadingSdDb = 0.75;

    private static double CriticalT => StudentT.Quantile(0.975, Segments - 1);

    [Theory]
    [InlineData(0, 5.0)]
    [InlineData(0.2, 11.8)]
    [InlineData(0.4, 27.8)]
    [InlineData(0.6, 42.7)]
    public void Ten_segments_counted_as_ten_repetitions_show_differences_that_are_not_there(double runSdDb, double percent)
    {
        double inflation = 1 + (Segments * runSdDb * runSdDb / (ReadingSdDb * ReadingSdDb));
        Assert.Equal(percent, 100 * StudentT.TwoSidedP(CriticalT / Math.Sqrt(inflation), Segments - 1), 0.05);
        int shown = Enumerable.Range(0, Days).Count(day => ShowsADifference(RepeatableLot.For(1, (int)(runSdDb * 10), day), runSdDb));
        Assert.Equal(percent, 100.0 * shown / Days, 2.5);
    }

    [Fact]
    public void The_document_prints_these_shares()
    {
        IEnumerable<string> shares = new[] { 5.0, 11.8, 27.8, 42.7 }.Select(percent =>
            percent.ToString("0.0", CultureInfo.InvariantCulture)
        );
        string formulas = File.ReadAllText(Path.Combine(Repository.Root, "docs/formulas.md"));
        Assert.Contains($"| {string.Join(" | ", shares)} |", formulas, StringComparison.Ordinal);
    }

    // four runs, A B B A; what a run adds is in all of its segments
    private static bool ShowsADifference(RepeatableLot lot, double runSdDb)
    {
        double[] difference = new double[Segments];
        foreach (int sign in new[] { -1, 1, 1, -1 })
        {
            double run = runSdDb * lot.Normal();
            for (int segment = 0; segment < Segments; segment++)
            {
                difference[segment] += sign * (run + (ReadingSdDb * lot.Normal())) / 2;
            }
        }

        double mean = difference.Average();
        double sd = Math.Sqrt(difference.Sum(one => (one - mean) * (one - mean)) / (Segments - 1));
        return Math.Abs(mean) > CriticalT * sd / Math.Sqrt(Segments);
    }
}
