using FieldSession.Comparing;
using FieldSession.Statistics;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Comparing;

/// <summary>The lines that are beside a verdict and never make it.</summary>
public class BesideTheVerdictTests
{
    [Fact]
    public void Flags_of_the_quieter_code_that_carry_the_difference_are_named()
    {
        // every loud reading of B is flagged: clean readings show B quieter, all readings do not
        MeasuredDay day = InventedReadings.Day(
            "A B B A A B",
            6,
            (run, s) => 60 + s + (run * 7 % 5 * 0.05) + (IsB(run) ? (IsLoud(run, s) ? 9 : -1) : 0) + (run * s % 3 * 0.05)
        );
        ClassComparison steady = Steady(day.Spoilt(level => level.Code == "B" && IsLoud(level.Run - 1, int.Parse(level.Segment[1..]))));

        Assert.Equal("difference shown", steady.Verdict);
        Assert.Contains("the difference hangs on readings left out of B, the quieter code", steady.Remarks[0]);
    }

    [Fact]
    public void A_difference_that_is_with_all_readings_has_no_such_remark()
    {
        MeasuredDay day = InventedReadings.Day(
            "A B B A A B",
            6,
            (run, s) => 60 + s + (run * 7 % 5 * 0.05) + (IsB(run) ? -3 : 0) + (run * s % 3 * 0.05)
        );

        Assert.DoesNotContain(Steady(day.Spoilt(level => level is { Run: 2, Segment: "s3" })).Remarks, IsAboutTheQuieter);
    }

    [Fact]
    public void Many_flags_on_one_code_are_a_remark_of_the_day()
    {
        MeasuredDay day = InventedReadings.Scattered("A B B A", 6);

        Assert.Contains(
            Compared(day.Spoilt(level => level.Run == 2 && level.Segment is "s0" or "s1" or "s2" && level.Code == "B")).Remarks,
            remark => remark.Contains("B has")
        );
        Assert.Empty(Compared(day.Spoilt(level => level is { Run: 2, Segment: "s0" or "s1" })).Remarks);
    }

    [Fact]
    public void The_driven_order_is_held_against_all_others_from_eight_runs_on()
    {
        Assert.Null(Steady(InventedReadings.Scattered("A B B A A B B", 4)).OrderTest);
        ClassComparison steady = Steady(InventedReadings.Scattered("A B B A A B B A", 4, secondCodeDb: 9));
        // four against four, wholly apart: two of 70 orders
        Assert.Equal((70, 2 / 70.0), (steady.OrderTest!.Orders, steady.OrderTest.P));
    }

    // by hand: 3 degrees of freedom at 0.5 dB beside one of the day, complete data of 4 segments
    [Fact]
    public void A_first_day_shows_a_line_under_an_assumed_repeatability()
    {
        MeasuredDay day = InventedReadings.Scattered("A B A", 4);
        ClassComparison steady = Steady(day);
        double variance = (3 * 0.25 + steady.SRunDb!.Value * steady.SRunDb.Value) / 4;

        Assert.Equal(Math.Sqrt(1.5 * variance), steady.Assumed!.StandardErrorDb!.Value, 1e-12);
        Assert.Equal(4, steady.Assumed.Df!.Value, 1e-12);
        Assert.StartsWith("no verdict", steady.Verdict);
        ArchiveLine[] archive = [new ArchiveLine("before", MeasureClass.Steady, 4, 0.4, 0.25, 9, 0.7)];
        Assert.Null(BlindComparison.Of(day, new ComparisonTerms("A", Archive: archive)).Comparisons.Single().Classes.Steady!.Assumed);
    }

    // levels without scatter are their own fit: the level of a run is the energy mean of its levels (ISO 1996-1, equivalent level)
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_level_of_exposure_is_the_energy_mean_of_the_run(bool timed)
    {
        double Level(int run, int s) => 60 + 4 * s + (IsB(run) ? 1.5 : 0) + run * 0.1;
        double[] seconds = timed ? [10, 40, 5] : [1, 1, 1];
        MeasuredDay day = InventedReadings.Day("A B B A", 3, Level) with
        {
            Planned =
            [
                .. seconds.Select(
                    (one, s) => new PlannedSegment(InventedReadings.Name(s), "smooth", MeasureClass.Steady, timed ? one : null)
                ),
            ],
        };

        RouteEnergy energy = Steady(day).RouteEnergy!;

        Assert.Equal(timed, energy.ByTime);
        Assert.Equal(["A", "B", "B", "A"], energy.Runs.Select(run => run.Code));
        Assert.All(
            energy.Runs,
            run =>
                Assert.Equal(
                    Decibels.EnergyMean([.. Enumerable.Range(0, 3).Select(s => Level(run.Run - 1, s))], seconds),
                    run.LevelDb,
                    1e-9
                )
        );
        Assert.Equal(1.5, energy.Overall.DifferenceDb, 1e-9);
        Assert.NotNull(energy.Overall.StandardErrorDb);
    }

    private static bool IsB(int run) => run is 1 or 2 or 5;

    private static bool IsLoud(int run, int segment) => segment == run % 3 || segment == run % 3 + 3;

    private static bool IsAboutTheQuieter(string remark) => remark.Contains("the quieter code");

    private static Comparison Compared(MeasuredDay day) => BlindComparison.Of(day, new ComparisonTerms("A"));

    private static ClassComparison Steady(MeasuredDay day) => Compared(day).Comparisons.Single().Classes.Steady!;
}
