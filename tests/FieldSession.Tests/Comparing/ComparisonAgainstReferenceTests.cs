using FieldSession.Comparing;
using FieldSession.Statistics;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Comparing;

/// <summary>
/// Every row of the main-job reference cases; sources: SOURCE.md beside each case, made by an R implementation of its own and lme4 +
/// pbkrtest.
/// </summary>
public class ComparisonAgainstReferenceTests
{
    private static readonly ComparisonTerms Terms = new("B", 1, 1);

    [Theory]
    [InlineData("01-aba-wholedB", false, 139)]
    [InlineData("01-aba-wholedB", true, 139)]
    [InlineData("02-abba-classes", false, 192)]
    [InlineData("02-abba-classes", true, 192)]
    public void A_complete_day_equals_the_reference(string name, bool throughCsv, int rows)
    {
        ReferenceCase reference = ReferenceCase.Open(name);
        Comparison comparison = BlindComparison.Of(CaseDay.Of(reference, throughCsv), Terms);
        Assert.Equal(rows, reference.Check(FoundNumbers.Of(comparison.Comparisons.Single().Classes)));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_day_with_gaps_equals_the_reference_and_lies_near_the_mixed_model(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("03-abab-missing");
        MeasuredDay day = CaseDay.Of(reference, throughCsv);
        Comparison comparison = BlindComparison.Of(day, Terms);
        Dictionary<string, object?> found = FoundNumbers.Of(comparison.Comparisons.Single().Classes);
        foreach (SensitivityLine line in Lines(day))
        {
            string name = line.Change switch
            {
                SensitivityChange.SpoiltPutBack => "with_excluded",
                SensitivityChange.RunLeftOut => $"without_run{line.Name}",
                SensitivityChange.SegmentLeftOut => $"without_{line.Name}",
                _ => "drift_switched",
            };
            FoundNumbers.Add(found, $"steady.sens.{name}", line.Overall);
        }

        SuspiciousReading worst = SuspiciousReadings.Ranked(day, MeasureClass.Steady)[0];
        found["steady.suspect.run"] = worst.Run;
        found["steady.suspect.segment"] = worst.Segment;
        found["steady.suspect.t"] = worst.StudentisedResidual;
        found["steady.suspect.p_bonferroni"] = worst.PBonferroni;
        foreach (CodeReadings code in comparison.Codes)
        {
            found[$"excluded.count.{code.Code}"] = code.Spoilt;
        }

        // with gaps the mixed model weighs by its variance estimates: near, not equal (its df for two impact segments: 1.53 against 2)
        Assert.Equal(
            315,
            reference.Check(
                found,
                name =>
                    name.EndsWith(".KR.df") ? 0.5
                    : name.EndsWith(".KR.se") ? 0.06
                    : null
            )
        );
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_day_of_six_runs_takes_the_drift_out(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("04-ababab-drift");
        MeasuredDay day = CaseDay.Of(reference, throughCsv);
        ClassComparisons classes = BlindComparison.Of(day, Terms).Comparisons.Single().Classes;
        Dictionary<string, object?> found = FoundNumbers.Of(classes);
        AddRunMeans(found, classes.Steady!);
        SensitivityLine switched = Lines(day).Single(line => line.Change == SensitivityChange.DriftSwitched);
        FoundNumbers.Add(found, "no_drift.steady.overall", switched.Overall);
        Assert.Equal(160, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_day_whose_runs_agree_too_well_is_on_the_floor(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("05-abba-floor");
        ClassComparisons classes = BlindComparison.Of(CaseDay.Of(reference, throughCsv), Terms).Comparisons.Single().Classes;
        Dictionary<string, object?> found = FoundNumbers.Of(classes);
        // two runs a code: w·w = 1, so the standard error is the run-to-run standard deviation itself
        FoundNumbers.Add(
            found,
            "unfloored.overall",
            Estimated(classes.Steady!.Overall!.DifferenceDb, classes.Steady.SRunDb!.Value, classes.Steady.NuRun)
        );
        Assert.Equal(150, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_day_of_three_runs_lends_repeatability_from_the_archive(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("06-aba-archive");
        ClassComparisons classes = BlindComparison
            .Of(CaseDay.Of(reference, throughCsv), Terms with { Archive = CaseDay.Archive(reference, throughCsv) })
            .Comparisons.Single()
            .Classes;
        Dictionary<string, object?> found = FoundNumbers.Of(classes);
        foreach (
            (string name, ClassComparison? c) in new[] { ("all", classes.All), ("steady", classes.Steady), ("impact", classes.Impact) }
        )
        {
            found[$"prior.{name}.s0sq"] = c!.Prior!.S0SquaredDb2;
            found[$"prior.{name}.nu_arch"] = c.Prior.NuArchive;
            found[$"prior.{name}.nu0"] = c.Prior.Nu0;
        }

        // the reference prints the root of a difference that is 0 but for rounding: 7e-8 squared is 5e-15
        Assert.Equal(195, reference.Check(found, name => name == "impact.sigma_run_effect" ? 1e-7 : null));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Three_codes_share_one_model(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("07-three-codes");
        Comparison comparison = BlindComparison.Of(CaseDay.Of(reference, throughCsv), Terms);
        Dictionary<string, object?> found = FoundNumbers.Of(comparison.Comparisons[0].Classes);
        foreach (PairEstimate pair in comparison.Pairs.Where(pair => pair.Class == MeasureClass.Steady))
        {
            FoundNumbers.Add(found, $"pair.{pair.First}-{pair.Second}", pair.Overall);
            found[$"pair.{pair.First}-{pair.Second}.p_holm"] = pair.PHolm;
        }

        Assert.Equal(37, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Two_cars_side_by_side_are_compared_within_their_slots(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("08-two-cars");
        ClassComparisons classes = BlindComparison.Of(CaseDay.Of(reference, throughCsv), Terms).Comparisons.Single().Classes;
        Dictionary<string, object?> found = FoundNumbers.Of(classes);
        AddRunMeans(found, classes.Steady!);
        Assert.Equal(133, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Three_cars_of_a_cell_as_runs_equal_the_reference(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("09-filter-noise");
        // different cars in no order: all at the same time, so no drift can enter
        MeasuredDay unordered = new([.. CaseDay.Of(reference, throughCsv).Levels.Select(level => level with { Minutes = 0 })]);
        Dictionary<string, object?> found = FoundNumbers.Of(
            BlindComparison.Of(unordered, Terms with { Reference = "new" }).Comparisons.Single().Classes
        );
        FilterNoiseCells.Add(found, reference);
        Assert.Equal(224, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_day_cut_short_shows_what_two_and_three_runs_allow(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("21-tiny-designs");
        MeasuredDay day = CaseDay.Of(reference, throughCsv);
        Dictionary<string, object?> found = FoundNumbers.Of(BlindComparison.Of(day, Terms).Comparisons.Single().Classes);
        // a prior of 0.16 dB squared that weighs 6 degrees of freedom
        ComparisonTerms lent = Terms with
        {
            Archive = [new ArchiveLine("earlier", MeasureClass.Steady, 6, 0.4, 0.2, 0, null)],
        };
        foreach (int runs in new[] { 2, 3 })
        {
            MeasuredDay cut = CaseDay.FirstRuns(day, runs);
            Estimate? strict = BlindComparison.Of(cut, Terms).Comparisons.Single().Classes.Steady!.Overall;
            FoundNumbers.Add(found, $"after{runs}.steady", strict);
            FoundNumbers.Add(found, $"after{runs}.steady.overall", strict);
            FoundNumbers.Add(
                found,
                $"after{runs}.archive.steady.overall",
                BlindComparison.Of(cut, lent).Comparisons.Single().Classes.Steady!.Overall
            );
        }

        Assert.Equal(183, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_first_demo_day_equals_the_reference(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("22-quillmere");
        CodeComparison pair = BlindComparison.Of(CaseDay.Of(reference, throughCsv), Terms with { Reference = "417" }).Comparisons.Single();
        Dictionary<string, object?> found = FoundNumbers.Of(pair.Classes);
        foreach ((string name, object? value) in FoundNumbers.Of(pair.WithSpoilt))
        {
            found[$"with_spoilt.{name}"] = value;
        }

        Assert.Equal(238, reference.Check(found));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_second_demo_day_equals_the_reference(bool throughCsv)
    {
        ReferenceCase reference = ReferenceCase.Open("23-dunmarrow");
        Comparison comparison = BlindComparison.Of(CaseDay.Of(reference, throughCsv), Terms with { Reference = "158" });
        Dictionary<string, object?> found = FoundNumbers.Of(comparison.Comparisons[0].Classes);
        foreach (CodeComparison pair in comparison.Comparisons)
        {
            FoundNumbers.Add(found, $"pair.{pair.Code}-158.steady.overall", pair.Classes.Steady!.Overall);
            FoundNumbers.Add(found, $"pair.{pair.Code}-158.impact.overall", pair.Classes.Impact!.Overall);
        }

        Assert.Equal(50, reference.Check(found));
    }

    private static IReadOnlyList<SensitivityLine> Lines(MeasuredDay day) =>
        BlindComparison.InFull(day, Terms).Comparisons.Single().Classes.Steady!.Sensitivity!.Lines;

    /// <summary>
    /// Complete days: the floor scales the standard error, so dividing it out gives that of the plain regression of run means.
    /// </summary>
    private static void AddRunMeans(Dictionary<string, object?> found, ClassComparison c)
    {
        double standardError = c.Overall!.StandardErrorDb!.Value * c.SRunDb!.Value / c.SRunUsedDb!.Value;
        found["check.lm_run_means.d"] = c.Overall.DifferenceDb;
        found["check.lm_run_means.se"] = standardError;
        found["check.lm_run_means.p"] = StudentT.TwoSidedP(c.Overall.DifferenceDb / standardError, c.NuRun);
    }

    private static Estimate Estimated(double d, double se, double df)
    {
        double t95 = StudentT.Quantile(0.975, df) * se;
        double t90 = StudentT.Quantile(0.95, df) * se;
        return new Estimate(d, se, df, d - t95, d + t95, StudentT.TwoSidedP(d / se, df), d - t90, d + t90, Tost.P(d, se, df, 1));
    }
}
