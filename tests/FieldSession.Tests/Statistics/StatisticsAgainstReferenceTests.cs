using FieldSession.Comparing;
using FieldSession.Statistics;
using FieldSession.Tests.References;
using static FieldSession.Tests.References.ReferenceCase;

namespace FieldSession.Tests.Statistics;

/// <summary>Every row of the reference cases of single methods; published sources and R, see SOURCE.md beside each case.</summary>
public class StatisticsAgainstReferenceTests
{
    private readonly Dictionary<string, object?> _found = [];

    [Fact]
    public void Silicon_resistivity_equals_the_certified_analysis_of_variance()
    {
        ReferenceCase reference = Open("10-nist-sirstv");
        var rows = reference.Table("data.csv");
        OneWay anova = OneWay.Of([.. rows.GroupBy(row => row["group"]).Select(group => group.Select(row => Number(row["y"])).ToArray())]);
        (_found["between.df"], _found["within.df"]) = (anova.DfBetween, anova.DfWithin);
        (_found["between.SS"], _found["within.SS"]) = (anova.SsBetween, anova.SsWithin);
        (_found["between.MS"], _found["within.MS"]) = (anova.MsBetween, anova.MsWithin);
        (_found["F"], _found["R2"], _found["s_within"], _found["p"]) = (anova.F, anova.RSquared, anova.RepeatabilitySd, anova.P);
        MeasuredDay day = new([
            .. rows.Select(
                (row, i) =>
                    new MeasuredLevel(i, row["group"], "one", "impact", MeasureClass.Impact, Number(row["y"]), Number(row["y"]), Minutes: 0)
            ),
        ]);
        ClassComparison model = BlindComparison.Of(day, new ComparisonTerms()).Comparisons[0].Classes.Impact!;
        Assert.Equal(0.104076068334656, model.SRunDb!.Value, 1e-11);
        Assert.Equal(20, model.NuRun);
        _found["main_job.note"] = "groups = codes, readings = runs, one segment: s_run = s_within, nu_run = 20";
        Assert.Equal(11, reference.Check(_found));
    }

    [Fact]
    public void Levels_add_up_as_published()
    {
        ReferenceCase reference = Open("11-db-arithmetic");
        foreach (var example in reference.Table("data.csv").GroupBy(row => (row["id"], Op: row["op"])))
        {
            double[] levels = [.. example.Select(row => Number(row["L"]))];
            double[] weights = [.. example.Select(row => Number(row["w"]))];
            _found[$"{example.Key.Item1}.{example.Key.Op}"] = example.Key.Op switch
            {
                "sum" => Decibels.Sum(levels),
                "minus" => BackgroundCorrection.Of(levels[0], levels[1]).LevelDb,
                _ => Decibels.EnergyMean(levels, weights),
            };
        }

        _found["arith_mean.55-58-56-70"] = new[] { 55.0, 58, 56, 70 }.Average();
        _found["u_resolution_single.1dB"] = Midrange.ResolutionUncertainty(60, 60, 1);
        _found["u_resolution_midrange.1dB"] = Midrange.ResolutionUncertainty(58, 60, 1);
        _found["u_resolution_midrange.0.1dB"] = Midrange.ResolutionUncertainty(58, 60, 0.1);
        _found["background.limit_3dB_correction"] = BackgroundCorrection.CorrectionDb(3);
        _found["background.limit_6dB_correction"] = BackgroundCorrection.CorrectionDb(6);
        Assert.Equal(12, reference.Check(_found));
    }

    [Fact]
    public void Distributions_equal_printed_tables()
    {
        ReferenceCase reference = Open("12-distribution-tables");
        foreach (var row in reference.Table("data.csv"))
        {
            (double x, double df1, double df2) = (Number(row["p"]), Number(row["df1"]), Number(row["df2"]));
            // the quantities are named with the numbers as short as they can be written
            string name =
                df2 == 0
                    ? FormattableString.Invariant($"{row["fun"]}_{x}_{df1}_0")
                    : FormattableString.Invariant($"{row["fun"]}_{x}_{df1}_{df2}");
            _found[name] = Distribution(row["fun"], x, df1, df2);
            _found[$"{row["fun"]}_{row["p"]}_{row["df1"]}_{row["df2"]}"] = _found[name];
        }

        Assert.Equal(43, reference.Check(_found));
    }

