using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Tests.Making;
using FieldSession.Tests.Planning;

namespace FieldSession.Tests.Reporting;

/// <summary>What a colleague asks of a day: car, tyres, meter, people, local time.</summary>
public sealed class TheFactsOfTheDayTests
{
    [Fact]
    public void Facts_written_into_the_plan_are_in_the_report_and_the_missing_ones_are_named_in_one_line()
    {
        ADay day = new(
            ADay.ShortPlan with
            {
                FactsTold = new DayFacts
                {
                    Car = "small van, 2021",
                    Meter = "class 1",
                    UtcOffsetMinutes = -210,
                },
            }
        );
        ReportSection section = FactsSection.Of(day.Study);
        string[] points = [.. section.Blocks.OfType<Points>().Single().Items];
        Assert.Contains("Car: small van, 2021.", points);
        Assert.Contains("Meter and class: class 1.", points);
        Assert.Contains("Local time: UTC-03:30; times in this report are UTC unless both are shown.", points);
        Assert.Equal(
            "Not written down: tyre size, tyres made, tread, hardness, cold pressures, position of the meter.",
            section.Blocks.OfType<Paragraph>().Single().Words
        );
    }

    [Theory]
    [InlineData("+02:00", 120)]
    [InlineData("-09:30", -570)]
    [InlineData("+00:00", 0)]
    public void The_clocks_of_the_place_are_told_as_an_offset(string text, int minutes) =>
        Assert.Equal(minutes, PlanTexts.WithPlan($"utc_offset = \"{text}\"").Plan!.Facts.UtcOffsetMinutes);

    [Theory]
    [InlineData("2")]
    [InlineData("+2:00")]
    [InlineData("+15:00")]
    [InlineData("+02:60")]
    [InlineData("Berlin")]
    public void An_offset_that_is_none_is_refused_by_line_with_its_form(string text)
    {
        PlanReading reading = PlanTexts.WithPlan($"utc_offset = \"{text}\"");
        Assert.Null(reading.Plan);
        PlanProblem problem = Assert.Single(reading.Problems, problem => problem.Line is not null);
        Assert.Contains("utc_offset", problem.ToString(), StringComparison.Ordinal);
        Assert.Contains("such as +02:00", problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_facts_is_the_plan_it_was() => Assert.Null(PlanTexts.WithPlan("").Plan!.FactsTold);
}
