using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>One code against the reference in words: a block a class, then kinds and segments.</summary>
internal static class PairWords
{
    private const int LabelWidth = 30;
    private const int CellWidth = 24;

    /// <summary>The lines.</summary>
    /// <param name="pair">The pair.</param>
    /// <param name="anySpoilt">Whether any reading is spoilt; else clean and all readings are the same and one column says it.</param>
    /// <param name="counts">Clean readings by code and segment.</param>
    public static IEnumerable<string> Of(CodeComparison pair, bool anySpoilt, SegmentCounts counts)
    {
        List<string> lines = ["", $"{pair.Code} against {pair.Reference}", anySpoilt ? Row("", "clean readings", "all readings") : "  no reading is spoilt"];
        foreach (MeasureClass? measureClass in new MeasureClass?[] { null, MeasureClass.Steady, MeasureClass.Impact })
        {
            if (pair.Classes.Of(measureClass) is { } clean)
            {
                lines.AddRange(Block(clean, anySpoilt ? pair.WithSpoilt.Of(measureClass) : null));
            }
        }

        lines.AddRange(SegmentWords.Kinds(pair, anySpoilt));
        lines.AddRange(SegmentWords.Segments(pair, anySpoilt, counts));
        return lines;
    }

    /// <summary>The lines on the main segments: one class of them, or all together where steady ones and impacts are among them.</summary>
    public static IEnumerable<string> OnMainSegments(CodeComparison pair, bool anySpoilt)
    {
        ClassComparison? clean = Mixed(pair.Classes);
        return clean is null ? [] :
        [
            $"{pair.Code} against {pair.Reference}",
            anySpoilt ? Row("", "clean readings", "all readings") : "  no reading is spoilt",
            .. Block(clean, anySpoilt ? Mixed(pair.WithSpoilt) : null),
        ];
    }

    private static ClassComparison? Mixed(ClassComparisons classes) =>
        classes.Steady is null ? classes.Impact : classes.Impact is null ? classes.Steady : classes.All;

    private static IEnumerable<string> Block(ClassComparison clean, ClassComparison? all)
    {
        string Line(string label, Func<ClassComparison, string> cell) => Row($"    {label}", cell(clean), all is null ? "" : cell(all));
        return
        [
            $"  {ComparisonWords.Name(clean.Class)}",
            .. ClassFigures.Of(clean).Select(figure => Line(figure.Label, figure.Cell)),
            .. Verdicts(clean, all),
            .. ExtraWords.Of(clean),
            .. clean.Remarks.SelectMany(remark => PlainLines.Wrapped("    - ", remark)),
        ];
    }

    private static IEnumerable<string> Verdicts(ClassComparison clean, ClassComparison? all) => clean.IsExplored
        ? PlainLines.Wrapped("    ", ReviewingWords.ExploredWithoutWord)
        : all is null || all.Verdict == clean.Verdict
        ? PlainLines.Wrapped("    verdict: ", clean.Verdict)
        : PlainLines.Wrapped("    verdict, clean readings: ", clean.Verdict).Concat(PlainLines.Wrapped("    verdict, all readings: ", all.Verdict));

    private static string Row(string label, string clean, string all) =>
        (PlainLines.Left(label, LabelWidth) + PlainLines.Right(clean, CellWidth) + PlainLines.Right(all, CellWidth)).TrimEnd();
}
