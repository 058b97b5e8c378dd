using FieldSession.Comparing;
using FieldSession.Statistics;
using FieldSession.Tests.References;
using static FieldSession.Tests.References.ReferenceCase;

namespace FieldSession.Tests.Statistics;

/// <summary>Student's data, the dyestuff and the planning of runs; published sources and R, see SOURCE.md beside each case.</summary>
public class StudentAndPlanningAgainstReferenceTests
{
    private readonly Dictionary<string, object?> _found = [];

    [Fact]
    public void Students_sleep_data_and_the_dyestuff_give_their_published_results()
    {
        ReferenceCase reference = Open("18-student-and-dyestuff");
        var sleep = reference.Table("sleep.csv");
        MeasuredLevel Level(Dictionary<string, string> row, int i, string? slot) =>
            new(
                i,
                row["code"],
                "one",
                "impact",
                MeasureClass.Impact,
                Number(row["y"]),
                Number(row["y"]),
                Minutes: slot is null ? 0 : null,
                Slot: slot
            );
        Comparison pooled = BlindComparison.Of(
            new MeasuredDay([.. sleep.Select((row, i) => Level(row, i, null))]),
            new ComparisonTerms("B")
        );
        Comparison blocks = BlindComparison.Of(
            new MeasuredDay([.. sleep.Select((row, i) => Level(row, i, row["unit"]))]),
            new ComparisonTerms("B")
        );
        foreach ((string name, Comparison comparison) in new[] { ("sleep.pooled", pooled), ("sleep.blocks", blocks) })
        {
            Estimate overall = comparison.Comparisons.Single().Classes.Impact!.Overall!;
            FoundNumbers.Add(_found, name, overall);
            _found[$"{name}.t"] = overall.DifferenceDb / overall.StandardErrorDb;
        }

        OneWay dyestuff = OneWay.Of([
            .. reference.Table("data.csv").GroupBy(row => row["unit"]).Select(unit => unit.Select(row => Number(row["y"])).ToArray()),
        ]);
        (_found["dyestuff.MS_between"], _found["dyestuff.MS_within"], _found["dyestuff.var_between"]) = (
            dyestuff.MsBetween,
            dyestuff.MsWithin,
            dyestuff.VarianceBetween
        );
        (_found["dyestuff.s_r"], _found["dyestuff.s_R"]) = (dyestuff.RepeatabilitySd, dyestuff.ReproducibilitySd);
        _found["dyestuff.r_limit"] = 2.8 * dyestuff.RepeatabilitySd;
        Assert.Equal(16, reference.Check(_found));
    }

    [Fact]
    public void Planning_equals_the_exact_power()
    {
        ReferenceCase reference = Open("19-planning");
        foreach (var row in reference.Table("data.csv"))
        {
            string id = row["id"];
            double sd = Math.Sqrt(Math.Pow(Number(row["su"]), 2) + Math.Pow(Number(row["se"]), 2) / Number(row["S"]));
            (double difference, double margin) = (Number(row["D"]), Number(row["Delta"]));
            _found[$"{id}.run_sd"] = sd;
            for (int n = 2; n <= 6; n++)
            {
                _found[$"{id}.mdd80.n{n}"] = TwoSampleSize.SmallestDifference(sd, n, 0.8, 0.05);
                _found[$"{id}.power.n{n}"] = TwoSampleSize.Power(sd, n, difference, 0.05);
            }

            _found[$"{id}.runs_per_code_for_D"] = TwoSampleSize.PerSideForDifference(sd, difference, 0.8, 0.05);
            _found[$"{id}.runs_per_code_for_equivalence"] = TwoSampleSize.PerSideForEquivalence(sd, margin, 0.8, 0.05);
            _found[$"{id}.tost_power.n4"] = TwoSampleSize.EquivalencePower(sd, 4, margin, 0.05);
        }

        Assert.Equal(56, reference.Check(_found));
    }
}
