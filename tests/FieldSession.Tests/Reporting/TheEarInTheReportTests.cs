using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Tests.Exports;
using FieldSession.Tests.Making;
using FieldSession.Tests.Rating;

namespace FieldSession.Tests.Reporting;

public sealed class TheEarInTheReportTests
{
    private static OpenedKey Key(SpecCode control) =>
        new(
            [new CodedSpec(new SpecCode("417"), "STANDARD"), new CodedSpec(new SpecCode("862"), "STIFFENED")],
            control.Digits == "417" ? "STANDARD" : "STIFFENED",
            [],
            new MarkCheck([], [], ReadByTwo: true),
            true
        );

    private static string Report(ADay day, OpenedKey? key = null) =>
        ReportMarkdown.Of(DayReport.Of(day.Study, key, new Provenance(day.Book.Lines.Count, day.Book.HeadHash, "1")));

    // exact binomial: 2 (10 + 1) / 2^10 = 0.0215
    [Fact]
    public void The_demo_day_was_heard_blind()
    {
        string report = Report(ExportedDay.Demo());
        Assert.Contains(
            "Ear: HEARD BLIND: 'which is louder', Sallowheath lane, 862 or 417, two-sided: 862 chosen 9 of 10 unseen, two-sided p 0.021",
            report,
            StringComparison.Ordinal
        );
        Assert.Contains("| roar | 862 | Tam, co-driver | 6 | 7 | -1.00 |", report, StringComparison.Ordinal);
        Assert.Single(report.Split("too few for a test").Skip(1));
        Assert.DoesNotContain("STIFFENED", report, StringComparison.Ordinal);
    }

    [Fact]
    public void The_blind_summary_says_the_same_by_code_only()
    {
        EarFindings ear = AnEarDay.Found(ExportedDay.Demo());
        string[] lines = [.. EarWords.Of(ear)];
        Assert.Contains(lines, line => line.Contains("HEARD BLIND", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.True(line.Length <= PlainLines.Width, line));
        Assert.Empty(EarWords.Of(AnEarDay.Found(AnEarDay.AtTheStop())));
    }

    [Fact]
    public void A_day_without_trials_says_so() =>
        Assert.Contains(
            "Ear: NOT TESTED ENOUGH: no forced choices were planned for this pair.",
            Report(AnEarDay.AtTheStop()),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(MeterVerdict.Measured, EarVerdict.HeardBlind, "The crew heard a difference blind in this test (Ro and Tam")]
    [InlineData(MeterVerdict.Measured, EarVerdict.NotHeard, "The crew did not hear it in this test (Ro and Tam")]
    [InlineData(MeterVerdict.MeasuredButSmall, EarVerdict.NotTestedEnough, "whether it is heard was not tested enough")]
    [InlineData(MeterVerdict.SameWithin, EarVerdict.HeardBlind, "look at 200 and 250 Hz")]
    [InlineData(MeterVerdict.NotResolved, EarVerdict.HeardBlind, "look at 200 and 250 Hz")]
    [InlineData(MeterVerdict.SameWithin, EarVerdict.NotHeard, "the meter could have seen 0.6 dB")]
    [InlineData(MeterVerdict.SameWithin, EarVerdict.NotTestedEnough, "whether the ear can was not tested enough")]
    [InlineData(MeterVerdict.NotResolved, EarVerdict.NotHeard, "This day cannot say")]
    [InlineData(MeterVerdict.NotResolved, EarVerdict.NotTestedEnough, "This day cannot say")]
    public void Meter_and_ear_make_one_sentence(MeterVerdict meter, EarVerdict ear, string words)
    {
        ClassComparison main = new()
        {
            Class = MeasureClass.Steady,
            RunsCounted = 4,
            SegmentsCompared = 3,
            Verdict = "",
            CouldShow = new CouldShow(0.6, 0.5, 2.5, 4),
            Overall = new Estimate(1.2),
        };
        Assert.Contains(words, CombinedSentence.Of(meter, AChoice.With(ear), main), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("417", "sound", "2 of 2 named a code of a new spec; guessing alone does as well with p 0.25")]
    [InlineData("417", "sound", "Right by the sound, which is a finding and no leak: Ro and Tam")]
    [InlineData("417", "seen", "The blind did not hold for Tam")]
    [InlineData("417", "guess", "Right without grounds: Tam")]
    [InlineData("862", "sound", "0 of 2 named")]
    public void Whether_the_blind_held_is_told_with_the_reason_that_was_given(string control, string because, string words)
    {
        ADay day = AnEarDay
            .AtTheStop()
            .Typed(
                "calibration after 94",
                "predict Ro feature=862 sure=4 because=sound",
                $"predict Tam feature=862 sure=3 because={because}"
            );
        Assert.Contains(words, string.Join(' ', UnblindingWords.Of(day.Study, Key(new SpecCode(control)))), StringComparison.Ordinal);
    }

    [Fact]
    public void Before_the_reveal_nobodys_guess_is_right_or_wrong()
    {
        ADay day = AnEarDay.AtTheStop().Typed("calibration after 94", "predict Ro feature=862 sure=4 because=sound");
        Assert.Empty(UnblindingWords.Of(day.Study, null));
        day.Typed("predict Tam feature=862 sure=3 because=sound");
        Assert.Contains("The key is not open", Assert.Single(UnblindingWords.Of(day.Study, null)), StringComparison.Ordinal);
    }
}
