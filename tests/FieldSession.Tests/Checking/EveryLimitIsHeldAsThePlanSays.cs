using FieldSession.Checking;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Checking;

/// <summary>Every limit of the checks: the same day is spoken of at the default and passes at the value that a plan sets instead.</summary>
public class EveryLimitIsHeldAsThePlanSays
{
    private const string Before = "calibration before 94.0";
    private const string Control = "run 417|6060|6565|700|m";
    private const string Candidate = "run 862|6060|6565|700|m";

    public static TheoryData<string, double, string, string> Cases =>
        new()
        {
            { "calibration_drift_warn_db", 0.45, $"{Before}|run 417|5860|end|calibration after 94.4", "have the meter looked at" },
            { "calibration_drift_void_db", 0.8, $"{Before}|run 417|5860|end|calibration after 94.6", "this session is void" },
            { "wind_warn_m_s", 6, $"{Before}|weather wind=5.5", "mean wind above" },
            { "wind_block_m_s", 10, $"{Before}|weather wind=9", "the mean wind of" },
            { "gust_warn_m_s", 10, $"{Before}|weather gust=9", "gusts above" },
            { "air_coldest_c", 0, $"{Before}|weather air=3", "air outside" },
            { "air_warmest_c", 40, $"{Before}|weather air=38", "air outside" },
            { "level_lowest_db", 20, $"{Before}|run 417|seg 2|25-28", "is outside" },
            { "level_highest_db", 130, $"{Before}|run 417|seg 2|109.0-111.0", "is outside" },
            { "nominal_distance_db", 12, $"{Before}|run 417|69-71", "off the plan's" },
            { "width_warn_db", 6, $"{Before}|run 417|58-63", "wide" },
            { "width_doubt_db", 12, $"{Before}|run 417|55-65", "wide: traffic?" },
            { "segment_shortest_s", 2, Before, "'Short lane' lasts 2.3 s" },
            { "calibrator_distance_db", 1, "calibration before 94.7", "adjust the meter" },
            { "meter_class1_coldest_c", -20, "check meter A F class=1 at=-15", "Warns" },
            { "meter_class1_warmest_c", 60, "check meter A F class=1 at=55", "Warns" },
            { "meter_class2_coldest_c", -10, "check meter A F class=2 at=-5", "Warns" },
            { "meter_class2_warmest_c", 50, "check meter A F class=2 at=45", "Warns" },
            { "battery_lowest_percent", 5, "check meter A F battery=10", "Warns" },
            { "pressure_warn_kpa", 8, "check pressure 237 237 250 250", "Warns" },
            { "pressure_block_kpa", 20, "check pressure 245 245 250 250", "Blocks" },
            { "run_in_shortest_km", 50, "check tyres run-in=80", "Warns" },
            { "tread_difference_mm", 1.5, "check tyres tread=1.2", "Warns" },
            { "build_difference_weeks", 30, "check tyres weeks=20", "Warns" },
            { "hardness_difference_shore", 8, "check tyres shore=6", "Warns" },
            { "mass_difference_kg", 100, "check mass 1655|check mass 1700", "Warns" },
            { "charge_difference_percent", 30, "check charge 72|check charge 50", "Warns" },
            { "warm_up_shortest_min", 5, "check warm-up min=10", "Warns" },
            { "warm_up_shortest_km", 5, "check warm-up km=10", "Warns" },
            { "speed_warn_kmh", 2, $"{Before}|run 417|5860|check speed 81.5", "Warns" },
            { "speed_flag_kmh", 6, $"{Before}|run 417|5860|check speed 84", "spoilt by Speed" },
            { "bracket_air_spread_c", 10, $"{Before}|weather air=6|{Control}|weather air=13|{Candidate}|{Control}", "the air changed" },
            { "control_repeat_warn_db", 3, $"{Before}|{Control}|{Candidate}|run 417|6161|6767|700|m", "repeats" },
            { "control_repeat_void_db", 4, $"{Before}|{Control}|{Candidate}|run 417|6363|6868|700|m", "void, drive it again" },
            { "bracket_gap_longest_min", 120, $"{Before}|{Control}|wait 90|{Candidate}|{Control}", "min between" },
            { "spoilt_share_percent", 60, $"{Before}|{Control}|run 862|6060 t|6565|m|m|{Control}", "of run 2 is spoilt" },
            { "spoilt_uneven_points", 70, $"{Before}|{Control}|run 862|6060 t|6565|m|m|{Control}", "uneven" },
        };

