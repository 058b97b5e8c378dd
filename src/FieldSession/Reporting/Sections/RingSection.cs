using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Signals;

namespace FieldSession.Reporting;

/// <summary>
/// What the recordings hold: the ring band by segment, other bands and the time after impacts explored, one mean spectrum a code.
/// </summary>
public static class RingSection
{
    private const double Unlikely = 0.05;

    /// <summary>The section; null: nothing was recorded, or the ring is covered.</summary>
    public static ReportSection? Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return day.Ring is not { } ring
            ? null
            : new ReportSection(
                ReportPart.Ring,
                RingReportWords.RingTitle,
                [
                    new Paragraph(RingReportWords.HowRingReads(ring)),
                    .. Overloaded(ring, day.Names),
                    .. ring.Spectra.Count == 0 ? [] : new ReportBlock[] { Chart(ring, day.Names) },
                    .. ring.Pairs.SelectMany(pair => Pair(pair, ring, day.Names)),
                ]
            );
    }

    private static IEnumerable<ReportBlock> Overloaded(RingFinding ring, SpecNames names) =>
        ring.Overloaded.Values.Sum() == 0
            ? []
            :
            [
                new Paragraph(
                    RingReportWords.OverloadedBy(string.Join(", ", ring.Overloaded.Select(code => $"{names.Of(code.Key)} {code.Value}")))
                ),
            ];

    private static SpectrumChart Chart(RingFinding ring, SpecNames names) =>
        new(
            RingReportWords.MeanSpectra,
            [.. ring.Spectra.Select(line => new SpectrumLine(names.Of(line.Code), line.LevelsDb, line.HalfWidthsDb))],
            State.HeardSegment.SpectrumFromHz,
            State.HeardSegment.SpectrumStepHz,
            ring.Band
        );

    private static IEnumerable<ReportBlock> Pair(RingPair pair, RingFinding ring, SpecNames names)
    {
        yield return new Subheading($"{names.Of(pair.Code)} minus {names.Of(pair.Reference)}");
        yield return new ReportTable(
            ["Band", "Difference, dB", "95 % interval", "p Holm", "Verdict"],
            [
                [
                    RingReportWords.RingBandOf(ring.Band),
                    Figures.Difference(pair.Main.Overall),
                    Figures.Interval95(pair.Main.Overall),
                    "",
                    ring.WhyNone is { } why ? $"no verdict: {why}" : pair.Main.Verdict,
                ],
                .. pair.Explored.Select(Explored),
            ]
        );
        yield return new IntervalChart(
            RingReportWords.RingByBand(names.Of(pair.Code), names.Of(pair.Reference)),
            "dB",
            [
                .. DifferenceRow.Of(RingReportWords.RingBandOf(ring.Band), pair.Main.Overall, ring.MarginDb, marked: false),
                .. pair.Explored.SelectMany(band =>
                    DifferenceRow.Of(RingWords.NameOf(band.Name), band.Estimate, ring.MarginDb, band.PHolm <= Unlikely)
                ),
            ]
        )
        {
            Ends = ChartEnds.OfRing,
            MarkedMeans = RingReportWords.DifferenceAllowingForBands,
        };
        yield return new ReportTable(
            ["Segment", "Kind", "Difference, dB", "95 % interval", "p Holm"],
            [
                .. pair.Main.Segments.Select(one =>
                    (IReadOnlyList<string>)
                        [
                            one.Segment,
                            one.Kind,
                            Figures.Difference(one.Estimate),
                            Figures.Interval95(one.Estimate),
                            Figures.Probability(one.PHolm),
                        ]
                ),
            ]
        );
        yield return new IntervalChart(
            RingReportWords.RingBySegment(names.Of(pair.Code), names.Of(pair.Reference)),
            "dB",
            [.. pair.Main.Segments.SelectMany(one => DifferenceRow.Of(one.Segment, one.Estimate, ring.MarginDb, one.PHolm <= Unlikely))]
        )
        {
            Ends = ChartEnds.OfRing,
            MarkedMeans = ReportingWords.DifferenceAllowingForSegments,
        };
        yield return new Paragraph(RingReportWords.RingLasts(pair.Lasting));
    }

    private static IReadOnlyList<string> Explored(ExploredBand band) =>
        [
            RingWords.NameOf(band.Name),
            Figures.Difference(band.Estimate),
            Figures.Interval95(band.Estimate),
            Figures.Probability(band.PHolm),
            "explored",
        ];
}