    [Fact]
    public void Forced_guesses_equal_the_standard_table()
    {
        ReferenceCase reference = Open("13-forced-choice");
        foreach (string quantity in reference.Table("expected.csv").Select(row => row["quantity"]))
        {
            string[] parts = quantity.Split('.', 2);
            if (parts[0] == "min_correct")
            {
                string[] at = quantity["min_correct.one_sided.n".Length..].Split(".alpha");
                _found[quantity] = ExactBinomial.FewestSuccesses(int.Parse(at[0]), Number(at[1]));
            }
            else if (parts[0] == "guess")
            {
                string[] names = parts[1].Split('.');
                int[] count = [.. names[0].Split("of").Select(int.Parse)];
                (double low, double high) = ExactBinomial.Interval(count[0], count[1], 0.95);
                _found[quantity] = names[1] switch
                {
                    "p_one" => ExactBinomial.POneSided(count[0], count[1]),
                    "p_two" => ExactBinomial.PTwoSided(count[0], count[1]),
                    "lo95" => low,
                    "hi95" => high,
                    _ => null,
                };
            }
        }

        _found["example1.p_one"] = ExactBinomial.POneSided(21, 30);
        (_found["example1.pd"], _found["example1.sd"]) = Discriminating(21, 30);
        (_found["example3.pd"], _found["example3.sd"]) = Discriminating(32, 44);
        Assert.Equal(153, reference.Check(_found));
    }

    [Fact]
    public void Ratings_are_judged_by_all_patterns_of_signs()
    {
        ReferenceCase reference = Open("14-ratings");
        var rows = reference.Table("data.csv");
        foreach (var item in rows.GroupBy(row => row["item"]))
        {
            AddFlips(
                item.Key,
                [
                    .. item.GroupBy(row => (row["rater"], row["seat"]))
                        .Select(pair =>
                            pair.Where(row => row["code"] == "A").Average(row => Number(row["score"]))
                            - pair.Where(row => row["code"] == "B").Average(row => Number(row["score"]))
                        ),
                ]
            );
        }

        double[] Scores(string rater) =>
            [
                .. rows.Where(row => row["rater"] == rater)
                    .OrderBy(row => $"{row["item"]}{row["seat"]}{row["run"]}")
                    .Select(row => Number(row["score"])),
            ];
        RaterAgreement.Result agreement = RaterAgreement.Of(Scores("R1"), Scores("R2"), 0.5);
        (_found["agreement.n"], _found["agreement.mean_difference_R1-R2"]) = (agreement.Count, agreement.MeanDifference);
        (_found["agreement.sd_difference"], _found["agreement.within_half_point"]) = (agreement.SdDifference, agreement.WithinShare);
        _found["agreement.quadratic_kappa"] = agreement.QuadraticKappa;
        double[] maize = [.. reference.Table("zeamays.csv").Select(row => Number(row["cross"]) - Number(row["self"]))];
        AddFlips("zeamays", maize);
        _found["zeamays.mean"] = maize.Average();
        SignedRank.Result ranks = SignedRank.Of(maize);
        (_found["zeamays.signrank.V"], _found["zeamays.signrank.p_two"]) = (ranks.V, ranks.PTwoSided);
        Assert.Equal(42, reference.Check(_found));
    }

    [Fact]
    public void Predictions_are_scored_and_decomposed()
    {
        ReferenceCase reference = Open("15-brier");
        foreach (var set in reference.Table("data.csv").GroupBy(row => row["set"]))
        {
            Brier.Result score = Brier.Of([.. set.Select(row => (Number(row["p"]), row["o"] == "1"))])!.Value;
            (_found[$"{set.Key}.brier"], _found[$"{set.Key}.skill_vs_coin"]) = (score.Score, score.Skill);
            (_found[$"{set.Key}.n"], _found[$"{set.Key}.hits"]) = (score.Count, score.Hits);
            (_found[$"{set.Key}.reliability"], _found[$"{set.Key}.resolution"]) = (score.Reliability, score.Resolution);
            _found[$"{set.Key}.uncertainty"] = score.Uncertainty;
        }

        Assert.Equal(21, reference.Check(_found));
    }

    [Fact]
    public void A_crossover_of_energy_equals_the_regression_and_the_published_trial()
    {
        ReferenceCase reference = Open("16-energy-crossover");
        CrossoverCase.Add(_found, reference);
        Assert.Equal(37, reference.Check(_found));
    }

