using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>
/// The blind comparison as plain text of 80 columns, clean readings and all readings side by side. Codes only, nobody's identity.
/// </summary>
public static class ComparisonWords
{
    /// <summary>The lines of the text.</summary>
    /// <param name="comparison">What was found.</param>
    /// <param name="day">The readings it was found in, for the counts by segment.</param>
    public static IReadOnlyList<string> Of(Comparison comparison, MeasuredDay day)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(day);
        SegmentCounts counts = SegmentCounts.Of(day);
        return
        [
            .. Head(comparison),
            .. Codes(comparison),
            .. Main(comparison),
            .. comparison
                .Comparisons.Concat(comparison.AskedPairs)
                .SelectMany(pair => PairWords.Of(pair, comparison.Readings.LeftOut > 0, counts)),
            .. Pairs(comparison),
            .. Suspicious(comparison),
            .. Remarks(comparison),
        ];
    }

    /// <summary>The words for a class: all segments, steady segments, impacts.</summary>
    internal static string Name(MeasureClass? measureClass) =>
        measureClass switch
        {
            null => "all segments",
            MeasureClass.Steady => "steady segments",
            _ => "impacts",
        };

    private static IEnumerable<string> Head(Comparison comparison)
    {
        ReadingCounts readings = comparison.Readings;
        string causes =
            readings.Spoilt == 0 ? "" : $" ({string.Join(", ", readings.ByCause.Select(cause => $"{cause.Key} {cause.Value}"))})";
        return
        [
            $"Blind comparison, reference {comparison.Reference ?? Figures.Unknown}",
            .. PlainLines.Wrapped(
                "",
                $"Readings: {readings.Total} taken, {readings.Spoilt} spoilt{causes}, {readings.Missed} "
                    + $"missed{ReviewingWords.AndReplaced(readings.Replaced)}."
            ),
            $"Margin: {Figures.MarginDb(comparison.MarginDb)} dB, on impacts {Figures.MarginDb(comparison.ImpactMarginDb)} dB.",
            "Differences are code minus reference in dB: positive means louder.",
            .. comparison.IsUnfinished ? PlainLines.Wrapped("", ReviewingWords.Unfinished) : [],
            .. comparison.Lengthened > 0 ? PlainLines.Wrapped("", ReviewingWords.Lengthened(comparison.Lengthened)) : [],
        ];
    }

    private static IEnumerable<string> Main(Comparison comparison) =>
        comparison.MainSegments is not { } names
            ? []
            :
            [
                "",
                .. PlainLines.Wrapped("MAIN MEASURE: ", MainMeasureWords.Named(names)),
                .. comparison.Asked.SelectMany(pair => PairWords.OnMainSegments(pair, comparison.Readings.LeftOut > 0)),
                .. comparison.OnMainSegments.Count == 0 ? ["  nothing can be compared on them yet"] : Array.Empty<string>(),
                "",
                "Everything below is explored.",
            ];

    private static IEnumerable<string> Codes(Comparison comparison)
    {
        yield return "";
        yield return Row("code", "runs", "readings", "spoilt", "mean width of clean ranges");
        foreach (CodeReadings code in comparison.Codes)
        {
            string width = code.MeanWidthDb is null ? Figures.Unknown : $"{Figures.Db(code.MeanWidthDb)} dB";
            yield return Row(code.Code, $"{code.Runs}", $"{code.Readings}", $"{code.Spoilt}", width);
        }

        static string Row(string code, string runs, string readings, string spoilt, string width) =>
            PlainLines.Left(code, 16)
            + PlainLines.Right(runs, 6)
            + PlainLines.Right(readings, 10)
            + PlainLines.Right(spoilt, 8)
            + PlainLines.Right(width, 29);
    }

    private static IEnumerable<string> Pairs(Comparison comparison)
    {
        if (comparison.Pairs.Count == 0)
        {
            yield break;
        }

        yield return "";
        yield return "Every pair of codes, first minus second (Holm over the pairs of a class)";
        yield return Row("", "pair", "d", "95 % interval", "p", "p Holm");
        foreach (PairEstimate pair in comparison.Pairs)
        {
            yield return Row(
                Name(pair.Class),
                $"{pair.First} - {pair.Second}",
                Figures.Difference(pair.Overall),
                Figures.Interval95(pair.Overall),
                Figures.Probability(pair.Overall.P),
                Figures.Probability(pair.PHolm)
            );
        }

        static string Row(string name, string pair, string d, string interval, string p, string holm) =>
            PlainLines.Left($"  {name}", 18)
            + PlainLines.Left(pair, 12)
            + PlainLines.Right(d, 6)
            + PlainLines.Right(interval, 16)
            + PlainLines.Right(p, 14)
            + PlainLines.Right(holm, 14);
    }

    private static IEnumerable<string> Suspicious(Comparison comparison)
    {
        if (comparison.Suspicious.Count == 0)
        {
            yield break;
        }

        yield return "";
        foreach (string line in PlainLines.Wrapped("", ReviewingWords.LouderThanTheRest))
        {
            yield return line;
        }

        foreach (SuspiciousReading reading in comparison.Suspicious)
        {
            yield return $"  run {reading.Run}, {PlainLines.Left(reading.Segment, 40).TrimEnd()}: "
                + $"{Figures.Db(reading.StudentisedResidual)} standard deviations, p {Figures.Probability(reading.PBonferroni)}";
        }
    }

    private static IEnumerable<string> Remarks(Comparison comparison) =>
        comparison.Remarks.Count == 0 ? [] : ["", .. comparison.Remarks.SelectMany(remark => PlainLines.Wrapped("- ", remark))];
}

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
        List<string> lines =
        [
            "",
            $"{pair.Code} against {pair.Reference}",
            anySpoilt ? Row("", "clean readings", "all readings") : "  no reading is spoilt",
        ];
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
        return clean is null
            ? []
            :
            [
                $"{pair.Code} against {pair.Reference}",
                anySpoilt ? Row("", "clean readings", "all readings") : "  no reading is spoilt",
                .. Block(clean, anySpoilt ? Mixed(pair.WithSpoilt) : null),
            ];
    }

    private static ClassComparison? Mixed(ClassComparisons classes) =>
        classes.Steady is null ? classes.Impact
        : classes.Impact is null ? classes.Steady
        : classes.All;

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

    private static IEnumerable<string> Verdicts(ClassComparison clean, ClassComparison? all) =>
        clean.IsExplored ? PlainLines.Wrapped("    ", ReviewingWords.ExploredWithoutWord)
        : all is null || all.Verdict == clean.Verdict ? PlainLines.Wrapped("    verdict: ", clean.Verdict)
        : PlainLines
            .Wrapped("    verdict, clean readings: ", clean.Verdict)
            .Concat(PlainLines.Wrapped("    verdict, all readings: ", all.Verdict));

    private static string Row(string label, string clean, string all) =>
        (PlainLines.Left(label, LabelWidth) + PlainLines.Right(clean, CellWidth) + PlainLines.Right(all, CellWidth)).TrimEnd();
}
