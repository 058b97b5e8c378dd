using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Statistics;
using FieldSession.Tests.Making;
using FieldSession.Tests.Rating;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Comparing;

public sealed class EarFindingsTests
{
    // ISO 5495 table A.1, alpha 0.05, one-sided, as kept in References/cases/13-forced-choice
    [Fact]
    public void The_published_fewest_right_answers_of_one_sided_pairs_come_through_the_finding()
    {
        var rows = ReferenceCase.Open("13-forced-choice").Table("data.csv");
        Assert.Equal(24, rows.Count);
        Assert.All(
            rows,
            row =>
                Assert.Equal(
                    int.Parse(row["a0.05"], CultureInfo.InvariantCulture),
                    ChoiceSize.Of(0.5, isTwoSided: false, int.Parse(row["n"], CultureInfo.InvariantCulture), 0.75).FewestRight
                )
        );
    }

    // the tables of ISO 5495 (two-sided) and ISO 4120 (triangle), as far as they are the exact binomial (from memory)
    [Theory]
    [InlineData(ChoiceKind.Paired, new[] { 6, 8, 10, 12, 16, 20, 24 }, new[] { 6, 8, 9, 10, 13, 15, 18 })]
    [InlineData(ChoiceKind.Triangle, new[] { 5, 6, 8, 10, 12, 18, 24, 30 }, new[] { 4, 5, 6, 7, 8, 10, 13, 15 })]
    public void The_fewest_right_answers_of_two_sided_pairs_and_triangles_are_the_published_ones(
        ChoiceKind kind,
        int[] trials,
        int[] right
    ) =>
        Assert.Equal(
            right,
            trials.Select(n =>
                ChoiceSize
                    .Of(kind == ChoiceKind.Triangle ? 1 / 3.0 : 0.5, isTwoSided: kind == ChoiceKind.Paired, n, 0.75)
                    .FewestRight!.Value
            )
        );

    // own calculation with the binomial sum: P(X >= 10 of 12) and P(X >= 17 of 24) at 0.75
    [Theory]
    [InlineData(12, 0.39)]
    [InlineData(24, 0.77)]
    public void The_power_at_three_quarters_right_is_known_before_the_first_choice(int trials, double power) =>
        Assert.Equal(power, ChoiceSize.Of(0.5, isTwoSided: false, trials, 0.75).PowerAt75, 2);

    [Fact]
    public void The_number_for_a_wanted_power_keeps_it_from_there_on()
    {
        int enough = ChoiceSize.TrialsFor(0.5, isTwoSided: false, 0.75)!.Value;
        Assert.All(Enumerable.Range(enough, 100), n => Assert.True(ChoiceSize.Of(0.5, false, n, 0.75).PowerAtDetect >= 0.8));
        Assert.True(ChoiceSize.Of(0.5, false, enough - 1, 0.75).PowerAtDetect < 0.8);
    }

    [Theory]
    [InlineData("trials 862 417 n=10 x", 10, 9, EarVerdict.HeardBlind, 0.0215)]
    [InlineData("trials 862 417 n=10 x", 10, 1, EarVerdict.HeardBlind, 0.0215)]
    [InlineData("trials 862 417 n=10 x", 10, 8, EarVerdict.NotTestedEnough, 0.1094)]
    [InlineData("trials 862 417 n=10 x", 10, 5, EarVerdict.NotTestedEnough, 1)]
    [InlineData("trials 862 417 n=40 x", 40, 22, EarVerdict.NotHeard, 0.6358)]
    [InlineData("trials 862 417 n=12 detect=90 side=862 x", 12, 7, EarVerdict.NotHeard, 0.3872)]
    [InlineData("trials 862 417 n=12 side=862 x", 12, 7, EarVerdict.NotTestedEnough, 0.3872)]
    [InlineData("trials 862 417 n=12 side=862 x", 12, 2, EarVerdict.NotTestedEnough, 0.9968)]
    public void The_ears_word_follows_from_count_side_and_power(string trials, int made, int of862, EarVerdict word, double p)
    {
        ChoiceFinding found = AnEarDay.Found(AnEarDay.Chosen(trials, made, of862)).Choices[0];
        Assert.Equal(word, found.Verdict);
        Assert.Equal(p, found.Counts!.P, 4);
    }

    // least right answers for a triangle of 12: 8 (ISO 4120, from memory); 3^-12 times the binomial sum gives p 0.0188
    [Theory]
    [InlineData(8, EarVerdict.HeardBlind)]
    [InlineData(7, EarVerdict.NotHeard)]
    public void A_triangle_counts_the_odd_ones_found(int right, EarVerdict word)
    {
        ChoiceFinding found = AnEarDay.Found(AnEarDay.Triangles(12, right)).Choices[0];
        Assert.Equal((right, word), (found.Counts!.Right, found.Verdict));
    }

