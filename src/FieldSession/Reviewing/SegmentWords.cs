using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>
/// Where a code differs: by kind of surface and by segment, clean readings, with the difference from all readings beside it.
/// </summary>
internal static class SegmentWords
{
    private static MeasureClass[] Classes => [MeasureClass.Steady, MeasureClass.Impact];

    /// <summary>The table of kinds.</summary>
    public static IEnumerable<string> Kinds(CodeComparison pair, bool anySpoilt)
    {
        List<string> rows = [];
        foreach (MeasureClass measureClass in Classes)
        {
            IReadOnlyList<KindEstimate> all = pair.WithSpoilt.Of(measureClass)?.Kinds ?? [];
            foreach (KindEstimate kind in pair.Classes.Of(measureClass)?.Kinds ?? [])
            {
                Estimate? withSpoilt = all.FirstOrDefault(other => other.Kind == kind.Kind)?.Estimate;
                rows.Add(
                    Row(
                        kind.Kind,
                        $"{kind.Segments}",
                        kind.Estimate,
                        Figures.Probability(kind.Estimate.P),
                        anySpoilt ? Figures.Difference(withSpoilt) : ""
                    )
                );
            }
        }

        return rows.Count == 0 ? [] : ["", Header("  kind", "segments", "p", anySpoilt), .. rows];
    }

    /// <summary>The table of segments.</summary>
    public static IEnumerable<string> Segments(CodeComparison pair, bool anySpoilt, SegmentCounts counts)
    {
        List<string> rows = [];
        foreach (MeasureClass measureClass in Classes)
        {
            Dictionary<string, Estimate> all = (pair.WithSpoilt.Of(measureClass)?.Segments ?? []).ToDictionary(
                segment => segment.Segment,
                segment => segment.Estimate
            );
            foreach (SegmentEstimate segment in pair.Classes.Of(measureClass)?.Segments ?? [])
            {
                rows.Add(
                    Row(
                        segment.Segment,
                        $"{counts.Clean(segment.Segment, pair.Code)}/{counts.Clean(segment.Segment, pair.Reference)}",
                        segment.Estimate,
                        Figures.Probability(segment.PHolm),
                        anySpoilt ? Figures.Difference(all.GetValueOrDefault(segment.Segment)) : ""
                    )
                );
            }
        }

        return rows.Count == 0
            ? []
            :
            [
                "",
                Header("  segment", "n", "p Holm", anySpoilt),
                .. rows,
                $"  n: clean readings on {pair.Code}/{pair.Reference}; each interval is for its segment alone",
            ];
    }

    private static string Header(string name, string n, string p, bool anySpoilt) =>
        Cells(name, n, "d", "95 % interval", p, anySpoilt ? "d, all" : "");

    private static string Row(string name, string n, Estimate estimate, string p, string withSpoilt) =>
        Cells($"  {name}", n, Figures.Difference(estimate), Figures.Interval95(estimate), p, withSpoilt);

    private static string Cells(string name, string n, string d, string interval, string p, string withSpoilt) =>
        (
            PlainLines.Left(name, 29)
            + PlainLines.Right(n, 9)
            + PlainLines.Right(d, 7)
            + PlainLines.Right(interval, 16)
            + PlainLines.Right(p, 10)
            + PlainLines.Right(withSpoilt, 9)
        ).TrimEnd();
}

/// <summary>How many clean readings are behind each code on each segment.</summary>
public sealed class SegmentCounts
{
    private readonly Dictionary<(string Segment, string Code), int> _clean;

    private SegmentCounts(Dictionary<(string Segment, string Code), int> clean) => _clean = clean;

    /// <summary>Counts a day.</summary>
    public static SegmentCounts Of(MeasuredDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        Dictionary<(string Segment, string Code), int> clean = [];
        foreach (MeasuredLevel level in day.Levels)
        {
            if (!level.Spoilt)
            {
                (string, string) key = (level.Segment, level.Code);
                clean[key] = clean.GetValueOrDefault(key) + 1;
            }
        }

        return new SegmentCounts(clean);
    }

    /// <summary>Clean readings of a code on a segment.</summary>
    public int Clean(string segment, string code) => _clean.GetValueOrDefault((segment, code));
}
