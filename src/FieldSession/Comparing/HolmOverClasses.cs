using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// Puts the Holm-corrected p beside every segment of a pair: one family over both classes, because the question "which segments differ" is asked
/// once (<see cref="Holm"/>).
/// </summary>
internal static class HolmOverClasses
{
    /// <summary>The classes with their corrected p.</summary>
    public static ClassComparisons Over(ClassComparisons classes)
    {
        SegmentEstimate[] family = [.. Of(classes.Steady), .. Of(classes.Impact)];
        double[] adjusted = Holm.Adjust([.. family.Where(segment => segment.Estimate.P is not null).Select(segment => segment.Estimate.P!.Value)]);
        int next = 0;
        ClassComparison? With(ClassComparison? comparison) => comparison is null ? null : comparison with
        {
            Segments = [.. comparison.Segments.Select(segment =>
                segment.Estimate.P is null ? segment : segment with { PHolm = adjusted[next++] })],
        };
        return classes with { Steady = With(classes.Steady), Impact = With(classes.Impact) };
    }

    private static IReadOnlyList<SegmentEstimate> Of(ClassComparison? comparison) => comparison?.Segments ?? [];
}
