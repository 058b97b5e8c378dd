using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.Tests.Making;
using FieldSession.Tests.Rating;

namespace FieldSession.Tests.Verdicts;

/// <summary>
/// What is said of the ear, and of meter and ear together, and what must then be true. Rules: docs/entry-lines.md, docs/report.md.
/// </summary>
public sealed class EveryWordOfTheEarTests
{
    private const string Question = @"'.*', (?:862 or 417|417 or 862), (?:two-sided|one-sided, 862 expected|triangle): ";
    private const string Counted =
        @"(?:862 chosen|417 chosen|the odd one found) \d+ of \d+ unseen, (?:two|one)-sided p [\d.< ]+ \(share [\d.]+ (?:to [\d.]+, 95 % interval|or more, 95 % limit)\)";
    private const string Apart = @"(?:; with the meter seen, counted apart: (?:862 chosen|417 chosen|the odd one found) \d+ of \d+)?";
    private const string Power = @"; (?:\d+ of \d+ needed at 5 %|\d+ can't reach 5 %), power [\d.]+ at 75 % right and [\d.]+ at 90 %";

    private static WordTable<ChoiceFinding> OfTheEar =>
        new(
            new(
                "HEARD BLIND: " + Question + Counted + Apart + Power,
                "complete, p of the unseen choices at most 5 %, and the printed share leaves out guessing",
                c => c is { IsComplete: true, Counts.P: <= 0.05 } && PrintedShare(c) > c.Size.Chance
            ),
            new(
                "NOT HEARD: " + Question + Counted + Apart + Power,
                "complete, p above 5 %, and so many unseen choices find the planned share with 80 %",
                c => c is { IsComplete: true, Counts.P: > 0.05 } && c.Size.Trials == c.Counts.Made && c.Size.PowerAtDetect >= 0.8
            ),
            new(
                "NOT TESTED ENOUGH: "
                    + Question
                    + Counted
                    + Apart
                    + Power
                    + "; too few trials to say that (?:75|90) % right would have been found",
                "complete, p above 5 %, power below 80 %",
                c => c is { IsComplete: true, Counts.P: > 0.05 } && c.Size.PowerAtDetect < 0.8
            ),
            new(
                "NOT TESTED ENOUGH: "
                    + Question
                    + Counted
                    + ", stopped before the \\d+ planned"
                    + Apart
                    + Power
                    + "; the set is not at its planned end",
                "stopped early, whatever it counts",
                c => c is { IsComplete: false, Counts: not null }
            ),
            new(
                "NOT TESTED ENOUGH: "
                    + Question
                    + @"\d+ of \d+ trials made, covered until the planned end"
                    + Power
                    + "; the set is not at its planned end",
                "nothing is told",
                c => c is { IsComplete: false, IsCovered: true, Counts: null }
            ),
            new(
                "NOT TESTED ENOUGH: " + Question + @"none of \d+ trials made" + Power + "; the set is not at its planned end",
                "nothing was chosen",
                c => c.Made == 0
            ),
            new(
                "NOT TESTED ENOUGH: "
                    + Question
                    + "nobody chose unseen; with the meter seen, counted apart: .*; only choices made with the meter unseen can "
                    + "carry a word",
                "every choice was made with the meter seen",
                c => c is { IsComplete: true, Counts: null, MeterSeen: not null }
            ),
            new("explored, this pair was asked before: " + Question + ".*", "an earlier set asked about the pair", c => c.IsRepeat)
        );

    [Fact]
    public void Every_word_of_the_ear_is_true_of_its_counts()
    {
        WordTable<ChoiceFinding> table = OfTheEar;
        foreach (ADay day in Days())
        {
            ChoiceFinding found = AnEarDay.Found(day).Choices[^1];
            table.Read(ChoiceWords.Sentence(found), found);
        }

        table.HasNoIdleLine();
    }

    /// <summary>Meter, ear, and the sentence that puts them together.</summary>
    private sealed record Both(MeterVerdict Meter, EarVerdict Ear, string Sentence)
    {
        public bool Shown => Meter is MeterVerdict.Measured or MeterVerdict.MeasuredButSmall;

        // of whom, what, where, how many
        public bool SaysWhatWasTested =>
            Sentence.Contains("in this test (Ro and Tam, 'which is louder', Mill lane, 40 trials)", StringComparison.Ordinal);

        public bool SaysWhatItWouldHaveFound =>
            Sentence.Contains("would have found 75 % right with a chance of 90 %", StringComparison.Ordinal);
    }

