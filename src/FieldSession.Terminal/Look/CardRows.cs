using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal.Look;

/// <summary>The answer card in rows of a terminal: the sentence, the words with their numbers, each difference on its margin.</summary>
internal static class CardRows
{
    private const int LabelColumns = 18;
    private const int NameColumns = 26;
    private const int MostPlotColumns = 61;

    /// <summary>The rows of a block; none where a card has no such block.</summary>
    public static IEnumerable<PageRow> Of(ReportBlock block, int columns) =>
        block switch
        {
            Headline headline => Wrapped.Lines(headline.Words, columns).Select(line => PageRow.Of(line, Ink.Strong)),
            Paragraph paragraph => Wrapped.Lines(paragraph.Words, columns).Select(line => PageRow.Of(line, Ink.Quiet)),
            LabelledLines lines => lines.Items.SelectMany(line => Labelled(line, columns)),
            IntervalChart { IsEmpty: false } chart => Plots(chart, columns),
            _ => [],
        };

    /// <summary>A line with its label, in a column of its own where there is room.</summary>
    public static IEnumerable<PageRow> Labelled(LabelledLine line, int columns)
    {
        int label = Math.Max(LabelColumns, Columns.Of(line.Label) + 1);
        string words = line.Word.Length == 0 ? line.Words : $"{line.Word}: {line.Words}";
        return Wrapped
            .Lines(words, Math.Max(label, columns - label))
            .Select((text, place) => PageRow.Of(Columns.Left(place == 0 ? line.Label : "", label), Ink.Quiet).And(text));
    }

    private static IEnumerable<PageRow> Plots(IntervalChart chart, int columns)
    {
        int plot = (Math.Min(MostPlotColumns, columns - NameColumns) - 1) | 1;
        Estimate[] all = [.. chart.Rows.Select(Drawn)];
        double margin = chart.Rows.Max(row => row.Margin ?? 0);
        double span = IntervalPlot.SpanDb(all, margin);
        string ends = Columns.Left($"< {chart.Ends.Below}", plot / 2) + Columns.Right($"{chart.Ends.Above} >", plot - plot / 2);
        return
        [
            PageRow.Of(Columns.Left("", NameColumns)).And(IntervalPlot.Scale(span, plot), Ink.Quiet),
            .. chart.Rows.Select(
                (row, place) =>
                    PageRow
                        .Of(Columns.Left(Columns.Cut(row.Label, NameColumns - 1), NameColumns))
                        .And(IntervalPlot.Of(all[place], row.Margin ?? margin, span, plot))
            ),
            PageRow.Of(Columns.Left("", NameColumns)).And(ends, Ink.Quiet),
        ];
    }

    private static Estimate Drawn(IntervalRow row) => new(row.Estimate, Lo95Db: row.Low95, Hi95Db: row.High95);
}

/// <summary>
/// The answer card by code alone, for the evening before the key is opened: no key is ever handed to it, and recordings speak only once
/// they are uncovered.
/// </summary>
internal static class BlindCard
{
    /// <summary>The rows; where there are recordings, below them the ring by segment, or that it is covered.</summary>
    public static ImmutableArray<PageRow> Rows(Study study, MeasuredDay day, Comparison comparison, EarFindings ear, int columns)
    {
        RingFinding? ring = RingFinding.Of(study);
        return
        [
            .. Blocks(study, day, comparison, ear, ring).SelectMany(block => CardRows.Of(block, columns)),
            .. RingWords
                .Of(study, ring)
                .SelectMany(line => line.Length <= columns ? [line] : Wrapped.Lines(line, columns))
                .Select(line => PageRow.Of(line)),
        ];
    }

    /// <summary>The lines for a shell: sentences and words without the plots, which say nothing to a screen reader.</summary>
    public static IEnumerable<string> Lines(Study study, MeasuredDay day, Comparison comparison, EarFindings ear, RingFinding? ring) =>
        Blocks(study, day, comparison, ear, ring)
            .Where(block => block is not IntervalChart)
            .SelectMany(block => CardRows.Of(block, PlainLines.Width))
            .Select(row => PlainLines.Ascii(row.Text));

    private static IReadOnlyList<ReportBlock> Blocks(
        Study study,
        MeasuredDay day,
        Comparison comparison,
        EarFindings ear,
        RingFinding? ring
    ) => AnswerSection.Of(new ReportDay(study, new SpecNames(null), day, comparison, ear) { Ring = ring }).Blocks;
}