    [Fact]
    public void A_set_that_was_stopped_early_says_nothing_whatever_it_counts()
    {
        ADay day = AnEarDay.Chosen("trials 862 417 n=10 x", 9, 9).Typed("calibration after 94", "predict Ro feature=862 sure=1");
        ChoiceFinding found = AnEarDay.Found(day).Choices[0];
        Assert.Equal((EarVerdict.NotTestedEnough, 9), (found.Verdict, found.Counts!.Right));
    }

    [Fact]
    public void The_first_set_planned_for_a_pair_carries_the_word_and_further_ones_are_explored_however_they_are_worded()
    {
        ADay day = AnEarDay.Chosen("trials 862 417 n=6 x", 6, 3).Typed("trials 417 862 n=6 x", "trials 417 862 n=6 y");
        EarFindings found = AnEarDay.Found(day);
        Assert.Equal([false, true, true], found.Choices.Select(choice => choice.IsRepeat));
        Assert.Equal(1, found.MainChoice("862", "417")!.Set);
    }

    [Fact]
    public void Whoever_read_the_meter_is_counted_apart_and_carries_no_word()
    {
        ADay day = AnEarDay.AtTheStop().Typed("trials 862 417 n=12 x");
        for (int trial = 1; trial <= 12; trial++)
        {
            ChoiceSet set = day.Study.ChoiceSets[0];
            string louder = set.CodeAt(trial, 1).Digits == "862" ? "first" : "second";
            day.Typed(trial <= 6 ? $"choose Tam {louder}" : $"choose Ro {(trial <= 9 ? "first" : "second")} unseen");
        }

        ChoiceFinding found = AnEarDay.Found(day).Choices[0];
        Assert.Equal((6, 6, 6), (found.MeterSeen!.Right, found.MeterSeen.Made, found.Counts!.Made));
        Assert.NotEqual(EarVerdict.HeardBlind, found.Verdict);
        Assert.Contains("with the meter seen, counted apart: 862 chosen 6 of 6", ChoiceWords.Counts(found), StringComparison.Ordinal);
        // 6 unseen choices can't find 75 % with a chance of 80 %, whatever the planned 12 could
        Assert.Equal(6, found.Size.Trials);
    }

    [Fact]
    public void A_set_chosen_with_the_meter_seen_alone_says_nothing()
    {
        ADay day = AnEarDay.AtTheStop().Typed("trials 862 417 n=6 x");
        for (int trial = 1; trial <= 6; trial++)
        {
            day.Typed($"choose Ro {(day.Study.ChoiceSets[0].CodeAt(trial, 1).Digits == "862" ? "first" : "second")}");
        }

        ChoiceFinding found = AnEarDay.Found(day).Choices[0];
        Assert.Equal((EarVerdict.NotTestedEnough, null), (found.Verdict, found.Counts));
        Assert.StartsWith(
            "NOT TESTED ENOUGH: 'x', 862 or 417, two-sided: nobody chose unseen",
            ChoiceWords.Sentence(found),
            StringComparison.Ordinal
        );
    }

    // References/cases/14-ratings: enumeration of all sign patterns, checked there against an independent R package
    [Fact]
    public void The_reference_ratings_come_through_the_findings()
    {
        ReferenceCase reference = ReferenceCase.Open("14-ratings");
        RatedScore[] scores =
        [
            .. reference
                .Table("data.csv")
                .Select(row => new RatedScore(
                    row["rater"],
                    row["seat"],
                    "day",
                    int.Parse(row["run"], CultureInfo.InvariantCulture),
                    row["code"],
                    row["item"],
                    double.Parse(row["score"], CultureInfo.InvariantCulture)
                )),
        ];
        Dictionary<string, string> expected = reference.Table("expected.csv").ToDictionary(row => row["quantity"], row => row["value"]);
        double Of(string quantity) => double.Parse(expected[quantity], CultureInfo.InvariantCulture);
        foreach (string item in new[] { "noise", "ride", "steering", "handling" })
        {
            RatingFinding found = RatingFinding.Of(item, "A", "B", scores, null, 7)!;
            Assert.Equal(4, found.Differences.Count);
            Assert.Equal(Of($"{item}.signflip.mean"), found.MeanPoints, 1e-10);
            Assert.Equal(Of($"{item}.signflip.p_two"), found.P, 1e-10);
            Assert.Equal(Of($"{item}.signflip.min_p_two"), found.SmallestP, 1e-10);
            Assert.Equal(Of($"{item}.signtest.p_two"), found.Signs.PTwoSided, 1e-10);
            Assert.Equal("too few for a test", found.Word);
        }

        RaterAgreement.Result agreement = Assert.Single(AgreementFinding.Of(scores)).Agreement;
        Assert.Equal(24, agreement.Count);
        Assert.Equal(Of("agreement.quadratic_kappa"), agreement.QuadraticKappa!.Value, 1e-12);
        Assert.Equal(Of("agreement.within_half_point"), agreement.WithinShare, 1e-12);
    }