    public static TheoryData<string> Names => [.. AllLimits.InOrder.Select(held => held.Limit.Name)];

    [Fact]
    public void There_is_a_case_for_every_limit() =>
        Assert.Equal(AllLimits.InOrder.Select(held => held.Limit.Name), Cases.Select(row => row.Data.Item1));

    [Theory]
    [MemberData(nameof(Cases))]
    public void At_its_default_it_speaks_and_at_the_plans_value_it_is_silent(string limit, double value, string lines, string words)
    {
        HeldLimit held = AllLimits.InOrder.Single(one => one.Limit.Name == limit);
        Assert.Contains(words, Said(new Limits(), lines));
        Assert.DoesNotContain(words, Said(held.Set(new Limits(), value), lines));
        Assert.Equal(value, held.Of(held.Set(new Limits(), value)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_changed_limit_is_in_the_report_with_its_reason_or_that_there_is_none(string limit)
    {
        HeldLimit held = AllLimits.InOrder.Single(one => one.Limit.Name == limit);
        double value = held.Limit.Default + 0.25;
        Limits changed = held.Set(new Limits(), value);
        Assert.Contains(
            $"Limit {limit} ({held.Limit.Words}) was set to {value:0.###} instead of {held.Limit.Default:0.###}: no reason "
                + "was written down",
            Report(changed)
        );
        Assert.Contains(
            ": worn on purpose",
            Report(
                changed with
                {
                    Reasons = System.Collections.Immutable.ImmutableSortedDictionary<string, string>.Empty.Add(limit, "worn on purpose"),
                }
            )
        );
    }

    private static string Report(Limits limits) =>
        string.Join(
            '\n',
            ChecksSection
                .Of(new ADay(ADay.ShortPlan with { Limits = limits }).Study)
                .Blocks.OfType<Points>()
                .SelectMany(points => points.Items)
        );

    // everything that the day is told: answers, doubts, checks, what speaks against the next run, brackets, flags, the plan
    private static string Said(Limits limits, string lines)
    {
        Plan plan = ADay.ShortPlan with { Limits = limits, PressureFrontKpa = 230, PressureRearKpa = 250 };
        ADay day = new(
            plan with
            {
                Route = plan.Route.Add(ADay.ASegment(4, "Short lane", "smooth") with { Length = Distance.FromMetres(50) }),
            }
        );
        List<string> said = [];
        foreach (string line in lines.Split('|'))
        {
            if (line.StartsWith("wait ", StringComparison.Ordinal))
            {
                day.Clock.Advance(TimeSpan.FromMinutes(int.Parse(line[5..], System.Globalization.CultureInfo.InvariantCulture)));
                continue;
            }

            Echo echo = day.Answer(line);
            said.AddRange([echo.Words, echo.Doubt ?? ""]);
        }

        said.AddRange(day.Study.Checks.Select(check => $"{check.Answer}: {check.Words}"));
        said.AddRange(
            day.Study.Runs.SelectMany(run => run.Readings)
                .Select(reading => reading.Spoilt is { } spoilt ? $"spoilt by {spoilt.Cause}" : "")
        );
        said.AddRange(RunChecks.WeatherWarnings(day.Study));
        said.AddRange(RunChecks.AgainstNextRun(day.Study).Select(objection => objection.Why));
        said.AddRange(BracketCheck.Of(day.Study).SelectMany(check => check.Warnings(limits)));
        said.AddRange(SpoiltBalance.Warnings(day.Study));
        said.AddRange(PlanDoubts.Of(day.Study.Plan!));
        return string.Join('\n', said);
    }
}
