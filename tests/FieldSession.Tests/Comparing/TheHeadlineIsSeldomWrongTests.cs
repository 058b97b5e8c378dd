using FieldSession.Benchmarks;
using FieldSession.Comparing;
using FieldSession.Tests.Verdicts;

namespace FieldSession.Tests.Comparing;

/// <summary>
/// A word of the headline is wrong in at most 5 % of studies: the cells of docs/formulas.md, "The headline of a whole study", with few
/// studies each.
/// The long run: 'procedure 20000 1' of the benchmarks.
/// </summary>
public sealed class TheHeadlineIsSeldomWrongTests
{
    private const int Studies = 300;
    private const int Seed = 7;

    // of some 40 cells none should pass 5 % by more than 3.5 standard errors
    private static readonly HeadlineErrors Errors = new(Studies, Seed);
    private static readonly double Most = 5 + 3.5 * Errors.StandardErrorPercent;

    public static TheoryData<int> Plans => [.. Enumerable.Range(0, Procedure.Plans.Count)];

    public static TheoryData<int> Crews => [.. Enumerable.Range(0, Procedure.Crews.Count)];

    [Theory]
    [MemberData(nameof(Plans))]
    public void In_studies_of_a_fixed_order_whatever_is_true_of_the_candidates(int plan)
    {
        InventedDay day = Procedure.Plans[plan].Day;
        Assert.InRange(Errors.OfPlan(day, 10 * plan).Wrong, 0, Most);
        Assert.InRange(Errors.OfPlan(Procedure.Apart(day), 10 * plan + 1).Wrong, 0, Most);
        if (Procedure.Mixed(day) is { } mixed)
        {
            Assert.InRange(Errors.OfPlan(mixed, 10 * plan + 2).Wrong, 0, Most);
        }
    }

    [Theory]
    [MemberData(nameof(Crews))]
    public void For_a_crew_that_lengthens_at_will_and_stops_where_it_likes(int crew)
    {
        (double spent, double plain) = Errors.OfCrew(Procedure.Crews[crew], 1000 + crew);
        Assert.InRange(spent, 0, Most);
        Assert.True(spent < plain, "looking costs nothing");
    }

    [Fact]
    public void For_a_question_amended_after_the_last_run_although_the_amended_one_would_say_what_was_liked()
    {
        InventedDay day = new(AmendedQuestions.Order, 14) { Impacts = 4 };
        (double headline, double amended) = Errors.OfAmended(day, AmendedQuestions.Measures, 2000);
        Assert.InRange(headline, 0, Most);
        Assert.True(amended > 2 * headline, $"{amended} against {headline}");
        (double apart, double wider) = Errors.OfAmended(Procedure.Apart(day), AmendedQuestions.Margins, 2001);
        Assert.InRange(apart, 0, Most);
        Assert.True(wider > 2 * apart, $"{wider} against {apart}");
    }

    [Fact]
    public void What_is_simulated_is_what_a_comparison_says()
    {
        foreach (VerdictDay day in VerdictDays.Random(200).Concat(VerdictDays.ByHand()))
        {
            (string Code, Conclusion? Word)[] whole =
            [
                .. BlindComparison.Of(day.Day, day.Terms).Comparisons.Select(pair => (pair.Code, pair.Classes.Steady?.Conclusion)),
            ];
            (string Code, Conclusion? Word)[] alone =
            [
                .. MainConclusions.Of(day.Day, day.Terms).Select(pair => (pair.Code, pair.Conclusion)),
            ];
            Assert.Equal(whole, alone);
        }
    }
}
