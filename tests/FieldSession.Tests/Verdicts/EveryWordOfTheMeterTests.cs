using FieldSession.Comparing;
using FieldSession.Reporting;

namespace FieldSession.Tests.Verdicts;

/// <summary>What the meter's word may say, and what must then be true of the numbers. Rules: docs/formulas.md, docs/report.md.</summary>
[Collection(ComparedDays.Name)]
public sealed class EveryWordOfTheMeterTests(ComparedDays days)
{
    private const string Provisos = @"(?:, with repeatability from \d+ earlier days?)?(?:, extended \d+ times?)?";
    private const string Margin = @"[\d.]+ dB";
    private const string Interval =
        @"[+-]?[\d.]+ dB, 95 % interval [+-]?[\d.]+ to [+-]?[\d.]+ dB(?: \(the word uses the (?:joint|stricter) [\d.]+ % interval [+-]?[\d.]+ to [+-]?[\d.]+ dB(?:, which allows for [2-9] comparisons)?(?:, extended \d+ times?)?\))?";

    private static WordTable<MeterNumbers> OfClasses =>
        new(
            new(
                "difference shown" + Provisos,
                "0 lies outside the interval; neither within the margin nor beyond it",
                n => n is { LeavesOut0: true, LiesWithinMargin: false, LiesBeyondMargin: false }
            ),
            new(
                "difference shown and larger than " + Margin + Provisos,
                "the nearer limit is at the margin or beyond",
                n => n is { LeavesOut0: true, LiesBeyondMargin: true }
            ),
            new(
                "difference shown, but smaller than " + Margin + Provisos,
                "0 lies outside the interval, and the two one-sided tests lie within the margin",
                n => n is { LeavesOut0: true, LiesWithinMargin: true }
            ),
            new(
                "equivalent within ±" + Margin + Provisos,
                "the two one-sided tests lie within the margin, and 0 is not outside the interval",
                n => n is { LeavesOut0: false, LiesWithinMargin: true }
            ),
            new(
                "undecided" + Provisos,
                "neither a difference nor equivalence",
                n => n is { HasInterval: true, LeavesOut0: false, LiesWithinMargin: false }
            ),
            new(
                "no verdict: code and (?:car|session) cannot be told apart",
                "no weight of the runs separates them",
                n => n.One.Conclusion is null && n.Day.Contains("car", StringComparison.Ordinal)
            ),
            new(
                "no verdict: no scatter seen at this display resolution",
                "the standard error is 0",
                n => n.One.Overall is { StandardErrorDb: 0 }
            ),
            new("no verdict: not bracketed", "no code was driven twice", n => n.One.RunsCounted == n.Codes),
            new(
                "no verdict: too few runs to see how well they repeat",
                "no standard error, though a code was driven twice",
                n => n.One.Overall is { StandardErrorDb: null } && n.One.RunsCounted > n.Codes
            ),
            new(
                "no verdict: no usable interval",
                "less than one degree of freedom, and wider than 20 dB to each side",
                n => n.One.Overall is { Df: < 1, Hi95Db: { } high, Lo95Db: { } low } && high - low > 40
            ),
            new(
                "no verdict: (?:three|four|five) runs cannot decide alone",
                "one comparison of like with like, and nothing lent",
                n => n.One is { NuRun: <= 1, PriorUsed: false, Overall.StandardErrorDb: > 0 }
            ),
            new("no verdict: the plan is not driven to its end", "runs of the plan are open", n => !n.Terms.PlanComplete && n.HasInterval),
            new("no comparison", "no segment or code to compare", n => n.One.Overall is null)
        );

    private static WordTable<MeterNumbers> OfTheReport =>
        new(
            new(
                "MEASURED: " + Interval,
                "0 lies outside the interval, which is not within the margin",
                n => n is { LeavesOut0: true, LiesWithinMargin: false }
            ),
            new(
                "MEASURED, BUT SMALL \\(within " + Margin + "\\): " + Interval,
                "0 lies outside the interval, and it is within the margin",
                n => n is { LeavesOut0: true, LiesWithinMargin: true }
            ),
            new(
                "SAME WITHIN " + Margin + ": " + Interval,
                "within the margin, 0 not outside",
                n => n is { LeavesOut0: false, LiesWithinMargin: true }
            ),
            new(
                "NOT RESOLVED: "
                    + Interval
                    + "; [1-9]\\d* more runs? per code would settle it with a chance of \\d+ %, if things go on as seen(?:, [1-9]\\d* "
                    + "to be cautious|, more than 10 to be cautious)",
                "neither, the number counts from 1, and the cautious one is not the smaller",
                n =>
                    n is { LeavesOut0: false, LiesWithinMargin: false, One.MoreRuns: { AsSeen: >= 1, Chance: > 0 and <= 1 } }
                    && !(n.One.MoreRuns.Cautious < n.One.MoreRuns.AsSeen)
            ),
            new(
                "NOT RESOLVED: " + Interval + "; not even 10 more runs per code would settle it",
                "neither, and no number within 10",
                n => n is { LeavesOut0: false, LiesWithinMargin: false, One.MoreRuns.AsSeen: null }
            ),
            new("NOT RESOLVED \\((?:no verdict: .*|no comparison)\\): .*", "the verdict is withheld", n => n.One.Conclusion is null)
        );

    [Fact]
    public void Every_word_of_a_class_is_true_of_its_numbers()
    {
        WordTable<MeterNumbers> table = OfClasses;
        foreach (MeterNumbers numbers in Found(one => one.Verdict))
        {
            table.Read(numbers.One.Verdict, numbers);
        }

        // an estimate of less than one degree of freedom is made by hand in WhatCountsTests
        table.HasNoIdleLine("no verdict: no usable interval");
    }

    [Fact]
    public void Every_meter_line_of_the_report_is_true_of_its_numbers_as_they_are_printed()
    {
        WordTable<MeterNumbers> table = OfTheReport;
        foreach (MeterNumbers numbers in Found(_ => ""))
        {
            string line = MeterWord.InWords(numbers.One, numbers.Terms.MarginDb);
            table.Read(line, numbers with { Printed = line });
        }

        table.HasNoIdleLine();
    }

    private IEnumerable<MeterNumbers> Found(Func<ClassComparison, string> printed) =>
        from compared in days.All
        let day = compared.Day
        let comparison = compared.Comparison
        from pair in comparison.Asked
        let one = pair.Classes.Steady
        where one is not null
        select new MeterNumbers(day.Name, one, day.Terms, comparison.Codes.Count, printed(one));
}
