using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Reporting;

namespace FieldSession.Tests.Reporting;

/// <summary>
/// The report says a verdict twice, in the meter's word and in the result's words; both need the same level, also after the order was
/// lengthened.
/// </summary>
public sealed class TheMeterAgreesWithTheVerdictTests
{
    private const double MarginDb = 1.0;
    private const double NarrowMarginDb = 0.05;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Whatever_the_difference_and_however_often_the_order_was_lengthened_both_say_the_same(int verdictNumber) =>
        Assert.All(
            Shifts,
            shiftDb =>
                Assert.Equal(
                    Expected(Steady(shiftDb, verdictNumber).Verdict),
                    MeterWord.InWords(Steady(shiftDb, verdictNumber), MarginDb).Split(':', '(')[0].TrimEnd()
                )
        );

    [Fact]
    public void What_is_shown_at_5_percent_alone_is_not_measured_after_two_lengthenings_and_the_line_says_why()
    {
        double between = Shifts.First(shiftDb => Steady(shiftDb, 1, NarrowMarginDb).Basis!.PDifference is > 0.02 and < 0.045);
        Assert.StartsWith("MEASURED:", MeterWord.InWords(Steady(between, 1, NarrowMarginDb), NarrowMarginDb), StringComparison.Ordinal);
        string third = MeterWord.InWords(Steady(between, 3, NarrowMarginDb), NarrowMarginDb);
        Assert.StartsWith("NOT RESOLVED:", third, StringComparison.Ordinal);
        Assert.Contains("the word uses the stricter ", third, StringComparison.Ordinal);
        Assert.Contains("extended 2 times", third, StringComparison.Ordinal);
        Assert.NotEqual(0, Steady(between, 3, NarrowMarginDb).MoreRuns!.AsSeen);
    }

    [Fact]
    public void Of_one_look_at_readings_the_words_are_those_of_the_95_and_the_90_percent_interval() =>
        Assert.All(
            Shifts,
            shiftDb =>
            {
                Estimate overall = Steady(shiftDb, 0).Overall!;
                Assert.Equal(overall.Lo95Db > 0 || overall.Hi95Db < 0, Steady(shiftDb, 0).Conclusion!.ShowsDifference);
                Assert.Equal(overall.Lo90Db > -MarginDb && overall.Hi90Db < MarginDb, Steady(shiftDb, 0).Conclusion!.ShowsEquivalence);
            }
        );

    // 0: readings without a plan, one look that takes all of the 5 %
    private static Looks? LooksAt(int verdictNumber) =>
        verdictNumber == 0 ? null : new Looks([.. Enumerable.Range(0, verdictNumber).Select(look => 8 - 2 * (verdictNumber - 1 - look))]);

    private static double[] Shifts => [.. Enumerable.Range(-60, 121).Select(step => step * 0.05)];

    private static string Expected(string verdict) =>
        verdict switch
        {
            _ when verdict.StartsWith("difference shown, but smaller", StringComparison.Ordinal) => "MEASURED, BUT SMALL",
            _ when verdict.StartsWith("difference shown", StringComparison.Ordinal) => "MEASURED",
            _ when verdict.StartsWith("equivalent", StringComparison.Ordinal) => "SAME WITHIN 1 dB",
            _ => "NOT RESOLVED",
        };

    private static ClassComparison Steady(double shiftDb, int verdictNumber, double marginDb = MarginDb)
    {
        Random lot = new(3);
        MeasuredDay day = new([
            .. "A B B A A B B A"
                .Split(' ')
                .SelectMany((code, run) => Enumerable.Range(0, 4).Select(segment => Level(run, code, segment, shiftDb, lot))),
        ]);
        return BlindComparison
            .Of(day, new ComparisonTerms(MarginDb: marginDb) { Looks = LooksAt(verdictNumber) })
            .Comparisons.Single()
            .Classes.Steady!;
    }

    private static MeasuredLevel Level(int run, string code, int segment, double shiftDb, Random lot)
    {
        double levelDb = 60 + lot.NextDouble() + (code == "B" ? shiftDb : 0);
        return new MeasuredLevel(
            run + 1,
            code,
            string.Create(CultureInfo.InvariantCulture, $"s{segment}"),
            "smooth",
            MeasureClass.Steady,
            levelDb,
            levelDb,
            Minutes: run * 30
        );
    }
}
