using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>When, on the laptop's clock, the levels of a segment were read off the meter.</summary>
public static class ReadWindow
{
    private const double TypingS = 2;
    private const double ImpactMoreS = 1;
    private const double ShortestS = 3;
    private const double TrustedHalfRangeS = 1;

    /// <summary>
    /// A steady segment: the plan's seconds before the reading was stored, to 2 s before it, which the typing takes; never before the entry
    /// before. Cut at both ends by what the clocks may be apart where that is more than 1 s. Null: under 3 s are left.
    /// </summary>
    /// <param name="storedS">When the reading was stored, s.</param>
    /// <param name="planS">Seconds of the segment as the plan has it.</param>
    /// <param name="entryBeforeS">When the entry before was stored, s; null: none in the run.</param>
    /// <param name="halfRangeS">Half-range of the clocks' offset, s.</param>
    public static TimeWindow? OfSteady(double storedS, double planS, double? entryBeforeS, double halfRangeS) =>
        Of(storedS - TypingS, storedS, planS, entryBeforeS, halfRangeS);

    /// <summary>An impact: the same, 1 s longer.</summary>
    /// <param name="storedS">When the reading was stored, s.</param>
    /// <param name="planS">Seconds of the segment as the plan has it.</param>
    /// <param name="entryBeforeS">When the entry before was stored, s; null: none in the run.</param>
    /// <param name="halfRangeS">Half-range of the clocks' offset, s.</param>
    public static TimeWindow? OfImpact(double storedS, double planS, double? entryBeforeS, double halfRangeS) =>
        Of(storedS - TypingS + ImpactMoreS, storedS, planS, entryBeforeS, halfRangeS);

    private static TimeWindow? Of(double endS, double storedS, double planS, double? entryBeforeS, double halfRangeS)
    {
        double cut = halfRangeS > TrustedHalfRangeS ? halfRangeS : 0;
        TimeWindow window = new(Math.Max(storedS - planS, entryBeforeS ?? double.NegativeInfinity) + cut, endS - cut);
        return window.Seconds >= ShortestS ? window : null;
    }
}
