using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>One sentence from the meter's word and the ear's, by fixed rules (own method, docs/report.md, "The verdict").</summary>
public static class CombinedSentence
{
    /// <summary>The sentence.</summary>
    /// <param name="meter">The meter's word.</param>
    /// <param name="choice">The set of forced choices that the ear's word rests on; null: none was planned for the pair.</param>
    /// <param name="main">The comparison that the meter's word rests on.</param>
    /// <param name="ring">What the recordings answer, behind a semicolon; null: there is none, and where to look is said.</param>
    public static string Of(MeterVerdict meter, ChoiceFinding? choice, ClassComparison? main, string? ring = null)
    {
        string direction = ReportingWords.MeterShowsIt(main?.Overall?.DifferenceDb > 0 ? "louder" : "quieter")
            + (meter == MeterVerdict.MeasuredButSmall ? ReportingWords.LessThanMargin : "");
        return (meter, choice?.Verdict) switch
        {
            (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall, EarVerdict.HeardBlind) => ReportingWords.CrewHeardIt(direction, Test(choice!)),
            (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall, EarVerdict.NotHeard) => ReportingWords.CrewDidNotHearIt(direction, Test(choice!), Would(choice!)),
            (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall, _) => ReportingWords.HearingNotTestedEnough(direction),
            (MeterVerdict.NotResolved, EarVerdict.HeardBlind) => ReportingWords.HeardButNotResolved(Test(choice!), ring),
            (_, EarVerdict.HeardBlind) => ReportingWords.CharacterThatMeterMisses(Test(choice!), ring),
            (MeterVerdict.SameWithin, EarVerdict.NotHeard) => ReportingWords.NotToldApart(main, Test(choice!), Would(choice!)),
            (MeterVerdict.SameWithin, _) => ReportingWords.MeterCouldNotTellApart(main),
            _ => ReportingWords.ThisDayCannotSay,
        };
    }

    private static string Test(ChoiceFinding choice) => ChoiceWords.TestedOn(choice);

    private static string Would(ChoiceFinding choice) => ChoiceWords.WouldHaveFound(choice);
}
