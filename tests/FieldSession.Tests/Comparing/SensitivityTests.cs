using FieldSession.Comparing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Comparing;

public class SensitivityTests
{
    [Fact]
    public void Every_run_and_segment_is_left_out_once_flags_are_taken_back_and_the_drift_is_switched()
    {
        Sensitivity sensitivity = Steady(InventedReadings.Scattered("A B B A B A", 4).Spoilt(level => level is { Run: 2, Segment: "s1" }));

        Assert.Equal(["1", "2", "3", "4", "5", "6"], Names(sensitivity, SensitivityChange.RunLeftOut));
        Assert.Equal(["s0", "s1", "s2", "s3"], Names(sensitivity, SensitivityChange.SegmentLeftOut));
        Assert.Single(Names(sensitivity, SensitivityChange.SpoiltPutBack));
        Assert.Single(Names(sensitivity, SensitivityChange.DriftSwitched));
    }

    [Fact]
    public void A_line_is_the_comparison_of_the_day_without_that_run()
    {
        MeasuredDay day = InventedReadings.Scattered("A B B A B A A B", 4);
        foreach (SensitivityLine line in Steady(day).Lines.Where(line => line.Change == SensitivityChange.RunLeftOut))
        {
            MeasuredDay without = day with { Levels = [.. day.Levels.Where(level => $"{level.Run}" != line.Name)] };
            ClassComparison alone = BlindComparison.Of(without, new ComparisonTerms("A")).Comparisons.Single().Classes.Steady!;
            Assert.Equal((alone.Overall!.DifferenceDb, alone.Verdict), (Math.Round(line.Overall.DifferenceDb, 12), line.Verdict), Near);
        }
    }

    [Fact]
    public void The_range_holds_the_result_itself_and_every_line()
    {
        MeasuredDay day = InventedReadings.Scattered("A B B A", 4);
        ClassComparison steady = With(day).Comparisons.Single().Classes.Steady!;
        double[] all = [steady.Overall!.DifferenceDb, .. steady.Sensitivity!.Lines.Select(line => line.Overall.DifferenceDb)];
        Assert.Equal((all.Min(), all.Max()), (steady.Sensitivity.LowestDb, steady.Sensitivity.HighestDb));
    }

    [Fact]
    public void One_run_that_makes_the_verdict_is_named_in_words()
    {
        // run 8 on B is 6 dB too quiet: without it the difference shows
        MeasuredDay day = InventedReadings.Day(
            "A B B A A B A B",
            4,
            (run, s) => 60 + s + (run % 3 * 0.1) + (run is 1 or 2 or 5 ? 3 : 0) + (run == 7 ? -3 : 0) + (run * s % 5 * 0.1)
        );
        Comparison comparison = With(day);

        Assert.True(comparison.Comparisons.Single().Classes.Steady!.Sensitivity!.VerdictChanges);
        string text = string.Join(' ', FieldSession.Reviewing.ComparisonWords.Of(comparison, day).Select(line => line.Trim()));
        Assert.Contains("run 8 left out", text);
        Assert.Contains("hangs on: ", text);
    }

    [Fact]
    public void Too_few_runs_left_for_a_verdict_is_no_change_of_it()
    {
        Sensitivity sensitivity = Steady(InventedReadings.Scattered("A B B A", 4, secondCodeDb: 30));

        Assert.All(sensitivity.Lines.Where(line => line.Change == SensitivityChange.RunLeftOut), line => Assert.False(line.HasVerdict));
        Assert.False(sensitivity.VerdictChanges);
    }

    [Fact]
    public void A_day_of_very_many_readings_only_says_that_it_was_not_done()
    {
        Comparison comparison = With(InventedReadings.Scattered("A B", 1600));

        Assert.Null(comparison.Comparisons.Single().Classes.Steady!.Sensitivity);
        Assert.Contains(comparison.Remarks, remark => remark.Contains("not worked out for so many readings"));
    }

    private static bool Near((double D, string Words) one, (double D, string Words) other) =>
        Math.Abs(one.D - other.D) < 1e-9 && one.Words == other.Words;

    private static IEnumerable<string> Names(Sensitivity sensitivity, SensitivityChange change) =>
        sensitivity.Lines.Where(line => line.Change == change).Select(line => line.Name);

    private static Sensitivity Steady(MeasuredDay day) => With(day).Comparisons.Single().Classes.Steady!.Sensitivity!;

    private static Comparison With(MeasuredDay day) => BlindComparison.InFull(day, new ComparisonTerms("A"));
}
