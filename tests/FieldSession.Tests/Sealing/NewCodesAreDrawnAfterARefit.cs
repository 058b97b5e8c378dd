using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Terminal.Look;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Sealing;

public class NewCodesAreDrawnAfterARefit
{
    private static readonly string[] Run = ["6062", "6466", "71.4"];

    [Fact]
    public void Between_runs_the_new_fitting_takes_over_and_the_order_goes_on_by_place()
    {
        ADay day = new ADay().Ready().Typed(["run 417", .. Run]);
        Assert.True(day.Book.Write(Fitting("531", "290")).IsWritten);
        Assert.Equal("290", day.Study.CodeAsked?.Digits);
        Assert.Equal("417", day.Study.ReferenceCode?.Digits);
        Assert.Contains("531, 290", day.Refusal("run 862").Instead.Replace("290, 531", "531, 290", StringComparison.Ordinal));
        day.Typed(["run 290", .. Run]).Typed(["run 531", .. Run]);
        Assert.All(day.Study.Runs, run => Assert.Null(run.Doubt));
    }

    [Fact]
    public void Each_fitting_is_bracketed_by_its_own_reference_and_the_card_waits_for_the_key_to_join_them()
    {
        Plan plan = ADay.ShortPlan with { Order = [.. "R1RR1R".Select(place => new Place(place == 'R' ? 0 : 1))] };
        ADay day = new ADay(plan).Ready();
        new[] { "417", "862", "417" }.ToList().ForEach(code => day.Typed([$"run {code}", .. Run]));
        Assert.True(day.Book.Write(Fitting("531", "290")).IsWritten);
        new[] { "531", "290", "531" }.ToList().ForEach(code => day.Typed([$"run {code}", .. Run]));

        Assert.Equal(
            ["1 2 3", "4 5 6"],
            Brackets.Of(day.Study).Select(bracket => string.Join(' ', bracket.Runs.Select(run => run.Number)))
        );
        Assert.Equal(["290 has 1 bracket", "862 has 1 bracket"], StillMissing.In(day.Study).Select(words => words.Split(';')[0]).Order());
        (MeasuredDay levels, ComparisonTerms terms) = (StudyReadings.Of(day.Study), StudyTerms.Of(day.Study));
        string card = string.Join(
            ' ',
            BlindCard.Lines(day.Study, levels, BlindComparison.InFull(levels, terms), EarFindings.Of(day.Study, terms), ring: null)
        );
        Assert.Contains("were on another fitting", card, StringComparison.Ordinal);
        Assert.DoesNotContain("code 290 was", card, StringComparison.Ordinal);
    }

    [Fact]
    public void While_a_run_is_on_no_fitting_is_sealed()
    {
        ADay day = new ADay().Ready().Typed("run 417");
        Assert.Contains("next stop", day.Book.Write(Fitting("531", "290")).Objection!.Instead);
    }

    [Fact]
    public void A_fitting_that_nobody_drove_is_not_drawn_again() =>
        Assert.Contains("none of its codes has been driven", new ADay().Book.Write(Fitting("531", "290")).Objection!.Why);

    [Theory]
    [InlineData("417", "290")]
    [InlineData("531", "867")]
    public void A_code_used_before_or_one_digit_away_from_it_is_refused(string one, string other)
    {
        ADay day = new ADay().Ready().Typed(["run 417", .. Run]);
        Assert.Contains("two digits", day.Book.Write(Fitting(one, other)).Objection!.Instead);
    }

    [Fact]
    public void After_the_first_prediction_no_fitting_is_sealed()
    {
        ADay day = new ADay()
            .Ready()
            .Typed(["run 417", .. Run])
            .Typed(["run 862", .. Run])
            .Typed("calibration after 94.0", "predict Ro feature=862 sure=2");
        Assert.Contains("frozen", day.Book.Write(Fitting("531", "290")).Objection!.Why);
    }

    [Fact]
    public void One_whole_fitting_driven_is_enough_to_predict_on_any_driven_code()
    {
        ADay day = new ADay().Ready().Typed(["run 417", .. Run]).Typed(["run 862", .. Run]);
        Assert.True(day.Book.Write(Fitting("531", "290")).IsWritten);
        day.Typed(["run 531", .. Run]).Typed("calibration after 94.0");
        Assert.Contains("not a code that was driven", day.Refusal("predict Ro feature=290 sure=2").Why);
        day.Typed("predict Ro feature=531 sure=2");
    }

    [Fact]
    public void The_command_draws_codes_unlike_all_earlier_ones_fitting_after_fitting()
    {
        using AtThePrompt prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(1);
        for (int fitting = 2; fitting <= 5; fitting++)
        {
            prompt.Must(0, ["seal", prompt.Study, "--specs", prompt.Here("specs.txt"), "--key", prompt.Here($"{fitting}.key")]);
            prompt.Drive(1);
        }

        SpecCode[] codes = [.. prompt.Now().Codes];
        Assert.Equal(10, codes.Length);
        Assert.All(codes, one => Assert.All(codes.Where(other => other != one), other => Assert.True(CodeLot.Differ(one, other))));
        Assert.Equal(5, prompt.Now().Commitments.Distinct().Count());
    }

    private static SpecsSealed Fitting(string reference, string other) =>
        new([new SpecCode(reference), new SpecCode(other)], new string('b', 64));
}
