using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>Where the codes differ: the tables of kinds and of segments, each with little plots against the margin band.</summary>
internal static class SegmentBlock
{
    /// <summary>What is before the chosen segment.</summary>
    public const string Mark = "> ";

    private const int CodeColumns = 4;
    private const int CountColumns = 5;
    private const int DifferenceColumns = 6;
    private const int IntervalColumns = 14;
    private const int AllColumns = 6;
    private const int LeastPlotColumns = 13;
    private const int MostPlotColumns = 41;
    private const int LeastNameColumns = 16;
    private const int MostNameColumns = 30;

    /// <summary>The table of kinds.</summary>
    public static IEnumerable<PageRow> Kinds(ReviewSight sight, int columns)
    {
        Widths widths = Widths.For(columns);
        yield return Head("kind, segments", widths, sight.SpanDb);
        foreach (CodeComparison pair in sight.Comparison.Comparisons)
        {
            foreach (MeasureClass measureClass in Classes)
            {
                foreach (KindEstimate kind in pair.Classes.Of(measureClass)?.Kinds ?? [])
                {
                    Estimate? all = pair.WithSpoilt.Of(measureClass)?.Kinds.FirstOrDefault(k => k.Kind == kind.Kind)?.Estimate;
                    yield return Row($"  {kind.Kind}", pair.Code, $"{kind.Segments}", kind.Estimate, all, sight.MarginDb(measureClass), sight.SpanDb, widths);
                }
            }
        }
    }

    /// <summary>The table of segments; the chosen one is marked.</summary>
    public static IEnumerable<PageRow> Segments(ReviewSight sight, int columns)
    {
        Widths widths = Widths.For(columns);
        SegmentCounts counts = SegmentCounts.Of(sight.Day);
        yield return Head("segment", widths, sight.SpanDb);
        foreach (Segment segment in sight.Plan.Route)
        {
            string name = $"{(segment.Number == sight.Segment ? Mark : "  ")}{segment.Number,2} {segment.Name}";
            MeasureClass measureClass = StudyReadings.ClassOf(segment);
            foreach (CodeComparison pair in sight.Comparison.Comparisons)
            {
                string n = $"{counts.Clean(segment.Name, pair.Code)}/{counts.Clean(segment.Name, pair.Reference)}";
                yield return Row(
                    name, pair.Code, n, On(segment, pair.Classes), On(segment, pair.WithSpoilt), sight.MarginDb(measureClass), sight.SpanDb, widths);
                name = "";
            }
        }
    }

    /// <summary>The difference on a segment; null: it is not compared.</summary>
    public static Estimate? On(Segment segment, ClassComparisons classes) =>
        classes.Of(StudyReadings.ClassOf(segment))?.Segments.FirstOrDefault(s => s.Segment == segment.Name)?.Estimate;

    private static MeasureClass[] Classes => [MeasureClass.Steady, MeasureClass.Impact];

    private static PageRow Head(string name, Widths widths, double spanDb) => PageRow.Of(
        Columns.Left($"  {name}", widths.Name) + Columns.Left("code", CodeColumns) + Columns.Right("n", CountColumns)
        + Columns.Right("clean", DifferenceColumns) + Columns.Left(widths.Interval > 0 ? "  95 %" : "", widths.Interval)
        + " " + Columns.Left(IntervalPlot.Scale(spanDb, widths.Plot), widths.Plot) + Columns.Right("all", AllColumns),
        Ink.Quiet);

    private static PageRow Row(string name, string code, string n, Estimate? clean, Estimate? all, double marginDb, double spanDb, Widths widths)
    {
        string interval = $"  {Figures.Short95(clean) ?? (clean is { HasNoUsableInterval: true } ? "no usable" : "not known")}";
        return PageRow
            .Of(Columns.Left(name, widths.Name - 1) + " ", name.StartsWith(Mark, StringComparison.Ordinal) ? Ink.Strong : Ink.Plain)
            .And(Columns.Left(code, CodeColumns) + Columns.Right(n, CountColumns))
            .And(Columns.Right(clean is null ? "-" : $"{clean.DifferenceDb:+0.0;-0.0;0.0}", DifferenceColumns), Ink.Strong)
            .And(Columns.Left(interval, widths.Interval) + " ")
            .And(clean is null ? new string(' ', widths.Plot) : IntervalPlot.Of(clean, marginDb, spanDb, widths.Plot))
            .And(Columns.Right(all is null ? "-" : $"{all.DifferenceDb:+0.0;-0.0;0.0}", AllColumns));
    }

    // Where it is narrow the numbers of the interval go and the plot stays: they are on the segment's own page.
    private readonly record struct Widths(int Name, int Interval, int Plot)
    {
        public static Widths For(int columns)
        {
            int left = columns - CodeColumns - CountColumns - DifferenceColumns - AllColumns - 1;
            int interval = left >= LeastNameColumns + LeastPlotColumns + IntervalColumns ? IntervalColumns : 0;
            int name = Math.Clamp((left - interval) / 2, LeastNameColumns, MostNameColumns);
            int plot = Math.Clamp(left - interval - name, LeastPlotColumns, MostPlotColumns);
            return new Widths(name, interval, plot % 2 == 0 ? plot - 1 : plot);
        }
    }
}