    [Theory]
    [InlineData(-0.5, "rated lower")]
    [InlineData(0.5, "rated higher")]
    public void Six_raters_of_one_mind_can_decide(double difference, string word)
    {
        RatedScore[] scores =
        [
            .. Enumerable.Range(1, 6).Select(i => new RatedScore($"P{i}", "rear", "day", 2, "862", "roar", 7 + difference)),
        ];
        Assert.Equal(word, RatingFinding.Of("roar", "862", "417", scores, "417", 7)!.Word);
    }

    // Holm 1979: of two tests with p 0.03125 each the smallest is doubled, so six raters decide one attribute and not two
    [Fact]
    public void Several_attributes_are_tested_together_by_Holm()
    {
        RatedScore[] scores =
        [
            .. from attribute in new[] { "roar", "plushness" }
            from i in Enumerable.Range(1, 6)
            select new RatedScore($"P{i}", "rear", "day", 2, "862", attribute, 6),
        ];
        RatingFinding[] alone =
        [
            .. new[] { "roar", "plushness" }.Select(attribute => RatingFinding.Of(attribute, "862", "417", scores, "417", 7)!),
        ];
        Assert.All(RatingFinding.Together(alone), found => Assert.Equal((0.0625, "too few for a test"), (found.PHolm, found.Word)));
        Assert.Equal("rated lower", RatingFinding.Together([alone[0]])[0].Word);
    }

    [Fact]
    public void A_reference_that_nobody_rated_is_said_to_are_at_a_fixed_score()
    {
        RatedScore[] scores = [.. Enumerable.Range(1, 6).Select(i => new RatedScore($"P{i}", "rear", "day", 2, "862", "roar", 6))];
        RatingFinding fixedScore = RatingFinding.Of("roar", "862", "417", scores, "417", 7)!;
        Assert.Equal(7, fixedScore.AgainstPoints);
        Assert.Contains(
            EarWords.About([fixedScore]),
            words => words.Contains("417 is not rated: it is 7 by agreement", StringComparison.Ordinal)
        );
        RatedScore[] rated =
        [
            .. scores,
            .. Enumerable.Range(1, 6).Select(i => new RatedScore($"P{i}", "rear", "day", 1, "417", "roar", 7)),
        ];
        Assert.Null(RatingFinding.Of("roar", "862", "417", rated, "417", 7)!.AgainstPoints);
    }

    [Fact]
    public void More_raters_than_can_be_enumerated_are_judged_from_drawn_patterns_the_same_each_time()
    {
        RatedScore[] scores =
        [
            .. Enumerable.Range(1, 24).Select(i => new RatedScore($"P{i}", "rear", "day", 2, "862", "roar", i % 2 == 0 ? 6.5 : 7.5)),
        ];
        double p = RatingFinding.Of("roar", "862", "417", scores, "417", 7)!.P;
        Assert.Equal(1, p);
        Assert.Equal("no difference shown", RatingFinding.Of("roar", "862", "417", scores, "417", 7)!.Word);
    }

    [Fact]
    public void Three_codes_and_more_are_ranked()
    {
        RatedScore Score(string person, string code, double points) => new(person, "driver", "day", 1, code, "roar", points);
        RatedScore[] scores = [Score("Ro", "862", 6), Score("Ro", "391", 8), Score("Tam", "862", 5), Score("Tam", "391", 7.5)];
        Assert.Equal(1, ConcordanceFinding.Of("roar", ["417", "862", "391"], scores, "417", 7)!.Concordance.W, 12);
        Assert.Null(ConcordanceFinding.Of("roar", ["417", "862"], scores, "417", 7));
    }

    [Fact]
    public void Extra_levels_are_compared_apart_from_dBA()
    {
        ADay day = new ADay()
            .Ready()
            .Typed(
                "run 417",
                "5860",
                "extra c=74 l200=60",
                "6365",
                "extra c=78",
                "714",
                "run 862",
                "5860",
                "extra c=76 l200=63",
                "6365",
                "extra c=80",
                "714",
                "run 417",
                "5860",
                "extra c=74",
                "6365",
                "extra c=78",
                "714"
            );
        Assert.Equal(["dB(C)"], AnEarDay.Found(day).Extras.Select(f => f.Name));
        Study uncovered = day.Study with { RingOpening = new RingOpening("the owner asks", day.Study.Runs[0].Started) };
        IReadOnlyList<ExtraFinding> found = EarFindings.Of(uncovered, StudyTerms.Of(uncovered)).Extras;
        Assert.Equal([("dB(C)", 6), ("dB at 200 Hz", 2)], found.Select(f => (f.Name, f.Readings)));
        Assert.Equal(2, found[0].Comparison.Comparisons[0].Classes.Steady!.Overall!.DifferenceDb, 9);
        Assert.Equal(3, found[1].Comparison.Comparisons[0].Classes.Steady!.Overall!.DifferenceDb, 9);
        double dba = BlindComparison
            .Of(StudyReadings.Of(day.Study), StudyTerms.Of(day.Study))
            .Comparisons[0]
            .Classes.Steady!.Overall!.DifferenceDb;
        Assert.Equal(0, dba, 9);
    }
}
