using System.Globalization;
using FieldSession.Reporting;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FieldSession.Store.Exports.Html;

/// <summary>Draws differences with their intervals: a row each, zero as a line, the margin as a band, marked rows filled.</summary>
internal static class IntervalDrawing
{
    private const double RowHeight = 30;
    private const double TallRowHeight = 46;
    private const double AxisHeight = 66;
    private const double CapHeight = 0.16;

    /// <summary>The plot as SVG.</summary>
    /// <param name="chart">What to draw.</param>
    /// <param name="width">Width, CSS pixels.</param>
    public static string Of(IntervalChart chart, double width)
    {
        PlotModel plot = Drawing.Plot();
        bool isNarrow = Drawing.IsNarrow(width);
        plot.Axes.Add(
            Names(
                AxisPosition.Left,
                chart.Rows.Select(row => isNarrow ? $"{ShortText.Of(row.Label, 21)}\n{Numbers(row)}" : ShortText.Of(row.Label, 34))
            )
        );
        if (!isNarrow)
        {
            plot.Axes.Add(Names(AxisPosition.Right, chart.Rows.Select(Numbers)));
        }

        plot.Axes.Add(Scale(chart));
        for (int row = 0; row < chart.Rows.Count; row++)
        {
            if (chart.Rows[row].Margin is { } margin)
            {
                plot.Annotations.Add(Band(row, margin));
            }
        }

        plot.Annotations.Add(
            new LineAnnotation
            {
                Type = LineAnnotationType.Vertical,
                X = 0,
                Color = Drawing.Ink,
                StrokeThickness = 1,
                LineStyle = LineStyle.Solid,
                Layer = AnnotationLayer.BelowSeries,
            }
        );
        plot.Series.Add(Intervals(chart));
        plot.Series.Add(Estimates(chart, marked: false));
        plot.Series.Add(Estimates(chart, marked: true));
        return Drawing.Drawn(plot, width, chart.Rows.Count * (isNarrow ? TallRowHeight : RowHeight) + AxisHeight);
    }

    private static string Numbers(IntervalRow row) =>
        row.ShownInterval.Length == 0 ? row.Shown : $"{row.Shown.Split(' ')[0]} ({row.ShownInterval})";

    private static CategoryAxis Names(AxisPosition position, IEnumerable<string> names)
    {
        CategoryAxis axis = new()
        {
            Position = position,
            Key = position.ToString(),
            StartPosition = 1,
            EndPosition = 0,
            MajorTickSize = 0,
            MinorTickSize = 0,
            GapWidth = 0,
            AxislineStyle = LineStyle.None,
            TicklineColor = OxyColors.Transparent,
        };
        axis.Labels.AddRange(names);
        return axis;
    }

    private static LinearAxis Scale(IntervalChart chart)
    {
        double reach = chart.Rows.SelectMany(Reaches).DefaultIfEmpty(1).Max() * 1.08;
        LinearAxis axis = Drawing.Axis(AxisPosition.Bottom, PageWords.Directions(chart));
        axis.Minimum = -reach;
        axis.Maximum = reach;
        axis.LabelFormatter = value => value.ToString("+0.##;\u22120.##;0", CultureInfo.InvariantCulture);
        return axis;
    }

    private static IEnumerable<double> Reaches(IntervalRow row) =>
        new[] { row.Estimate, row.Low95 ?? 0, row.High95 ?? 0, row.Margin ?? 0 }.Select(Math.Abs);

    private static RectangleAnnotation Band(int row, double margin) =>
        new()
        {
            MinimumX = -margin,
            MaximumX = margin,
            MinimumY = row - 0.5,
            MaximumY = row + 0.5,
            Fill = Drawing.Band,
            StrokeThickness = 0,
            Layer = AnnotationLayer.BelowAxes,
        };

    private static LineSeries Intervals(IntervalChart chart)
    {
        LineSeries lines = new() { Color = Drawing.Inks[0], StrokeThickness = 2 };
        for (int row = 0; row < chart.Rows.Count; row++)
        {
            if (chart.Rows[row] is { Low95: { } low, High95: { } high })
            {
                Line(lines, low, row, high, row);
                Line(lines, low, row - CapHeight, low, row + CapHeight);
                Line(lines, high, row - CapHeight, high, row + CapHeight);
            }
        }

        return lines;
    }

    private static void Line(LineSeries lines, double fromX, double fromY, double toX, double toY) =>
        lines.Points.AddRange([new DataPoint(fromX, fromY), new DataPoint(toX, toY), DataPoint.Undefined]);

    private static ScatterSeries Estimates(IntervalChart chart, bool marked)
    {
        ScatterSeries estimates = new()
        {
            MarkerType = MarkerType.Circle,
            MarkerSize = 5.5,
            MarkerStroke = Drawing.Inks[0],
            MarkerStrokeThickness = 2,
            MarkerFill = marked ? Drawing.Inks[0] : OxyColors.White,
        };
        estimates.Points.AddRange(
            chart.Rows.Index().Where(row => row.Item.Marked == marked).Select(row => new ScatterPoint(row.Item.Estimate, row.Index))
        );
        return estimates;
    }
}
