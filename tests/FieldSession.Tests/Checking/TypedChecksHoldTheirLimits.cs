using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Checking;

/// <summary>Every check with typed values: just inside its limit, just outside, and where it blocks, overridden.</summary>
public class TypedChecksHoldTheirLimits
{
    private static Plan WithTargets => ADay.ShortPlan with { PressureFrontKpa = 230, PressureRearKpa = 250 };

    [Theory]
    [InlineData("check tyres tread=0.5", CheckAnswer.Records)]
    [InlineData("check tyres tread=0.51", CheckAnswer.Warns)]
    [InlineData("check tyres weeks=12", CheckAnswer.Records)]
    [InlineData("check tyres weeks=13", CheckAnswer.Warns)]
    [InlineData("check tyres shore=3", CheckAnswer.Records)]
    [InlineData("check tyres shore=3.1", CheckAnswer.Warns)]
    [InlineData("check tyres run-in=100", CheckAnswer.Records)]
    [InlineData("check tyres run-in=99", CheckAnswer.Warns)]
    [InlineData("check pressure 230 230 250 250", CheckAnswer.Records)]
    [InlineData("check pressure 235 235 250 250", CheckAnswer.Records)]
    [InlineData("check pressure 235.1 235 250 250", CheckAnswer.Warns)]
    [InlineData("check pressure 230 230 244 250", CheckAnswer.Warns)]
    [InlineData("check pressure 240 240 250 250", CheckAnswer.Warns)]
    [InlineData("check pressure 240.1 240 250 250", CheckAnswer.Blocks)]
    [InlineData("check pressure 230 219 250 250", CheckAnswer.Blocks)]
    [InlineData("check meter A F class=2 at=0", CheckAnswer.Records)]
    [InlineData("check meter A F class=2 at=-0.1", CheckAnswer.Warns)]
    [InlineData("check meter A F class=2 at=40.1", CheckAnswer.Warns)]
    [InlineData("check meter A F class=1 at=-10", CheckAnswer.Records)]
    [InlineData("check meter A F class=1 at=-10.1", CheckAnswer.Warns)]
    [InlineData("check meter A F class=1 at=50.1", CheckAnswer.Warns)]
    [InlineData("check meter A F battery=20", CheckAnswer.Records)]
    [InlineData("check meter A F battery=19", CheckAnswer.Warns)]
    [InlineData("check meter C F", CheckAnswer.Blocks)]
    [InlineData("check meter A S", CheckAnswer.Blocks)]
    [InlineData("check warm-up 15 20", CheckAnswer.Records)]
    [InlineData("check warm-up min=14.9", CheckAnswer.Warns)]
    [InlineData("check warm-up km=19.9", CheckAnswer.Warns)]
    public void A_value_within_its_limit_is_recorded_and_beyond_it_answered(string line, CheckAnswer answer)
    {
        ADay day = new ADay(WithTargets).Ready().Typed(line);
        CheckRecord record = Assert.Single(day.Study.Checks);
        Assert.Equal(answer, record.Answer);
        Assert.Equal(answer == CheckAnswer.Blocks, RunChecks.AgainstNextRun(day.Study).Any());
    }

    [Theory]
    [InlineData("check mass 1655", "check mass 1675", CheckAnswer.Records)]
    [InlineData("check mass 1655 car=x", "check mass 1675.1 car=y", CheckAnswer.Warns)]
    [InlineData("check charge 72", "check charge 62", CheckAnswer.Records)]
    [InlineData("check charge 72", "check charge 61.9", CheckAnswer.Warns)]
    [InlineData("check pressure 2.3 2.3 2.5 2.5 car=x", "check pressure 2.35 2.35 2.5 2.5 car=y", CheckAnswer.Records)]
    [InlineData("check pressure 2.3 2.3 2.5 2.5 car=x", "check pressure 2.351 2.351 2.5 2.5 car=y", CheckAnswer.Warns)]
    [InlineData("check pressure 2.3 2.3 2.5 2.5 car=x", "check pressure 2.401 2.401 2.5 2.5 car=y", CheckAnswer.Blocks)]
    public void A_value_is_held_against_the_one_before_it(string first, string second, CheckAnswer answer)
    {
        ADay day = new ADay().Ready().Typed(first, second);
        Assert.Equal([CheckAnswer.Records, answer], day.Study.Checks.Select(check => check.Answer));
    }

    [Theory]
    [InlineData("pressure", "check pressure 240.1 240 250 250")]
    [InlineData("meter", "check meter C F")]
    public void A_blocking_check_is_overridden_with_a_reason_and_a_new_value_asks_again(string name, string line)
    {
        ADay day = new ADay(WithTargets).Ready().Typed(line);
        Assert.Equal(name, day.Refusal("run 417").Check);
        Assert.NotNull(day.Refusal($"override {name}"));
        day.Typed($"override {name} no pump at hand", "run 417", "5860", "end");
        Assert.Equal(("no pump at hand", 1), (day.Study.Overrides[0].Reason, day.Study.Overrides[0].BeforeRun));
        day.Typed(line);
        Assert.Equal(name, day.Refusal("run 862").Check);
    }

