using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Listening;

/// <summary>
/// Many days drawn on the level of what is kept of a window: runs scatter by 0.5 dB, cells by 0.9 dB, and the difference varies by 0.5 dB
/// from segment to segment (assumed scatters, no car measured). Source: the model that the days are drawn from.
/// </summary>
public sealed class ManyDaysWithRecordingsTests(ITestOutputHelper said)
{
    // more days, for the figures of docs/recordings.md, by this variable
    private const string DaysVariable = "FIELDSESSION_RING_DAYS";
    private const double RunSdDb = 0.5;
    private const double CellSdDb = 0.9;
    private const double DifferenceSdDb = 0.5;

    private static int Days =>
        int.TryParse(Environment.GetEnvironmentVariable(DaysVariable), NumberStyles.None, CultureInfo.InvariantCulture, out int days)
            ? days
            : 60;

    [Fact]
    public void The_interval_covers_the_truth_and_false_differences_are_rare()
    {
        Study driven = Driven();
        (int covered, int falseOnes, int shown, int right) = (0, 0, 0, 0);
        for (int day = 0; day < Days; day++)
        {
            RingPair weaker = Compared(driven, -4, new Random(day));
            covered += weaker.Main.Overall!.Lo95Db <= -4 && weaker.Main.Overall.Hi95Db >= -4 ? 1 : 0;
            shown += weaker.Main.Conclusion?.ShowsDifference == true ? 1 : 0;
            right += weaker.Main.Conclusion?.ShowsDifference == true && weaker.Main.Overall.DifferenceDb < 0 ? 1 : 0;
            falseOnes += Compared(driven, 0, new Random(1_000_000 + day)).Main.Conclusion?.ShowsDifference == true ? 1 : 0;
        }

        said.WriteLine(
            $"{Days} days: covered {100.0 * covered / Days:0.0} %, shown {100.0 * shown / Days:0.0} %, false "
                + $"{100.0 * falseOnes / Days:0.0} %"
        );
        Assert.Equal(shown, right);

        // binomial, three standard errors, on what 2,000 days are held to: 94 % and 5 %
        double slack = 3 * Math.Sqrt(0.05 * 0.95 / Days);
        Assert.True(covered >= (0.95 - slack) * Days, $"covered {covered} of {Days}");
        Assert.True(falseOnes <= (0.05 + slack) * Days, $"false {falseOnes} of {Days}");
    }

    private static RingPair Compared(Study driven, double differenceDb, Random lot)
    {
        double[] bySegment = [.. Enumerable.Range(0, driven.Plan!.Route.Count).Select(_ => DifferenceSdDb * Normal(lot))];
        double mean = bySegment.Average();
        SpecCode reference = driven.ReferenceCode!.Value;
        RunRecording[] recordings =
        [
            .. driven.Runs.Select(run =>
            {
                double runDb = RunSdDb * Normal(lot);
                return new RunRecording(run.Number, new string('0', 64), "recorder")
                {
                    Segments =
                    [
                        .. run.Readings.Select(reading =>
                        {
                            double level =
                                60
                                + reading.Segment
                                + runDb
                                + (CellSdDb * Normal(lot))
                                + (run.Code == reference ? 0 : differenceDb + bySegment[reading.Segment - 1] - mean);
                            return new HeardSegment(reading.Mark.Number, 0, 12) { RingDb = level, RingMedianDb = level };
                        }),
                    ],
                };
            }),
        ];
        return Assert.Single(RingFinding.Of(driven with { Recordings = [.. recordings] })!.Pairs);
    }

    // typed once: ten segments, R 1 1 R R 1, and both predictions locked
    private static Study Driven()
    {
        ImmutableArray<Segment> route = [.. Enumerable.Range(1, 10).Select(number => ADay.ASegment(number, $"Lane {number}", "coarse"))];
        ADay day = new ADay(ADay.ShortPlan with { Route = [.. route], Order = [new(0), new(1), new(1), new(0), new(0), new(1)] }).Ready();
        for (int run = 1; run <= 6; run++)
        {
            day.Typed($"run {day.Study.CodeAsked}");
            foreach (Segment segment in route)
            {
                day.Typed($"{60 + (segment.Number % 3)}-{63 + (run % 2)}");
            }
        }

        return day.Typed("calibration after 94.0", "predict Ro feature=862 sure=3", "predict Tam feature=862 sure=3").Study;
    }

    private static double Normal(Random lot) => Math.Sqrt(-2 * Math.Log(1 - lot.NextDouble())) * Math.Cos(2 * Math.PI * lot.NextDouble());
}
