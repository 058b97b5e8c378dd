using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The running comparison as a table: a row for each code of an uncovered segment, one for a covered segment.</summary>
internal static class ComparisonBlock
{
    private const int CodeColumns = 5;
    private const int RangeColumns = 10;
    private const int DifferenceColumns = 6;
    private const int IntervalColumns = 13;
    private const int LeastPlotColumns = 15;
    private const int MostPlotColumns = 27;

    /// <summary>The table, in so many rows; where not all segments fit, those nearest to the current one are shown.</summary>
    /// <param name="segments">The running comparison.</param>
    /// <param name="current">Number of the segment that was passed last, or comes next.</param>
    /// <param name="plan">The plan, for the margins.</param>
    /// <param name="columns">Columns to fill.</param>
    /// <param name="rows">Rows to fill.</param>
    public static IEnumerable<PageRow> Rows(ImmutableArray<SegmentRow> segments, int current, Plan plan, int columns, int rows)
    {
        double spanDb = IntervalPlot.SpanDb(
            segments.SelectMany(s => s.Codes).Select(c => c.Difference).OfType<Estimate>(),
            Math.Max(plan.MarginDb, plan.ImpactMarginDb)
        );
        Widths widths = Widths.For(columns);
        ImmutableArray<ImmutableArray<PageRow>> blocks = [.. segments.Select(segment => Block(segment, plan, widths, spanDb))];
        return blocks.IsEmpty || rows < 2
            ? []
            : [Head(segments, widths, spanDb), .. Nearest(blocks, current - 1, rows - 1).SelectMany(block => block)];
    }

    private static PageRow Head(ImmutableArray<SegmentRow> segments, Widths widths, double spanDb)
    {
        string reference = segments.FirstOrDefault(s => !s.IsCovered)?.Codes[0].Code.Digits is { } code ? $"- {code}" : "";
        string text =
            Columns.Left(DrivingScreenWords.ComparisonSoFar, widths.Name)
            + Columns.Left("code", CodeColumns)
            + Columns.Left("low-high", RangeColumns)
            + Columns.Right(reference, DifferenceColumns - 1)
            + " "
            + Columns.Left(" 95 %", widths.Interval);
        return PageRow.Of(text + (widths.Plot > 0 ? IntervalPlot.Scale(spanDb, widths.Plot) : ""), Ink.Quiet);
    }

    private static ImmutableArray<PageRow> Block(SegmentRow segment, Plan plan, Widths widths, double spanDb)
    {
        string name = Columns.Left($"{segment.Segment.Number, 2} {segment.Segment.Name}", widths.Name - 1) + " ";
        if (segment.IsCovered)
        {
            return [PageRow.Of(name + segment.WhyCovered, Ink.Quiet)];
        }

        double marginDb = segment.Segment.Kind.IsImpact ? plan.ImpactMarginDb : plan.MarginDb;
        return
        [
            .. segment.Codes.Select(
                (code, place) =>
                    PageRow
                        .Of(place == 0 ? name : Columns.Left("", widths.Name))
                        .And(Columns.Left($"{code.Code}", CodeColumns) + Columns.Left(Range(code), RangeColumns))
                        .And(Difference(code.Difference, marginDb, widths, spanDb))
            ),
        ];
    }

    private static PageRow Difference(Estimate? difference, double marginDb, Widths widths, double spanDb)
    {
        if (difference is null)
        {
            return PageRow.Blank;
        }

        string interval = $" {Figures.Short95(difference) ?? (difference.HasNoUsableInterval ? "no usable" : "not yet")}";
        return PageRow
            .Of(Columns.Right($"{difference.DifferenceDb:+0.0;-0.0;0.0}", DifferenceColumns - 1) + " ", Ink.Strong)
            .And(Columns.Left(interval, widths.Interval))
            .And(widths.Plot > 0 ? IntervalPlot.Of(difference, marginDb, spanDb, widths.Plot) : "");
    }

    private static string Range(CodeOnSegment code) =>
        code switch
        {
            { LowDb: { } low, HighDb: { } high } when low < high => $"{low:0.#}-{high:0.#}",
            { LowDb: { } one } => $"{one:0.#}",
            _ => "none clean",
        };

    // Grows from the current segment upwards and downwards, upwards first: there is what has just been uncovered.
    private static ImmutableArray<ImmutableArray<PageRow>> Nearest(ImmutableArray<ImmutableArray<PageRow>> blocks, int current, int rows)
    {
        int from = Math.Clamp(current, 0, blocks.Length - 1);
        int to = from;
        int left = rows - blocks[from].Length;
        bool grown = true;
        while (grown)
        {
            grown = false;
            if (from > 0 && blocks[from - 1].Length <= left)
            {
                left -= blocks[--from].Length;
                grown = true;
            }

            if (to < blocks.Length - 1 && blocks[to + 1].Length <= left)
            {
                left -= blocks[++to].Length;
                grown = true;
            }
        }

        return blocks[from..(to + 1)];
    }

    private readonly record struct Widths(int Name, int Interval, int Plot)
    {
        public static Widths For(int columns)
        {
            int name = Math.Clamp(columns - CodeColumns - RangeColumns - DifferenceColumns - IntervalColumns - LeastPlotColumns, 14, 24);
            int plot = columns - name - CodeColumns - RangeColumns - DifferenceColumns - IntervalColumns;
            plot = plot < LeastPlotColumns ? 0 : Math.Min(MostPlotColumns, plot);
            return new Widths(name, IntervalColumns, plot % 2 == 0 && plot > 0 ? plot - 1 : plot);
        }
    }
}
