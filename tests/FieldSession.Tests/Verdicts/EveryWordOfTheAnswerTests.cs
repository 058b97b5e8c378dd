using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Tests.Making;
using FieldSession.Tests.Reporting;

namespace FieldSession.Tests.Verdicts;

/// <summary>
/// What the answer card may tell whoever owns the car, and what must then be true of the numbers. Rules: docs/report.md, "The answer card".
/// </summary>
[Collection(ComparedDays.Name)]
public sealed class EveryWordOfTheAnswerTests(ComparedDays days)
{
    private const string Begins =
        "On this day (?:NEW was [\\d.]+ dB (?:louder|quieter) inside than|NEW was as loud inside as) OLD on steady roads";
    private const string GiveOrTake = ", give or take [\\d.]+ dB";
    private const string OrUnknown = "(?:, give or take [\\d.]+ dB|; how far off that may be is not known)";

    private static WordTable<MeterNumbers> OfTheAnswer =>
        new(
            new(
                Begins + GiveOrTake + "\\. The meter shows a difference\\.",
                "a difference is shown, and what is taken is less than what is given",
                n => n is { LeavesOut0: true, LiesWithinMargin: false } && Given(n) > Taken(n)
            ),
            new(
                Begins + GiveOrTake + "\\. The meter shows a difference, smaller than the [\\d.]+ dB agreed to matter\\.",
                "the same, within the margin",
                n => n is { LeavesOut0: true, LiesWithinMargin: true } && Given(n) > Taken(n)
            ),
            new(
                "On this day NEW and OLD were equally loud inside on steady roads, within [\\d.]+ dB\\.",
                "within the margin, 0 not outside",
                n => n is { LeavesOut0: false, LiesWithinMargin: true }
            ),
            new(
                Begins + GiveOrTake + "\\. The day could not tell that from no difference at all\\.",
                "neither, and what is taken is no less than what is given",
                n => n is { LeavesOut0: false, LiesWithinMargin: false } && Given(n) <= Taken(n)
            ),
            new(
                Begins + OrUnknown + "\\. That is not an answer yet: no (?:verdict: .*|comparison)\\.",
                "the verdict is withheld",
                n => n.One.Conclusion is null
            ),
            new(
                "On this day nothing could be compared between NEW and OLD\\.",
                "there is no difference to tell",
                n => n.One.Overall is null
            )
        );

    [Fact]
    public void Every_sentence_of_the_answer_is_true_of_its_numbers()
    {
        WordTable<MeterNumbers> table = OfTheAnswer;
        foreach ((VerdictDay day, Comparison comparison) in days.All)
        {
            foreach (ClassComparison one in comparison.Comparisons.Select(pair => pair.Classes.Steady).OfType<ClassComparison>())
            {
                Plan plan = ADay.ShortPlan with { MarginDb = day.Terms.MarginDb };
                string sentence = PlainSentence.OfMeter(new AskedPair("NEW", "OLD", plan, one, null), "On this day");
                table.Read(sentence, new MeterNumbers(day.Name, one, day.Terms, comparison.Codes.Count, sentence));
            }
        }

        table.HasNoIdleLine();
    }

    [Theory]
    [InlineData(EarVerdict.HeardBlind, "The crew told them apart by ear, blind.")]
    [InlineData(EarVerdict.NotHeard, "The crew did not tell them apart by ear, in a test long enough to show it.")]
    [InlineData(EarVerdict.NotTestedEnough, "Whether it can be heard was not tested enough.")]
    public void The_ear_is_told_by_its_word(EarVerdict verdict, string sentence) =>
        Assert.Equal(sentence, PlainSentence.OfEar(new AskedPair("NEW", "OLD", ADay.ShortPlan, null, AChoice.With(verdict))));

    [Fact]
    public void An_ear_that_was_not_asked_says_so() =>
        Assert.Equal(
            "Nobody tested whether it can be heard.",
            PlainSentence.OfEar(new AskedPair("NEW", "OLD", ADay.ShortPlan, null, null))
        );

    private static double Given(MeterNumbers numbers) => Number(numbers.Printed, "was ([\\d.]+) dB");

    private static double Taken(MeterNumbers numbers) => Number(numbers.Printed, "give or take ([\\d.]+) dB");

    private static double Number(string sentence, string pattern) =>
        Regex.Match(sentence, pattern) is { Success: true } found
            ? double.Parse(found.Groups[1].ValueSpan, CultureInfo.InvariantCulture)
            : 0;
}