/// <summary>What the report says of recordings.</summary>
internal static class RingReportWords
{
    public const string RingCoveredWord = "COVERED";
    public const string RingIsCovered = "what the recordings hold is covered until the last prediction is locked";
    public const string ShortEvents = "short events, for the median over 1.28 s gives another word";
    public const string RingTitle = "Ring in recordings";
    public const string MeanSpectra =
        "Mean spectrum of each spec on the steady segments, the ring band shaded, with its 95 % interval over the runs";

    public static string RingBandOf(FrequencyBand band) => $"ring, {RingWords.Edges(band)}";

    public static string RingAnswers(FrequencyBand band, Estimate overall) =>
        $"the recordings show it: the ring of the air in the tyre, {RingWords.Edges(band)}, is "
        + $"{Figures.Db(Math.Abs(overall.DifferenceDb))} dB {(overall.DifferenceDb > 0 ? "stronger" : "weaker")}";

    public static string RingIsTheSame(FrequencyBand band, string margin) =>
        $"it is not the ring of the air in the tyre: the recordings show it the same within {margin} dB, {RingWords.Edges(band)}";

    public static string RingNotResolved(FrequencyBand band) =>
        $"the recordings do not resolve the ring of the air in the tyre, {RingWords.Edges(band)}";

    public static string HowRingReads(RingFinding ring) =>
        $"Level of the ring of the air in the tyre, {RingWords.Edges(ring.Band)}, on the steady segments, from recordings "
        + $"of {ring.RunsHeard} of {ring.RunsDriven} runs, by the run model of the readings and a margin of its own, "
        + $"{Figures.MarginDb(ring.MarginDb)} dB. "
        + (ring.IsCalibrated ? "The chain was calibrated." : "The chain was not calibrated: levels are good for differences only.")
        + " The other bands are explored and carry no verdict. "
        + (
            ring.Found is { } found
                ? $"Without telling specs apart the ring was found at {found.PeakHz:0} Hz."
                : "No ring rises 3 dB out of the noise."
        );

    public static string OverloadedBy(string codes) => $"Overloaded windows, which do not count: {codes}.";

    public const string DifferenceAllowingForBands = "a difference at 5 % that allows for the number of explored bands";

    public static string RingByBand(string code, string reference) =>
        $"{code} minus {reference} by band, the ring band first, the others explored";

    public static string RingBySegment(string code, string reference) => $"Ring of {code} minus {reference} by segment";

    public static string RingLasts(RingLasting? lasting) =>
        lasting is null
            ? "How long the ring lasts after impacts can not be determined."
            : $"After impacts the ring lasts {RingWords.Lasting(lasting)} as long (explored; from {lasting.Runs} runs).";

    public static string HighestAt(string name, string hz) => $"{name} highest at {hz} Hz";
}

/// <summary>A plot of one mean spectrum for each spec, the ring band shaded. The table of bands is beside it.</summary>
/// <param name="Title">What is plotted.</param>
/// <param name="Lines">The spectra.</param>
/// <param name="FromHz">The lowest frequency, Hz.</param>
/// <param name="StepHz">From one frequency to the next, Hz.</param>
/// <param name="Band">The band that is shaded.</param>
public sealed record SpectrumChart(string Title, IReadOnlyList<SpectrumLine> Lines, double FromHz, double StepHz, FrequencyBand Band)
    : ReportChart(Title)
{
    /// <inheritdoc/>
    public override bool IsEmpty => Lines.Count == 0;

    /// <inheritdoc/>
    public override string Words => $"Plot: {Title}: {string.Join("; ", Lines.Select(Said))}.";

    private string Said(SpectrumLine line)
    {
        int highest = line.LevelsDb.IndexOf(line.LevelsDb.Max());
        return RingReportWords.HighestAt(line.Name, (FromHz + (highest * StepHz)).ToString("0", CultureInfo.CurrentCulture));
    }
}

/// <summary>A line of a <see cref="SpectrumChart"/>.</summary>
/// <param name="Name">How the spec is called.</param>
/// <param name="LevelsDb">dB per Hz, lowest frequency first.</param>
/// <param name="HalfWidthsDb">Half the 95 % interval of each, dB; empty: not known.</param>
public sealed record SpectrumLine(string Name, ImmutableArray<double> LevelsDb, ImmutableArray<double> HalfWidthsDb);
