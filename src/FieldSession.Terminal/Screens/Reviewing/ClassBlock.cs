using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>One code against the reference over one class, clean readings and all readings side by side.</summary>
internal static class ClassBlock
{
    private const int LabelColumns = 24;
    private const int MostCellColumns = 26;
    private const int ShortFigures = 2;

    /// <summary>The rows.</summary>
    /// <param name="sight">What the page is made from.</param>
    /// <param name="pair">The code and the reference.</param>
    /// <param name="measureClass">The class; null: all segments.</param>
    /// <param name="whole">Whether every figure is told, or the difference and its interval only.</param>
    /// <param name="columns">Columns to fill.</param>
    public static IEnumerable<PageRow> Rows(ReviewSight sight, CodeComparison pair, MeasureClass? measureClass, bool whole, int columns)
    {
        if (pair.Classes.Of(measureClass) is not { } clean || pair.WithSpoilt.Of(measureClass) is not { } all)
        {
            return [];
        }

        int cell = Math.Min(MostCellColumns, (columns - LabelColumns) / 2);
        PageRow Row(string label, string left, string right, Ink ink = Ink.Plain) =>
            PageRow.Of(Columns.Left(label, LabelColumns)).And(Columns.Left(left, cell), ink).And(Columns.Left(right, cell), ink);
        ImmutableArray<ClassFigure> figures = whole ? ClassFigures.Of(clean) : ClassFigures.Of(clean)[..ShortFigures];
        int plot = (cell - 4) | 1;
        double marginDb = sight.MarginDb(measureClass);
        return
        [
            Row($"{pair.Code} - {pair.Reference}", "clean readings", "all readings", Ink.Quiet),
            .. figures.Select((figure, place) => Row(figure.Label, figure.Cell(clean), figure.Cell(all), place == 0 ? Ink.Strong : Ink.Plain)),
            Row($"margin {Figures.MarginDb(marginDb)} dB", Plot(clean, marginDb, sight.SpanDb, plot), Plot(all, marginDb, sight.SpanDb, plot)),
            .. whole ? [Row("", IntervalPlot.Scale(sight.SpanDb, plot), IntervalPlot.Scale(sight.SpanDb, plot), Ink.Quiet)] : Array.Empty<PageRow>(),
            .. clean.IsExplored ? [] : Verdicts(clean, all, columns),
        ];
    }

    private static string Plot(ClassComparison one, double marginDb, double spanDb, int columns) =>
        one.Overall is { } overall ? IntervalPlot.Of(overall, marginDb, spanDb, columns) : "";

    private static IEnumerable<PageRow> Verdicts(ClassComparison clean, ClassComparison all, int columns) => all.Verdict == clean.Verdict
        ? Verdict("verdict", clean.Verdict, columns)
        : [.. Verdict("verdict, clean", clean.Verdict, columns), .. Verdict("verdict, all", all.Verdict, columns)];

    private static IEnumerable<PageRow> Verdict(string label, string words, int columns) => Wrapped
        .Lines(words, columns - LabelColumns)
        .Select((line, place) => PageRow.Of(Columns.Left(place == 0 ? label : "", LabelColumns)).And(line, Ink.Strong));
}