    [Fact]
    public void A_check_that_the_plan_asks_for_blocks_until_it_is_typed_or_overridden()
    {
        ADay day = new ADay(ADay.ShortPlan with { RequiredChecks = ["warm-up"] }).Ready();
        Assert.Equal("warm-up", day.Refusal("run 417").Check);
        day.Typed("check warm-up 20 25", "run 417", "end");
        ADay other = new ADay(ADay.ShortPlan with { RequiredChecks = ["warm-up"] }).Ready();
        other.Typed("override warm-up driven here for an hour", "run 417");
    }

    [Fact]
    public void A_meter_changed_within_a_session_speaks_against_the_next_run_until_a_new_session()
    {
        ADay day = new ADay().Ready().Typed("check meter A F", "run 417", "end", "check meter A S");
        Objection against = day.Refusal("run 862");
        Assert.Equal("meter", against.Check);
        Assert.Contains("within a session", against.Why);
        day.Typed("calibration after 94.0", "calibration before 94.0", "check meter A F", "run 862");
    }

    [Theory]
    [InlineData("check speed 81", CheckAnswer.Records, false)]
    [InlineData("check speed 81.1", CheckAnswer.Warns, false)]
    [InlineData("check speed 77", CheckAnswer.Warns, false)]
    [InlineData("check speed 83.1", CheckAnswer.Warns, true)]
    public void The_speed_by_satellite_warns_and_far_off_flags_the_reading(string line, CheckAnswer answer, bool flagged)
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", line);
        Reading reading = day.Study.LastRun!.LastReading!;
        Assert.Equal(answer, Assert.Single(day.Study.Checks).Answer);
        Assert.Equal(flagged ? SpoiltCause.Speed : null, reading.Spoilt?.Cause);
        Assert.Equal(flagged, reading.LeftOut);
    }

    [Fact]
    public void A_speed_without_a_reading_is_refused() =>
        Assert.Contains("nothing has been read", new ADay().Ready().Refusal("check speed 80").Why);

    [Fact]
    public void Every_limit_can_be_changed_in_the_plan()
    {
        foreach (
            (string line, Limit limit, double value) in new[]
            {
                ("check tyres tread=1.5", FurtherLimits.Tread, 1.5),
                ("check tyres weeks=30", FurtherLimits.Weeks, 30.0),
                ("check tyres shore=8", FurtherLimits.Hardness, 8.0),
                ("check tyres run-in=10", FurtherLimits.RunIn, 10.0),
                ("check warm-up min=5", FurtherLimits.WarmUpMinutes, 5.0),
                ("check meter A F battery=5", FurtherLimits.Battery, 5.0),
                ("check pressure 222 230 250 250", FurtherLimits.PressureWarn, 8.0),
            }
        )
        {
            Limits changed = new()
            {
                Further = System.Collections.Immutable.ImmutableSortedDictionary<string, double>.Empty.Add(limit.Name, value),
            };
            Assert.Equal(CheckAnswer.Warns, new ADay().Ready().Typed(line).Study.Checks[0].Answer);
            Assert.Equal(
                CheckAnswer.Records,
                new ADay(ADay.ShortPlan with { Limits = changed }).Ready().Typed(line).Study.Checks[0].Answer
            );
        }
    }

    [Theory]
    [InlineData("check")]
    [InlineData("check tires tread=1")]
    [InlineData("check pressure 230 230 250")]
    [InlineData("check pressure 230 230 250 x")]
    [InlineData("check pressure 230 230 250 5000")]
    [InlineData("check tyres")]
    [InlineData("check tyres depth=3")]
    [InlineData("check meter A F battery=101")]
    [InlineData("check mass ok")]
    public void A_tick_or_a_value_that_can_not_be_is_refused_with_the_form(string line) =>
        Assert.Contains("check", new ADay().Refusal(line).Instead);

    [Fact]
    public void Imperial_crews_type_psi_fahrenheit_and_pounds()
    {
        ADay day = new ADay(WithTargets with { Units = UnitSystem.Imperial })
            .Ready()
            .Typed("check pressure 33.4 33.4 36.3 36.3 at=68", "check mass 3650");
        Assert.Equal(CheckAnswer.Records, day.Study.Checks[0].Answer);
        Assert.Contains("psi", day.Study.Checks[0].Words);
        Assert.Equal(1655.6, new CheckValues(day.Study.Checks[1].Values).Number("mass")!.Value, 0.1);
    }

    [Theory]
    [InlineData("check warm-up min=20 mi=14", 22.5)]
    [InlineData("check warm-up 20 14", 22.5)]
    [InlineData("check warm-up min=20 km=24", 24)]
    public void A_distance_that_names_its_unit_is_in_that_unit_in_a_plan_in_miles_too(string line, double km)
    {
        ADay day = new ADay(WithTargets with { Units = UnitSystem.Imperial }).Ready().Typed(line);
        Assert.Equal(km, new CheckValues(day.Study.Checks[0].Values).Number("km")!.Value, 0.1);
        Assert.Equal(CheckAnswer.Records, day.Study.Checks[0].Answer);
    }

    [Fact]
    public void No_value_of_one_code_is_ever_typed_so_that_no_file_can_tell() =>
        Assert.DoesNotContain(CheckKinds.All.SelectMany(kind => kind.Values), value => value.Name is "code" or "spec" or "set");

    [Fact]
    public void A_check_can_be_taken_back()
    {
        ADay day = new ADay().Ready().Typed("check meter C F", "u");
        Assert.Empty(day.Study.Checks);
        day.Typed("run 417");
    }
}
