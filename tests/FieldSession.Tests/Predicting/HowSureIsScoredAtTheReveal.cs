using FieldSession.Predicting;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Predicting;

public class HowSureIsScoredAtTheReveal
{
    [Theory]
    [InlineData("3", 3, null)]
    [InlineData("80%", 3, 80)]
    [InlineData("100 %", 5, 100)]
    [InlineData("1%", 1, 1)]
    public void Steps_and_per_cent_are_read(string typed, int step, int? percent) =>
        Assert.Equal((step, percent), PredictionScale.Read(typed));

    [Theory]
    [InlineData("sure=0")]
    [InlineData("sure=6")]
    [InlineData("sure=101%")]
    [InlineData("sure=0%")]
    [InlineData("sure=-5%")]
    [InlineData("sure=very")]
    [InlineData("sure=%")]
    public void What_is_neither_is_refused(string sure) =>
        Assert.Contains(
            "80%",
            Driven().Refusal($"predict Ro feature=862 {sure}").ToString().Replace("1% to 100%", "80%", StringComparison.Ordinal)
        );

    // own scale, docs/formulas.md: step 1 is the chance of pointing blindly, step 5 certainty, evenly between
    [Theory]
    [InlineData(2, 1, 0.5)]
    [InlineData(2, 4, 0.875)]
    [InlineData(2, 5, 1)]
    [InlineData(3, 1, 2.0 / 3)]
    [InlineData(3, 3, 5.0 / 6)]
    public void A_step_means_a_probability(int specs, int step, double probability) =>
        Assert.Equal(probability, PredictionScale.Stated(Of(step, null), specs), 12);

    [Fact]
    public void Per_cent_are_for_themselves() => Assert.Equal(0.7, PredictionScale.Stated(Of(3, 70), 3), 12);

    // by hand: 0.875 and 0.8 stated for the code that is the candidate: both hit, chance 1/2 each
    [Fact]
    public void Two_right_of_two_is_a_description_because_guessing_does_it_in_a_quarter_of_studies()
    {
        PredictionScores scores = PredictionScores.Of(PredictionScores.In(Locked("862", "862"), Key))!;
        Assert.Equal((2, 2), (scores.Count, scores.Hits));
        Assert.Equal(0.25, scores.PAtLeast, 12);
        Assert.Equal(((0.125 * 0.125) + (0.2 * 0.2)) / 2, scores.Brier, 12);
        Assert.Equal(0.25, scores.BrierOfChance, 12);
        Assert.Contains("can't tell knowledge from luck", string.Join(' ', ScoreWords.Of(scores)));
    }

    [Fact]
    public void One_right_of_two_is_scored_and_told_in_the_report()
    {
        string section = Section(DayReport.Of(Locked("862", "417"), Key, new Provenance(1, "", "")));
        Assert.Contains("1 of 2 right", section);
        Assert.Contains("0.75", section);
        Assert.Contains("right where it is not the control", section);
    }

    [Fact]
    public void Nothing_is_scored_while_the_key_is_closed_or_does_not_tell_the_control()
    {
        Study study = Locked("862", "862");
        Assert.Empty(PredictionScores.In(study, null));
        Assert.Empty(PredictionScores.In(study, Key with { Control = null }));
        Assert.Empty(PredictionScores.In(study, Key with { CommitmentHolds = false }));
        Assert.DoesNotContain("right.", Section(DayReport.Of(study, null, new Provenance(1, "", ""))));
        Assert.Null(PredictionScores.Of([]));
    }

    [Fact]
    public void A_prediction_from_something_seen_is_pointed_out()
    {
        ADay day = Driven().Typed("predict Ro feature=862 sure=4 because=seen a label", "predict Tam feature=862 sure=3");
        Assert.Contains("look at the words whether the blind held", Section(DayReport.Of(day.Study, Key, new Provenance(1, "", ""))));
    }

    [Fact]
    public void Predictions_of_several_studies_are_scored_together()
    {
        using AtThePrompt one = Revealed(1);
        using AtThePrompt other = Revealed(2);
        string said = one.Must(0, ["score", one.Study, other.Study]);
        Assert.Contains("of 4 right", said);
        Assert.Contains("Brier score", said);
        using AtThePrompt closed = AWholeDay.Sealed();
        Assert.Contains("the key is not open", closed.Must(1, ["score", closed.Study]));
    }

    private static AtThePrompt Revealed(int seed)
    {
        AtThePrompt prompt = AWholeDay.Sealed(seed: seed).Enter(AWholeDay.Ready).Drive(6);
        SpecCode[] codes = [.. prompt.Now().Codes];
        prompt.Predict(codes[0]);
        prompt.Must(0, prompt.RevealWords("a.key"));
        return prompt;
    }

    private static OpenedKey Key =>
        new([new CodedSpec(new("417"), "A"), new CodedSpec(new("862"), "B")], "A", [], new MarkCheck([], [], ReadByTwo: true), true);

    private static Prediction Of(int step, int? percent) =>
        new("Ro", new("862"), step, null, null, PredictionBasis.Guess, null, default) { SurePercent = percent };

    private static Study Locked(string ofRo, string ofTam) =>
        Driven().Typed($"predict Ro feature={ofRo} sure=4", $"predict Tam feature={ofTam} sure=80%").Study;

    private static ADay Driven() =>
        new ADay().Ready().Typed("run 417", "6062", "6466", "71.4", "run 862", "6062", "6466", "71.4", "calibration after 94.0");

    private static string Section(Report report) =>
        string.Join(
            '\n',
            report
                .Sections.Single(section => section.Title == "Predictions")
                .Blocks.SelectMany(block =>
                    block switch
                    {
                        Points points => points.Items,
                        Paragraph paragraph => [paragraph.Words],
                        _ => [],
                    }
                )
        );
}