    [Fact]
    public void Range_readings_follow_their_rules()
    {
        ReferenceCase reference = Open("20-range-readings");
        int number = 1;
        foreach (var row in reference.Table("data.csv"))
        {
            (double low, double high) = (Number(row["low"]), Number(row["high"]));
            _found[$"reading{number}.level"] = Midrange.Level(low, high);
            _found[$"reading{number}.width"] = Midrange.Width(low, high);
            _found[$"reading{number}.u_resolution"] = Midrange.ResolutionUncertainty(low, high, Number(row["res"]));
            number++;
        }

        _found["cell.mean_of_two"] = (59 + 60.5) / 2;
        _found["background.total61_wind57"] = BackgroundCorrection.Of(61, 57).LevelDb;
        _found["background.total61_wind58.5"] =
            BackgroundCorrection.Of(61, 58.5).State == BackgroundState.NotDeterminable ? "not determinable" : null;
        _found["masking.true_diff_2dB_bg_6dB_below"] = Decibels.Sum([62, 56]) - Decibels.Sum([60, 56]);
        // three rows about a route are not held: the folder does not give the levels and lengths they were made from
        Assert.Equal(22, reference.Check(_found, leaveOut: name => name.StartsWith("route.")));
    }

    [Fact]
    public void The_end_gauge_has_the_published_degrees_of_freedom()
    {
        ReferenceCase reference = Open("17-gum-h1");
        var inputs = reference
            .Table("data.csv")
            .ToDictionary(row => row["name"], row => (Value: Number(row["value"]), U: Number(row["u"]), Nu: Number(row["nu"])));
        double length = inputs["l_s"].Value;
        (string Name, double U)[] parts =
        [
            ("l_s", inputs["l_s"].U),
            ("d", inputs["d"].U),
            ("alpha_s", 0),
            ("theta", 0),
            ("delta_alpha", Math.Abs(length * inputs["theta"].Value) * inputs["delta_alpha"].U),
            ("delta_theta", length * inputs["alpha_s"].Value * inputs["delta_theta"].U),
        ];
        foreach ((string name, double u) in parts)
        {
            _found[$"contribution.{name}"] = u;
        }

        double combined = Math.Sqrt(parts.Sum(part => part.U * part.U));
        double nu = WelchSatterthwaite.Df([.. parts.Select(part => part.U * part.U)], [.. parts.Select(part => inputs[part.Name].Nu)]);
        (_found["l_nm"], _found["u_c"], _found["nu_eff"]) = (length + inputs["d"].Value, combined, nu);
        (_found["k99_at_16"], _found["U99_at_16"]) = (StudentT.Quantile(0.995, 16), StudentT.Quantile(0.995, 16) * combined);
        _found["U99_at_nu_eff"] = StudentT.Quantile(0.995, nu) * combined;
        Assert.Equal(12, reference.Check(_found));
    }

    private static double? Distribution(string fun, double x, double df1, double df2) =>
        fun switch
        {
            "tq" => StudentT.Quantile(x, df1),
            "tcdf" => StudentT.Cdf(x, df1),
            "fq" => FisherF.Quantile(x, df1, df2),
            "fsf" => FisherF.UpperTail(x, df1, df2),
            "chi2q" => ChiSquare.Quantile(x, df1),
            "mdd" => NoncentralT.NoncentralityForPower(x, df1, 0.05),
            "nct_sf" => NoncentralT.UpperTail(x, df1, df2),
            "tost_power" => Tost.Power(x, df2, df1, 1, 0.05),
            _ => null,
        };

    private static (double Share, double Sd) Discriminating(int right, int of)
    {
        double share = (double)right / of;
        return (2 * share - 1, 2 * Math.Sqrt(share * (1 - share) / of));
    }

    private void AddFlips(string name, double[] differences)
    {
        SignFlip.Result flips = SignFlip.Exact(differences);
        SignTest.Result signs = SignTest.Of(differences);
        _found[$"{name}.n_pairs"] = differences.Length;
        _found[$"{name}.signflip.mean"] = differences.Average();
        (_found[$"{name}.signflip.p_two"], _found[$"{name}.signflip.p_greater"]) = (flips.TwoSided, flips.Greater);
        _found[$"{name}.signflip.min_p_two"] = flips.SmallestTwoSided;
        (_found[$"{name}.signtest.plus"], _found[$"{name}.signtest.minus"], _found[$"{name}.signtest.p_two"]) = (
            signs.Plus,
            signs.Minus,
            signs.PTwoSided
        );
    }
}