    private static WordTable<Both> OfBoth =>
        new(
            new(
                @"The crew heard a difference blind in this test \(.*\), and the meter shows it (?:louder|quieter)(?:, by less than the margin that matters)?\.",
                "both: the meter measured it, HEARD BLIND, and the test is named",
                b => b is { Shown: true, Ear: EarVerdict.HeardBlind, SaysWhatWasTested: true }
            ),
            new(
                @"The crew did not hear it in this test \(.*\), which would .*; the meter shows it .*\.",
                "measured, NOT HEARD, and what the test would have found",
                b => b is { Shown: true, Ear: EarVerdict.NotHeard, SaysWhatWasTested: true, SaysWhatItWouldHaveFound: true }
            ),
            new(
                @"The meter shows it .*; whether it is heard was not tested enough\.",
                "measured, and no word of the ear",
                b => b is { Shown: true, Ear: EarVerdict.NotTestedEnough }
            ),
            new(
                @"The crew heard a difference blind in this test \(.*\), which the meter did not resolve: .*",
                "HEARD BLIND, NOT RESOLVED",
                b => b is { Meter: MeterVerdict.NotResolved, Ear: EarVerdict.HeardBlind, SaysWhatWasTested: true }
            ),
            new(
                @"The crew heard a difference blind in this test \(.*\), and the meter shows none of the size that matters: .*",
                "HEARD BLIND, SAME WITHIN",
                b => b is { Meter: MeterVerdict.SameWithin, Ear: EarVerdict.HeardBlind, SaysWhatWasTested: true }
            ),
            new(
                @"The crew could not tell them apart in this test \(.*\), which would .*; the meter could have seen [\d.]+ dB\.",
                "NOT HEARD, SAME WITHIN",
                b =>
                    b
                        is {
                            Meter: MeterVerdict.SameWithin,
                            Ear: EarVerdict.NotHeard,
                            SaysWhatWasTested: true,
                            SaysWhatItWouldHaveFound: true
                        }
            ),
            new(
                @"The meter shows no difference of the size that matters, and could have seen [\d.]+ dB; whether the ear can was not tested enough\.",
                "SAME WITHIN, and no word of the ear",
                b => b is { Meter: MeterVerdict.SameWithin, Ear: EarVerdict.NotTestedEnough }
            ),
            new(
                @"This day cannot say\.",
                "nothing resolved, nothing heard",
                b => b is { Meter: MeterVerdict.NotResolved, Ear: not EarVerdict.HeardBlind }
            )
        );

    [Fact]
    public void Every_sentence_of_meter_and_ear_says_no_more_than_both()
    {
        WordTable<Both> table = OfBoth;
        foreach (MeterVerdict meter in Enum.GetValues<MeterVerdict>())
        {
            foreach (EarVerdict ear in Enum.GetValues<EarVerdict>())
            {
                string sentence = CombinedSentence.Of(
                    meter,
                    Reporting.AChoice.With(ear),
                    new ClassComparison
                    {
                        RunsCounted = 6,
                        SegmentsCompared = 4,
                        Verdict = "",
                        Mdd80Db = 0.9,
                        Overall = new Estimate(1.2),
                    }
                );
                table.Read(sentence, new Both(meter, ear, sentence));
                Assert.DoesNotMatch(@"\byou\b|\bYou\b", sentence);
            }
        }

        table.HasNoIdleLine();
    }

    private static IEnumerable<ADay> Days()
    {
        for (int made = 0; made <= 14; made++)
        {
            yield return AnEarDay.Chosen("trials 862 417 n=14 x", 14, made);
            yield return AnEarDay.Chosen("trials 862 417 n=14 side=862 detect=90 x", 14, made);
        }

        foreach (int right in new[] { 24, 25, 26, 27, 28 })
        {
            yield return AnEarDay.Chosen("trials 862 417 n=40 x", 40, right);
        }

        yield return AnEarDay.Chosen("trials 862 417 n=6 x", 6, 3).Typed("trials 417 862 n=6 y");
        yield return AnEarDay.Triangles(12, 8);
        yield return AnEarDay.Triangles(12, 7);
        yield return AnEarDay.AtTheStop().Typed("trials 862 417 n=10 x");
        yield return AnEarDay.Chosen("trials 862 417 n=10 x", 9, 9);
        yield return AnEarDay.Chosen("trials 862 417 n=10 x", 9, 9).Typed("calibration after 94", "predict Ro feature=862 sure=1");
        yield return AnEarDay.AtTheStop().Typed(["trials 862 417 n=6 x", .. Enumerable.Repeat("choose Ro first", 6)]);
        yield return AnEarDay
            .AtTheStop()
            .Typed([
                "trials 862 417 n=12 x",
                .. Enumerable.Repeat("choose Ro first unseen", 6),
                .. Enumerable.Repeat("choose Tam second", 6),
            ]);
    }

    private static double PrintedShare(ChoiceFinding choice) =>
        double.Parse(Regex.Match(ChoiceWords.Counts(choice), @"share ([\d.]+)").Groups[1].Value, CultureInfo.InvariantCulture);
}
