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

    private static IEnumerable<string> Block(ClassComparison clean, ClassComparison? all)
    {
        string Line(string label, Func<ClassComparison, string> cell) => Row($"    {label}", cell(clean), all is null ? "" : cell(all));
        return
        [
            $"  {ComparisonWords.Name(clean.Class)}",
            Line("difference", one => Figures.Difference(one.Overall)),
            Line("95 % interval", one => Figures.Interval95(one.Overall)),
            Line("90 % interval", one => Figures.Interval90(one.Overall)),
            Line("standard error, df", one => one.Overall?.Df is { } df ? $"{Figures.Error(one.Overall)}, {Figures.Db(df)}" : Figures.Unknown),
            Line("p of no difference", one => Figures.Probability(one.Overall?.P)),
            Line("p of beyond the margin", one => Figures.Probability(one.Overall?.PTost)),
            Line("could have shown (80 %)", one => one.Mdd80Db is null ? Figures.Unknown : $"{Figures.Db(one.Mdd80Db)} dB"),
            Line("runs, segments", one => $"{one.RunsCounted}, {one.SegmentsCompared}"),
            Line("run to run, reading SD", one => $"{Figures.FineDb(one.SRunUsedDb)}, {Figures.FineDb(one.SEDb)}"),
            Line("drift per hour", Drift),
            Line("more runs a code", MoreRuns),
            .. Extras(clean, all),
            .. Verdicts(clean, all),
            .. ExtraWords.Of(clean),
            .. clean.Remarks.SelectMany(remark => PlainLines.Wrapped("    - ", remark)),
        ];
    }

    /// <summary>Lines that only some days have.</summary>
    private static IEnumerable<string> Extras(ClassComparison clean, ClassComparison? all)
    {
        string Line(string label, Func<ClassComparison, string> cell) => Row($"    {label}", cell(clean), all is null ? "" : cell(all));
        if (clean.OrderTest is not null)
        {
            yield return Line("p of the driven order", one => Figures.Probability(one.OrderTest?.P));
        }

        if (clean.RouteEnergy is not null)
        {
            yield return Line("level of exposure, d", one => Figures.Difference(one.RouteEnergy?.Overall));
        }
    }

    private static IEnumerable<string> Verdicts(ClassComparison clean, ClassComparison? all) => all is null || all.Verdict == clean.Verdict
        ? PlainLines.Wrapped("    verdict: ", clean.Verdict)
        : PlainLines.Wrapped("    verdict, clean readings: ", clean.Verdict).Concat(PlainLines.Wrapped("    verdict, all readings: ", all.Verdict));

    private static string Drift(ClassComparison one) => one.Drift switch
    {
        null => Figures.Unknown,
        { StandardErrorDbPerHour: null } => Figures.SignedFineDb(one.Drift.BDbPerHour),
        { StandardErrorDbPerHour: { } error } => $"{Figures.SignedFineDb(one.Drift.BDbPerHour)} (SE {Figures.FineDb(error)})",
    };

    /// <summary>Unknown and 'not within 10' differ: without an interval nothing can be said at all.</summary>
    private static string MoreRuns(ClassComparison one) => one.Overall?.StandardErrorDb is null
        ? Figures.Unknown
        : $"{Figures.Count(one.MoreRunsAsSeen, "over 10")}, cautious {Figures.Count(one.MoreRunsCautious, "over 10")}";

    private static string Row(string label, string clean, string all) =>
        (PlainLines.Left(label, LabelWidth) + PlainLines.Right(clean, CellWidth) + PlainLines.Right(all, CellWidth)).TrimEnd();
}
