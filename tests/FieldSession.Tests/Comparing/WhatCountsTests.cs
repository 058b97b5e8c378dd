using System.Globalization;
using FieldSession.Comparing;

namespace FieldSession.Tests.Comparing;

public class WhatCountsTests
{
    [Fact]
    public void Without_a_run_nothing_is_compared()
    {
        Comparison comparison = BlindComparison.Of(new MeasuredDay([]), new ComparisonTerms());
        Assert.Null(comparison.Reference);
        Assert.Empty(comparison.Comparisons);
    }

    [Fact]
    public void One_run_of_each_code_gives_a_difference_but_no_interval()
    {
        ClassComparison steady = Steady(Day("A B"));
        Assert.NotNull(steady.Overall);
        Assert.Null(steady.Overall!.StandardErrorDb);
        Assert.Equal("no verdict: not bracketed", steady.Verdict);
    }

    [Fact]
    public void Three_runs_cannot_decide_alone() =>
        Assert.Equal("no verdict: three runs cannot decide alone", Steady(Day("A B A")).Verdict);

    [Fact]
    public void A_car_for_each_code_cannot_be_told_apart_from_the_code()
    {
        MeasuredDay day = Day("A B B A A B");
        day = day with { Levels = [.. day.Levels.Select(level => level with { Car = level.Code == "A" ? "one" : "two" })] };
        ClassComparison steady = Steady(day);
        Assert.Equal("no verdict: code and car cannot be told apart", steady.Verdict);
        Assert.Null(steady.MoreRunsAsSeen);
    }

    [Fact]
    public void A_run_with_too_few_levels_is_not_counted()
    {
        MeasuredDay day = Day("A B B A B");
        day = day with { Levels = [.. day.Levels.Where(level => level.Run != 5 || level.Segment == "s0")] };
        ClassComparison steady = Steady(day);
        Assert.Equal([5], steady.RunsNotCounted);
        Assert.Equal(4, steady.RunsCounted);
    }

    [Fact]
    public void A_segment_without_a_level_on_one_code_is_not_compared()
    {
        MeasuredDay day = Day("A B B A");
        day = day with
        {
            Levels = [.. day.Levels.Select(level => level.Code == "B" && level.Segment == "s2" ? level with { Spoilt = true } : level)],
        };
        Assert.Equal(["s2"], Steady(day).SegmentsNotCompared);
    }

    [Fact]
    public void Runs_that_share_no_segment_with_the_others_of_their_code_are_dropped()
    {
        MeasuredDay day = Day("A B B A B");
        day = day with
        {
            Levels =
            [
                .. day.Levels.Where(level =>
                    level.Code != "B" || (level.Run == 5 ? level.Segment is "s2" or "s3" : level.Segment is "s0" or "s1")
                ),
            ],
        };
        ClassComparison steady = Steady(day);
        Assert.Equal([5], steady.RunsNotCounted);
        Assert.Equal(2, steady.SegmentsCompared);
    }

    [Fact]
    public void Without_times_no_drift_per_hour_is_given()
    {
        MeasuredDay day = Day("A B A B A B");
        day = day with { Levels = [.. day.Levels.Select(level => level with { Minutes = null })] };
        Assert.Null(Steady(day).Drift);
        Assert.True(Steady(day).DriftInModel);
    }

    [Fact]
    public void Runs_that_agree_to_the_last_digit_give_no_interval()
    {
        MeasuredDay day = new([
            .. Day("A B B A")
                .Levels.Select(level => level with { LowDb = level.Code == "A" ? 60 : 61, HighDb = level.Code == "A" ? 60 : 61 }),
        ]);
        ClassComparison steady = Steady(day);
        Assert.Equal(1, steady.Overall!.DifferenceDb, 1e-12);
        Assert.Null(steady.Overall.P);
        Assert.Equal("no verdict: no scatter seen at this display resolution", steady.Verdict);
    }

