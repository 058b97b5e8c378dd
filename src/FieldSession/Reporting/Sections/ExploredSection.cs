using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>Kinds and segments: where the difference sits. Looked at beyond the main measure, and said so.</summary>
public static class ExploredSection
{
    private const double Unlikely = 0.05;

    /// <summary>The section.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        List<ReportBlock> blocks =
        [
            new Paragraph(ReportingWords.NotPlannedAsMainQuestion),
            .. day.Comparison.MainSegments is { } main
                ? [new Paragraph(ReportingWords.EverythingBeyondIsExplored(main))]
                : Array.Empty<ReportBlock>(),
        ];
        foreach (CodeComparison pair in day.Comparison.Comparisons)
        {
            blocks.Add(new Subheading(ReportingWords.DifferenceByKindAndSegment(day, pair)));
            blocks.Add(Chart(pair, day));
            blocks.Add(new ReportTable(["Kind", "Segments", "Difference, dB", "95 % interval"], [.. Kinds(pair)]));
            blocks.Add(
                new ReportTable(
                    ["Segment", "Kind", "Difference, dB", "95 % interval", "p Holm", ReportingWords.WithAllReadings],
                    [.. Segments(pair)]
                )
            );
        }

        return new ReportSection(ReportPart.Explored, ReportingWords.ExploredKindsAndSegments, blocks);
    }

    private static IntervalChart Chart(CodeComparison pair, ReportDay day)
    {
        IEnumerable<IntervalRow> Lines(ClassComparison? one, double marginDb) =>
            one is null ? [] : one.Segments.SelectMany(s => DifferenceRow.Of(s.Segment, s.Estimate, marginDb, s.PHolm <= Unlikely));
        return new IntervalChart(
            ReportingWords.ExploredDifferenceBySegment(day, pair),
            "dB",
            [.. Lines(pair.Classes.Steady, day.Comparison.MarginDb), .. Lines(pair.Classes.Impact, day.Comparison.ImpactMarginDb)]
        )
        {
            Ends = ChartEnds.OfLevels,
            MarkedMeans = ReportingWords.DifferenceAllowingForSegments,
        };
    }

    private static IEnumerable<ClassComparison> Classes(ClassComparisons classes) =>
        new[] { classes.Steady, classes.Impact }.OfType<ClassComparison>();

    private static IEnumerable<IReadOnlyList<string>> Kinds(CodeComparison pair) =>
        Classes(pair.Classes)
            .SelectMany(one => one.Kinds)
            .Select(kind =>
                (IReadOnlyList<string>)[kind.Kind, $"{kind.Segments}", Figures.Difference(kind.Estimate), Figures.Interval95(kind.Estimate)]
            );

    private static IEnumerable<IReadOnlyList<string>> Segments(CodeComparison pair)
    {
        Dictionary<string, Estimate> all = Classes(pair.WithSpoilt)
            .SelectMany(one => one.Segments)
            .ToDictionary(s => s.Segment, s => s.Estimate);
        return Classes(pair.Classes)
            .SelectMany(one => one.Segments)
            .Select(s =>
                (IReadOnlyList<string>)
                    [
                        s.Segment,
                        s.Kind,
                        Figures.Difference(s.Estimate),
                        Figures.Interval95(s.Estimate),
                        Figures.Probability(s.PHolm),
                        Figures.Difference(all.GetValueOrDefault(s.Segment)),
                    ]
            );
    }
}
