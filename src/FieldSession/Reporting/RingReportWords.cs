using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Signals;

namespace FieldSession.Reporting;

/// <summary>What the report says of recordings.</summary>
internal static class RingReportWords
{
    public const string RingCoveredWord = "COVERED";
    public const string RingIsCovered = "what the recordings hold is covered until the last prediction is locked";
    public const string ShortEvents = "short events, for the median over 1.28 s gives another word";
    public const string RingTitle = "Ring in recordings";
    public const string MeanSpectra = "Mean spectrum of each spec on the steady segments, the ring band shaded, with its 95 % interval over the runs";

    public static string RingBandOf(FrequencyBand band) => $"ring, {RingWords.Edges(band)}";

    public static string RingAnswers(FrequencyBand band, Estimate overall) => $"the recordings show it: the ring of the air in the tyre, {RingWords.Edges(band)}, is {Figures.Db(Math.Abs(overall.DifferenceDb))} dB {(overall.DifferenceDb > 0 ? "stronger" : "weaker")}";

    public static string RingIsTheSame(FrequencyBand band, string margin) => $"it is not the ring of the air in the tyre: the recordings show it the same within {margin} dB, {RingWords.Edges(band)}";

    public static string RingNotResolved(FrequencyBand band) => $"the recordings do not resolve the ring of the air in the tyre, {RingWords.Edges(band)}";

    public static string HowRingReads(RingFinding ring) => $"Level of the ring of the air in the tyre, {RingWords.Edges(ring.Band)}, on the steady segments, from recordings of {ring.RunsHeard} of {ring.RunsDriven} runs, by the run model of the readings and a margin of its own, {Figures.MarginDb(ring.MarginDb)} dB. {(ring.IsCalibrated ? "The chain was calibrated." : "The chain was not calibrated: levels are good for differences only.")} The other bands are explored and carry no verdict.{(ring.Found is { } found ? $" Without telling specs apart the ring was found at {found.PeakHz:0} Hz." : " No ring rises 3 dB out of the noise.")}";

    public static string OverloadedBy(string codes) => $"Overloaded windows, which do not count: {codes}.";

    public const string DifferenceAllowingForBands = "a difference at 5 % that allows for the number of explored bands";

    public static string RingByBand(string code, string reference) => $"{code} minus {reference} by band, the ring band first, the others explored";

    public static string RingBySegment(string code, string reference) => $"Ring of {code} minus {reference} by segment";

    public static string RingLasts(RingLasting? lasting) => lasting is null
        ? "How long the ring lasts after impacts can not be determined."
        : $"After impacts the ring lasts {RingWords.Lasting(lasting)} as long (explored; from {lasting.Runs} runs).";

    public static string HighestAt(string name, string hz) => $"{name} highest at {hz} Hz";
}
