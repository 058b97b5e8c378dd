using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Planning;

public class ThePlanIsFrozenFirst
{
    private static readonly string[] Run = ["6062", "6466", "71.4"];

    [Theory]
    [InlineData("amend margin_db=1,5 because the owner asks for less", "margin_db", "1.0", "1,5")]
    [InlineData("AMEND Impact_Margin_Db = 2.5 because joints are rough", "impact_margin_db", "2.0", "2.5")]
    [InlineData("amend main_measure=impact because that is the question", "main_measure", "steady", "impact")]
    [InlineData("amend order=R 1 R 1 R because a bracket more", "order", "R 1 R", "R 1 R 1 R")]
    [InlineData(
        "amend question=Louder, because of the joint? because it was unclear",
        "question",
        "Is the candidate louder?",
        "Louder, because of the joint?"
    )]
    public void A_part_is_amended_with_its_reason_and_what_it_was(string typed, string what, string from, string to)
    {
        ADay day = Driven().Typed(typed);
        Amendment amendment = Assert.Single(day.Study.Amendments);
        Assert.Equal((what, from, to, 1), (amendment.What, amendment.From, amendment.To, amendment.AfterRun));
        Assert.Equal(
            2,
            EntryKinds.EntryIn(day.Journal.Lines[0]) is FieldSession.Planning.PlanMade { Plan.ImpactMarginDb: var kept } ? kept : 0
        );
    }

    [Fact]
    public void The_amended_plan_is_what_the_day_is_held_against_and_the_report_shows_both()
    {
        ADay day = Driven().Typed("amend margin_db=1.5 because the owner asks for less");
        Assert.Equal(1.5, StudyTerms.Of(day.Study).MarginDb);
        string question = Question(day);
        Assert.Contains("AMENDED after run 1 had been driven", question);
        Assert.Contains("margin_db from 1.0 to 1.5, because the owner asks for less", question);
    }

    [Fact]
    public void Before_run_1_it_is_a_change_of_plan_that_is_in_the_report_too()
    {
        ADay day = new ADay().Typed("amend order=1 R 1 because the other first");
        Assert.Contains("Changed before run 1", Question(day));
        Assert.Equal("862", day.Study.CodeAsked?.Digits);
    }

    [Theory]
    [InlineData("amend margin_db=1.5", "and why")]
    [InlineData("amend margin_db because why", "and why")]
    [InlineData("amend margin_db=0 because why", "not a margin")]
    [InlineData("amend margin_db=much because why", "not a margin")]
    [InlineData("amend main_measure=2 because why", "not a main measure")]
    [InlineData("amend order=R R R R because why", "only grow at its end")]
    [InlineData("amend order=R 1 because why", "only grow at its end")]
    [InlineData("amend order=R 1 R 7 because why", "unknown place")]
    [InlineData("amend question= because why", "empty")]
    [InlineData("amend crew=Ada because why", "not a part of the plan")]
    public void What_is_no_amendment_is_refused_and_changes_nothing(string typed, string why) =>
        Assert.Contains(why, Driven().Refusal(typed).ToString());

    [Fact]
    public void While_a_run_is_on_and_once_a_prediction_is_locked_the_plan_stays()
    {
        Assert.Contains("next stop", Driven().Typed("run 862").Refusal("amend margin_db=1.5 because why").Instead);
        ADay evening = Driven().Typed(["run 862", .. Run]).Typed("calibration after 94.0", "predict Ro feature=862 sure=1");
        Assert.Contains("frozen", evening.Refusal("amend margin_db=1.5 because why").Why);
    }

    [Fact]
    public void An_amendment_cant_be_undone_by_a_key()
    {
        ADay day = Driven().Typed("amend margin_db=1.5 because why");
        day.Refusal("u");
        Assert.Equal(1.5, day.Study.Plan!.MarginDb);
    }

    [Fact]
    public void An_order_lengthened_after_its_end_counts_as_a_further_look()
    {
        ADay day = Driven().Typed(["run 862", .. Run]).Typed(["run 417", .. Run]);
        Assert.Equal(0, StudyTerms.Of(day.Study).Looks!.Lengthened);
        day.Typed("amend order=R 1 R 1 R because not resolved");
        Assert.Equal((1, false), (StudyTerms.Of(day.Study).Looks!.Lengthened, StudyTerms.Of(day.Study).PlanComplete));
        Assert.Equal("862", day.Study.CodeAsked?.Digits);
    }

    [Theory]
    [InlineData("main_measure=all")]
    [InlineData("margin_db=1.5")]
    [InlineData("impact_margin_db=3")]
    public void What_is_chosen_after_a_comparison_could_be_seen_is_beside_the_headline_and_never_in_it(string amendment)
    {
        ADay seen = Driven().Typed(["run 862", .. Run]);
        ComparisonTerms before = StudyTerms.Of(seen.Study);
        seen.Typed($"amend {amendment} because we looked");
        ComparisonTerms after = StudyTerms.Of(seen.Study);
        Assert.Equal(
            (before.MainMeasure, before.MarginDb, before.ImpactMarginDb),
            (after.MainMeasure, after.MarginDb, after.ImpactMarginDb)
        );
        ComparisonTerms chosen = StudyTerms.ChosenAfter(seen.Study)!;
        Assert.NotEqual(
            (after.MainMeasure, after.MarginDb, after.ImpactMarginDb),
            (chosen.MainMeasure, chosen.MarginDb, chosen.ImpactMarginDb)
        );
        string verdict = ReportMarkdown.Of(DayReport.Of(seen.Study, null, new Provenance(1, "", "")));
        Assert.Contains("Chosen after the data", verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_two_codes_were_read_an_amendment_is_the_question_itself()
    {
        ADay day = Driven().Typed("amend margin_db=1.5 because the owner asks for less");
        Assert.Equal(1.5, StudyTerms.Of(day.Study).MarginDb);
        Assert.Null(StudyTerms.ChosenAfter(day.Study));
    }

    [Fact]
    public void An_order_lengthened_in_the_middle_counts_too_once_a_comparison_could_be_seen()
    {
        ADay day = Driven()
            .Typed(["run 862", .. Run])
            .Typed("amend order=R 1 R 1 because more", "amend order=R 1 R 1 R because still more");
        Assert.Equal([3, 4, 5], StudyTerms.OrderRunsOf(day.Study));
        Assert.Equal(2, StudyTerms.Of(day.Study).Looks!.Lengthened);
        Assert.Equal(0, StudyTerms.Of(Driven().Typed("amend order=R 1 R 1 R because why").Study).Looks!.Lengthened);
    }

    private static ADay Driven() => new ADay().Ready().Typed(["run 417", .. Run]);

    private static string Question(ADay day) =>
        string.Join(
            '\n',
            DayReport
                .Of(day.Study, null, new Provenance(1, "", ""))
                .Sections.Single(section => section.Part == ReportPart.Question)
                .Blocks.OfType<Points>()
                .SelectMany(points => points.Items)
        );
}
