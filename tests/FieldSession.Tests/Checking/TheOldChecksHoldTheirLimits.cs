using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Checking;

/// <summary>Calibration, weather and readings: just inside their limits, just outside, overridden.</summary>
public class TheOldChecksHoldTheirLimits
{
    [Theory]
    [InlineData("94.5", "")]
    [InlineData("94.6", "adjust the meter")]
    [InlineData("93.4", "adjust the meter")]
    public void The_meter_far_from_its_calibrator_is_to_be_adjusted(string level, string words) =>
        Assert.Contains(words, new ADay().Answer($"calibration before {level}").Words);

    [Theory]
    [InlineData("94.3", "drifted")]
    [InlineData("94.4", "more than 0.3 dB")]
    [InlineData("94.5", "more than 0.3 dB")]
    [InlineData("94.6", "session is void")]
    public void A_drift_warns_and_then_makes_the_session_void(string after, string words)
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "end");
        Assert.Contains(words, day.Answer($"calibration after {after}").Words);
    }

    [Theory]
    [InlineData("wind=5", 0, false)]
    [InlineData("wind=5.1", 1, false)]
    [InlineData("wind=8", 1, false)]
    [InlineData("wind=8.1", 1, true)]
    [InlineData("gust=8", 0, false)]
    [InlineData("gust=8.1", 1, false)]
    [InlineData("air=5", 0, false)]
    [InlineData("air=4.9", 1, false)]
    [InlineData("air=35", 0, false)]
    [InlineData("air=35.1", 1, false)]
    [InlineData("surface=dry", 0, false)]
    [InlineData("surface=damp", 1, true)]
    public void The_weather_warns_and_then_blocks(string weather, int warnings, bool blocks)
    {
        ADay day = new ADay().Typed("calibration before 94.0", $"weather {weather}");
        Assert.Equal(warnings, RunChecks.WeatherWarnings(day.Study).Count());
        Assert.Equal(blocks, RunChecks.AgainstNextRun(day.Study).Any());
    }

    [Theory]
    [InlineData("wind", "weather wind=9")]
    [InlineData("surface", "weather surface=wet")]
    public void A_blocking_weather_is_overridden_with_a_reason(string check, string line)
    {
        ADay day = new ADay().Typed("calibration before 94.0", line);
        Assert.Equal(check, day.Refusal("run 417").Check);
        day.Typed($"override {check} one gust only", "run 417");
    }

    [Fact]
    public void Without_a_calibration_before_or_a_commitment_no_run_starts_unless_overridden()
    {
        ADay day = new(isSealed: false);
        Assert.Equal(["commitment", "calibration-before"], RunChecks.AgainstNextRun(day.Study).Select(against => against.Check));
        day.Typed("override commitment trial of the route", "override calibration-before no calibrator", "run 417");
    }

    [Theory]
    [InlineData("30-33", false)]
    [InlineData("29.9-32", true)]
    [InlineData("108.0-110.0", false)]
    [InlineData("108.0-110.1", true)]
    [InlineData("58-66", false)]
    [InlineData("58-66.1", true)]
    public void A_reading_that_can_hardly_be_is_stored_with_a_doubt(string line, bool doubtful)
    {
        Plan plan = ADay.ShortPlan with { Route = [ADay.ASegment(1, "Mill lane", "smooth"), ADay.ASegment(2, "Bridge joint", "impact")] };
        Assert.Equal(doubtful, new ADay(plan).Ready().Typed("run 417").Answer(line).Doubt is not null);
    }

    [Theory]
    [InlineData("58-62", false)]
    [InlineData("58-62.1", true)]
    public void A_wide_range_is_said_aloud(string line, bool wide) =>
        Assert.Equal(wide, new ADay().Ready().Typed("run 417").Answer(line).Words.Contains("wide", StringComparison.Ordinal));

    [Theory]
    [InlineData("67-69", false)]
    [InlineData("67.1-69", true)]
    public void A_reading_far_from_the_plans_level_is_asked_about(string line, bool doubtful) =>
        Assert.Equal(doubtful, new ADay().Ready().Typed("run 417").Answer(line).Doubt is not null);

    [Fact]
    public void A_changed_limit_needs_a_reason_or_draws_a_warning_and_both_are_read()
    {
        var silent = Planning.PlanTexts.WithPlan("[limits]\ntread_difference_mm = 2\nwind_warn_m_s = 6\n");
        Assert.Equal(2, silent.Warnings.Count(warning => warning.What.Contains("without a reason", StringComparison.Ordinal)));
        var told = Planning.PlanTexts.WithPlan(
            "[limits]\ntread_difference_mm = 2\n[limits.reasons]\ntread_difference_mm = \"worn sets on purpose\"\n"
        );
        Assert.Empty(told.Warnings);
        Assert.Equal(2, told.Plan!.Limits.Of(FurtherLimits.Tread));
        Assert.Equal("worn sets on purpose", told.Plan.Limits.Reasons!["tread_difference_mm"]);
        Assert.NotEmpty(Planning.PlanTexts.WithPlan("[limits]\ntread_difference_mm = 99\n").Problems);
    }

    [Fact]
    public void Every_further_limit_has_a_default_within_its_range_and_a_name_of_its_own()
    {
        Assert.All(FurtherLimits.All, limit => Assert.InRange(limit.Default, limit.Lowest, limit.Highest));
        ImmutableArray<string> names = [.. FurtherLimits.All.Select(limit => limit.Name)];
        Assert.Equal(names.Length, names.Distinct().Count());
    }
}
