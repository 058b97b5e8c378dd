using FieldSession.Comparing;

namespace FieldSession.Reporting;

/// <summary>One sentence from the meter's word and the ear's, by fixed rules (own method, docs/method.md).</summary>
public static class CombinedSentence
{
    /// <summary>The sentence.</summary>
    /// <param name="meter">The meter's word.</param>
    /// <param name="ear">The ear's word.</param>
    /// <param name="main">The comparison that the meter's word rests on.</param>
    public static string Of(MeterVerdict meter, EarVerdict ear, ClassComparison? main)
    {
        bool isMeasured = meter is MeterVerdict.Measured or MeterVerdict.MeasuredButSmall;
        string direction = ReportingWords.MeterShowsIt(main?.Overall?.DifferenceDb > 0 ? "louder" : "quieter")
            + (meter == MeterVerdict.MeasuredButSmall ? ReportingWords.LessThanMargin : "");
        return (isMeasured, meter, ear) switch
        {
            (true, _, EarVerdict.HeardBlind) => ReportingWords.YouWouldNotice(direction),
            (true, _, EarVerdict.NotHeard) => ReportingWords.MeterSeesItEarDoesNot(direction),
            (true, _, _) => ReportingWords.HearingNotTestedEnough(Capital(direction)),
            (_, MeterVerdict.NotResolved, EarVerdict.HeardBlind) => ReportingWords.HeardButNotResolved,
            (_, _, EarVerdict.HeardBlind) => ReportingWords.CharacterThatMeterMisses,
            (_, MeterVerdict.SameWithin, EarVerdict.NotHeard) => ReportingWords.NotToldApart(main),
            (_, MeterVerdict.SameWithin, _) => ReportingWords.MeterCouldNotTellApart(main),
            _ => ReportingWords.ThisDayCannotSay,
        };
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
