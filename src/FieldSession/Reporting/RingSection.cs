using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>What the recordings hold: the ring band by segment, other bands and the time after impacts explored, one mean spectrum a code.</summary>
public static class RingSection
{
    private const double Unlikely = 0.05;

    /// <summary>The section; null: nothing was recorded, or the ring is covered.</summary>
    public static ReportSection? Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return day.Ring is not { } ring ? null : new ReportSection(ReportPart.Ring, RingReportWords.RingTitle,
        [
            new Paragraph(RingReportWords.HowRingReads(ring)),
            .. Overloaded(ring, day.Names),
            .. ring.Spectra.Count == 0 ? [] : new ReportBlock[] { Chart(ring, day.Names) },
            .. ring.Pairs.SelectMany(pair => Pair(pair, ring, day.Names)),
        ]);
    }

    private static IEnumerable<ReportBlock> Overloaded(RingFinding ring, SpecNames names) => ring.Overloaded.Values.Sum() == 0
        ? []
        : [new Paragraph(RingReportWords.OverloadedBy(string.Join(", ", ring.Overloaded.Select(code => $"{names.Of(code.Key)} {code.Value}"))))];

    private static SpectrumChart Chart(RingFinding ring, SpecNames names) => new(
        RingReportWords.MeanSpectra,
        [.. ring.Spectra.Select(line => new SpectrumLine(names.Of(line.Code), line.LevelsDb, line.HalfWidthsDb))],
        State.HeardSegment.SpectrumFromHz,
        State.HeardSegment.SpectrumStepHz,
        ring.Band);

    private static IEnumerable<ReportBlock> Pair(RingPair pair, RingFinding ring, SpecNames names)
    {
        yield return new Subheading($"{names.Of(pair.Code)} minus {names.Of(pair.Reference)}");
        yield return new ReportTable(
            ["Band", "Difference, dB", "95 % interval", "p Holm", "Verdict"],
            [
                [RingReportWords.RingBandOf(ring.Band), Figures.Difference(pair.Main.Overall), Figures.Interval95(pair.Main.Overall), "", ring.WhyNone is { } why ? $"no verdict: {why}" : pair.Main.Verdict],
                .. pair.Explored.Select(Explored),
            ]);
        yield return new IntervalChart(
            RingReportWords.RingByBand(names.Of(pair.Code), names.Of(pair.Reference)),
            "dB",
            [
                .. DifferenceRow.Of(RingReportWords.RingBandOf(ring.Band), pair.Main.Overall, ring.MarginDb, marked: false),
                .. pair.Explored.SelectMany(band => DifferenceRow.Of(RingWords.NameOf(band.Name), band.Estimate, ring.MarginDb, band.PHolm <= Unlikely)),
            ])
        {
            Ends = ChartEnds.OfRing,
            MarkedMeans = RingReportWords.DifferenceAllowingForBands,
        };
        yield return new ReportTable(
            ["Segment", "Kind", "Difference, dB", "95 % interval", "p Holm"],
            [.. pair.Main.Segments.Select(one => (IReadOnlyList<string>)
                [one.Segment, one.Kind, Figures.Difference(one.Estimate), Figures.Interval95(one.Estimate), Figures.Probability(one.PHolm)])]);
        yield return new IntervalChart(
            RingReportWords.RingBySegment(names.Of(pair.Code), names.Of(pair.Reference)),
            "dB",
            [.. pair.Main.Segments.SelectMany(one => DifferenceRow.Of(one.Segment, one.Estimate, ring.MarginDb, one.PHolm <= Unlikely))])
        {
            Ends = ChartEnds.OfRing,
            MarkedMeans = ReportingWords.DifferenceAllowingForSegments,
        };
        yield return new Paragraph(RingReportWords.RingLasts(pair.Lasting));
    }

    private static IReadOnlyList<string> Explored(ExploredBand band) =>
        [RingWords.NameOf(band.Name), Figures.Difference(band.Estimate), Figures.Interval95(band.Estimate), Figures.Probability(band.PHolm), "explored"];
}
