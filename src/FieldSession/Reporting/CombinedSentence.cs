using FieldSession.Comparing;
using FieldSession.Reviewing;

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
        string direction = $"the meter shows it {(main?.Overall?.DifferenceDb > 0 ? "louder" : "quieter")}"
            + (meter == MeterVerdict.MeasuredButSmall ? ", by less than the margin that matters" : "");
        return (isMeasured, meter, ear) switch
        {
            (true, _, EarVerdict.HeardBlind) => $"You would notice: {direction}, and it was heard blind.",
            (true, _, EarVerdict.NotHeard) => $"The meter sees it, you would not: {direction}, and the ear did not find it.",
            (true, _, _) => $"{Capital(direction)}; whether it is heard was not tested enough.",
            (_, MeterVerdict.NotResolved, EarVerdict.HeardBlind) => "Heard blind, and not resolved by the meter: a change of character that dB(A) misses, or too few runs; look at 200 and 250 Hz.",
            (_, _, EarVerdict.HeardBlind) => "A change of character that the dB(A) meter misses: look at 200 and 250 Hz.",
            (_, MeterVerdict.SameWithin, EarVerdict.NotHeard) => $"We could not tell them apart, and we could have seen {Figures.Db(main?.Mdd80Db)} dB.",
            (_, MeterVerdict.SameWithin, _) => $"The meter could not tell them apart, and could have seen {Figures.Db(main?.Mdd80Db)} dB; whether the ear can was not tested enough.",
            _ => "This day cannot say.",
        };
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
