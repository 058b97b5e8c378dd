using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Store.Planning;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.EnergyDriving;

/// <summary>The four energy days of the demo: two cars side by side, swapped after the second day.</summary>
public sealed class TheDemoEnergyDaysTests
{
    private static ADay Driven()
    {
        string folder = Path.Combine(Repository.Root, "demo", "quillmere");
        PlanReading reading = PlanFolder.Read(folder);
        ADay day = new(reading.Plan);
        return day.Typed([.. File.ReadAllLines(Path.Combine(folder, "energy.txt")).Where(line => !EntryText.IsPassedOver(line))]);
    }

    [Fact]
    public void Every_leg_is_as_the_plan_asks_and_nothing_is_doubtful()
    {
        Study study = Driven().Study;
        Assert.Equal(16, study.Legs.Count);
        Assert.All(study.Legs, leg => Assert.Null(leg.Doubt));
        Assert.Equal(["X=R Y=1", "X=R Y=1", "X=1 Y=R", "X=1 Y=R"], study.Plan!.Energy.Days.Select(day => day.ToString()));
    }

    // the daily consumptions behind the lines, worked by hand as log ratios of each day: +2.05 %, 95 % 0.74 to 3.38 with 2 degrees of
    // freedom; car +0.97 %
    [Fact]
    public void The_days_show_what_was_made_into_them()
    {
        EnergyComparison days = StudyLegs.ComparisonOf(Driven().Study)!;
        Assert.Equal(
            [17.9, 18.5, 18.3, 18.8, 18.4, 18.3, 19.1, 18.8],
            days.Stretches.Select(stretch => Math.Round(stretch.PerHundredKm, 9))
        );
        EnergyFinding finding = Assert.Single(days.Findings);
        Assert.Equal(
            (2.05, 0.74, 3.38),
            (
                Math.Round(finding.Estimate!.Percent, 2),
                Math.Round(finding.Estimate.Lo95Percent!.Value, 2),
                Math.Round(finding.Estimate.Hi95Percent!.Value, 2)
            )
        );
        Assert.Equal(0.97, Math.Round(Assert.Single(days.Cars).Percent, 2));
    }

    [Fact]
    public void The_blind_summary_names_codes_and_fits_80_columns()
    {
        IReadOnlyList<string> words = EnergyWords.Of(StudyLegs.ComparisonOf(Driven().Study)!, UnitSystem.Metric);
        Assert.All(words, line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("862 against 417, energy", words);
        Assert.Contains("    verdict: difference shown", words);
        Assert.DoesNotContain(words, line => line.Contains("STIFFENED", StringComparison.Ordinal));
    }

    [Fact]
    public void The_report_has_the_days_with_a_plot_and_stays_blind_until_the_key_is_open()
    {
        string report = ReportMarkdown.Of(DayReport.Of(Driven().Study, null, new Provenance(1, "aa", "0")));
        Assert.Contains("## Energy days", report, StringComparison.Ordinal);
        Assert.Contains("+0.7 % to +3.4 %", report, StringComparison.Ordinal);
        Assert.Contains("[ ] the margin that does not matter", report, StringComparison.Ordinal);
        Assert.DoesNotContain("STIFFENED", report, StringComparison.Ordinal);
    }

    [Fact]
    public void The_comparison_JSON_has_the_days_only_where_some_were_driven()
    {
        Study study = Driven().Study;
        Comparison comparison = BlindComparison.Of(StudyReadings.Of(study), StudyTerms.Of(study));
        using System.Text.Json.JsonDocument with = System.Text.Json.JsonDocument.Parse(
            ComparisonJson.Of(comparison, StudyLegs.ComparisonOf(study))
        );
        System.Text.Json.JsonElement overall = with.RootElement.GetProperty("energy").GetProperty("comparisons")[0].GetProperty("overall");
        Assert.Equal((2, 2.05), (overall.GetProperty("df").GetInt32(), Math.Round(overall.GetProperty("percent").GetDouble(), 2)));
        using System.Text.Json.JsonDocument without = System.Text.Json.JsonDocument.Parse(ComparisonJson.Of(comparison));
        Assert.False(without.RootElement.TryGetProperty("energy", out _));
    }

    [Theory]
    [InlineData("X=R Y=3", "not a car with its place")]
    [InlineData("X", "not a car with its place")]
    [InlineData("X=R X=1", "twice")]
    [InlineData(" ", "names no car")]
    public void A_planned_day_that_is_none_is_refused(string day, string because)
    {
        Assert.Null(FieldSession.Planning.EnergyDayText.Parse(day, 2, out FieldSession.Journal.Objection? objection));
        Assert.Contains(because, objection!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Planned_days_without_a_swap_or_a_second_car_are_warned_of()
    {
        EnergyDay[] days = [new([new("X", new Place(0)), new("Y", new Place(1))]), new([new("Y", new Place(1))])];
        IReadOnlyList<string> doubts = FieldSession.Planning.EnergyDayText.DoubtsOf(days);
        Assert.Contains("on day 2 one car drives alone", doubts[0], StringComparison.Ordinal);
        Assert.Contains("spec 1 stays on one car", doubts[1], StringComparison.Ordinal);
    }
}
