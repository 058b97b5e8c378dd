using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Planning;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Store.Planning;
using FieldSession.Tests.Making;
using FieldSession.Tests.Planning;

namespace FieldSession.Tests.Comparing;

public class TheMainQuestionIsAnsweredOnMainSegmentsTests
{
    [Fact]
    public void The_headline_is_what_a_day_of_these_segments_alone_would_say()
    {
        Study study = Driven(["Mill lane"]).Study;
        Comparison comparison = BlindComparison.Of(StudyReadings.Of(study), StudyTerms.Of(study));
        Comparison alone = BlindComparison.Of(
            StudyReadings.Of(Driven(null, "Mill lane").Study),
            StudyTerms.Of(study) with
            {
                MainSegments = null,
            }
        );
        Assert.Equal(["Mill lane"], comparison.MainSegments!);
        Assert.Equal(alone.Comparisons[0].Classes.Steady!.Overall, comparison.Main[0].Classes.Steady!.Overall);
        Assert.Equal(2, comparison.Main[0].Classes.Steady!.Overall!.DifferenceDb, 1e-9);
        Assert.Null(comparison.Main[0].Classes.Impact);
        Assert.Equal(4, comparison.Comparisons[0].Classes.Steady!.Overall!.DifferenceDb, 1e-9);
    }

    [Fact]
    public void Without_main_segments_the_whole_class_is_the_headline()
    {
        Study study = Driven(null).Study;
        Comparison comparison = BlindComparison.InFull(StudyReadings.Of(study), StudyTerms.Of(study));
        Assert.Null(comparison.MainSegments);
        Assert.Same(comparison.Comparisons, comparison.Main);
        Assert.DoesNotContain("main_segments", ComparisonJson.Of(comparison));
    }

    [Fact]
    public void Summary_report_and_json_name_the_main_segments_and_call_the_rest_explored()
    {
        Study study = Driven(["Mill lane"]).Study;
        MeasuredDay day = StudyReadings.Of(study);
        Comparison comparison = BlindComparison.InFull(day, StudyTerms.Of(study));
        string summary = string.Join('\n', ComparisonWords.Of(comparison, day));
        Assert.Contains("MAIN MEASURE: the main segment Mill lane", summary);
        Assert.Contains("Everything below is explored.", summary);
        Assert.Contains("\"main_segments\"", ComparisonJson.Of(comparison));
        string report = string.Join(
            '\n',
            DayReport.Of(study, null, new Provenance(1, "", "")).Sections.SelectMany(section => section.Blocks).SelectMany(Texts)
        );
        Assert.Contains("Main measure: the main segment Mill lane. Everything else is explored.", report);
        Assert.Contains("862 against 417, on the main segment Mill lane:", report);
        Assert.Contains("main segments", report);
        Assert.Contains("Everything beyond the main segment Mill lane is explored", report);
    }

    [Theory]
    [InlineData("main_segments = [\"long LANE\"]", "Long lane")]
    [InlineData("main_measure = \"impact\"\nmain_segments = [\"Bridge joint\"]", "Bridge joint")]
    [InlineData("main_measure = \"all\"\nmain_segments = [\"Bridge joint\", \"Long lane\"]", "Long lane, Bridge joint")]
    public void The_names_are_those_of_the_route_in_its_order(string more, string names) =>
        Assert.Equal(names, string.Join(", ", PlanTexts.WithPlan(more).Plan!.MainSegments!));

    [Theory]
    [InlineData("main_segments = [\"Long lame\"]", "'Long lame' is not a segment of the route", "Long lane, Bridge joint")]
    [InlineData("main_segments = []", "no main segment is named", "leave it out")]
    [InlineData("main_segments = [\"Bridge joint\"]", "is an impact, and the main measure is steady", "change the main measure")]
    [InlineData(
        "main_measure = \"impact\"\nmain_segments = [\"Long lane\"]",
        "is a steady segment, and the main measure is impact",
        "change the main measure"
    )]
    [InlineData("main_segments = \"Long lane\"", "'main_segments' is text", "a list")]
    [InlineData("main_segments = [\"Long lane\", \"long lane\"]", "twice", "once")]
    public void Others_are_refused_at_their_place(string more, string what, string allowed)
    {
        PlanProblem seen = PlanTexts.OnlyProblem(PlanTexts.WithPlan(more));
        Assert.Contains(what, seen.What);
        Assert.Contains(allowed, seen.Allowed);
        Assert.Equal("plan.toml", seen.File);
        Assert.NotNull(seen.Line);
    }

    [Fact]
    public void They_are_amended_with_a_reason_and_taken_back_by_a_hyphen()
    {
        ADay day = new ADay().Ready().Typed("amend main_segments=quarry road because the town is dug up");
        Assert.Equal(["Quarry road"], day.Study.Plan!.MainSegments!);
        Assert.Contains("the main measure is impact", day.Refusal("amend main_measure=impact because why").Why);
        Assert.Contains("not a segment of the route", day.Refusal("amend main_segments=Moon because why").Why);
        day.Typed(
            "amend main_segments=- because all count",
            "amend main_measure=impact because why",
            "amend main_segments=Bridge joint because why"
        );
        Assert.Equal(["-", "Quarry road"], day.Study.Amendments.Where(one => one.What == "main_segments").Take(2).Select(one => one.From));
        Assert.Equal(["Bridge joint"], day.Study.Plan!.MainSegments!);
    }

    [Fact]
    public void A_plan_with_main_segments_is_read_back_from_its_line()
    {
        ADay day = Driven(["Mill lane"]);
        Entry read = EntryKinds.EntryIn(day.Journal.Lines[0]);
        Assert.Equal(["Mill lane"], Assert.IsType<PlanMade>(read).Plan.MainSegments!);
    }

    // the candidate is 2 dB louder on Mill lane, 6 dB on Quarry road
    private static ADay Driven(string[]? main, string? only = null)
    {
        Plan plan = ADay.ShortPlan;
        Segment[] route =
        [
            .. plan.Route.Where(segment => only is null || segment.Name == only).Select((segment, i) => segment with { Number = i + 1 }),
        ];
        ADay day = new ADay(plan with { Route = [.. route], MainSegments = main is null ? null : [.. main] }).Ready();
        foreach (string code in new[] { "417", "862", "417" })
        {
            int louder = code == "862" ? 1 : 0;
            string[] readings = [$"{60 + (2 * louder)}{62 + (2 * louder)}", $"{64 + (6 * louder)}{66 + (6 * louder)}", "71.4"];
            day.Typed([$"run {code}", .. readings.Take(route.Length)]);
            day.Clock.Advance(TimeSpan.FromMinutes(30));
        }

        return day;
    }

    private static IEnumerable<string> Texts(ReportBlock block) =>
        block switch
        {
            Paragraph paragraph => [paragraph.Words],
            Points points => points.Items,
            ReportTable table => table.Rows.SelectMany(row => row),
            _ => [],
        };
}