    [Fact]
    public void Every_lengthening_after_a_comparison_could_be_seen_asks_for_more_and_is_said()
    {
        ComparisonTerms[] terms =
        [
            .. new int[][] { [4], [4, 6], [4, 6, 8] }.Select(ends => new ComparisonTerms { Looks = new Looks(ends) }),
        ];
        Assert.Equal(0.045, terms[0].Levels.Difference, 12);
        Assert.Equal(0.045, terms[0].Levels.Equivalence, 12);
        Assert.True(terms[1].Levels.Difference < terms[0].Levels.Difference && terms[2].Levels.Difference < terms[1].Levels.Difference);
        Assert.DoesNotContain(
            "extended",
            BlindComparison.Of(Day("A B B A"), terms[0]).Comparisons[0].Classes.Steady!.Verdict,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "extended 1 time",
            BlindComparison.Of(Day("A B B A"), terms[1]).Comparisons[0].Classes.Steady!.Verdict,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "extended 2 times",
            BlindComparison.Of(Day("A B B A"), terms[2]).Comparisons[0].Classes.Steady!.Verdict,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Before_the_plans_end_there_is_no_p_anywhere_and_no_word()
    {
        Comparison open = BlindComparison.InFull(Day("A B B A A B B A"), new ComparisonTerms(PlanComplete: false));
        ClassComparison steady = open.Comparisons.Single().Classes.Steady!;
        Assert.True(open.IsUnfinished && steady.IsUnfinished);
        Assert.NotNull(steady.Overall!.Lo95Db);
        Assert.Null(steady.Basis);
        Assert.Null(steady.OrderTest);
        Assert.Null(steady.MoreRunsAsSeen);
        Assert.All(
            [
                steady.Overall,
                .. steady.Kinds.Select(kind => kind.Estimate),
                .. steady.Segments.Select(segment => segment.Estimate),
                .. steady.Sensitivity!.Lines.Select(line => line.Overall),
            ],
            estimate => Assert.True(estimate is { P: null, PTost: null })
        );
        string text = string.Join('\n', FieldSession.Reviewing.ComparisonWords.Of(open, Day("A B B A A B B A")));
        Assert.Contains("UNFINISHED", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b0[.,]0\d+\b.*p |p if ", text);
    }

    [Fact]
    public void Far_less_than_one_degree_of_freedom_gives_no_usable_interval_and_says_so()
    {
        Estimate huge = new(0.3, 0.4, 0.2, -1_809_044, 1_809_042, 0.7, -2000, 2000, 0.4);
        Assert.True(huge.HasNoUsableInterval);
        Assert.Equal(
            ("no usable interval", "no usable interval"),
            (FieldSession.Reviewing.Figures.Interval95(huge), FieldSession.Reviewing.Figures.Interval90(huge))
        );
        Assert.False((huge with { Df = 1 }).HasNoUsableInterval);
        Assert.False((huge with { Lo95Db = -19, Hi95Db = 19 }).HasNoUsableInterval);
    }

    [Fact]
    public void An_undecided_verdict_never_says_that_0_more_runs_would_settle_it_and_gives_the_chance()
    {
        for (int seed = 0; seed < 200; seed++)
        {
            foreach (ClassComparison steady in new[] { Steady(Day("A B B A", seed)), Steady(Day("A B A B A B", seed)) })
            {
                bool isOpen = steady.Verdict == "undecided";
                Assert.Equal(isOpen, steady.MoreRuns is not null);
                Assert.Equal(steady.MoreRuns?.AsSeen is not null, steady.MoreRuns?.Chance is > 0 and <= 1);
                Assert.NotEqual(0, steady.MoreRuns?.AsSeen);
                Assert.False(isOpen && steady.MoreRunsAsSeen == 0);
            }
        }
    }

    [Fact]
    public void A_run_with_two_codes_is_refused()
    {
        MeasuredLevel level = Day("A B").Levels[0];
        MeasuredDay day = new([level, level with { Code = "B" }]);
        Assert.Contains(
            "run 1 has two codes",
            Assert.Throws<ArgumentException>(() => BlindComparison.Of(day, new ComparisonTerms())).Message
        );
    }

    private static ClassComparison Steady(MeasuredDay day) =>
        BlindComparison.Of(day, new ComparisonTerms()).Comparisons.Single().Classes.Steady!;

    private static MeasuredDay Day(string order, int seed = 3)
    {
        Random lot = new(seed);
        return new MeasuredDay([
            .. order
                .Split(' ')
                .SelectMany(
                    (code, run) =>
                        Enumerable
                            .Range(0, 4)
                            .Select(s => new MeasuredLevel(
                                run + 1,
                                code,
                                string.Create(CultureInfo.InvariantCulture, $"s{s}"),
                                "smooth",
                                MeasureClass.Steady,
                                60 + lot.NextDouble(),
                                62 + lot.NextDouble(),
                                Minutes: run * 30
                            ))
                ),
        ]);
    }
}
