using System.Globalization;
using FieldSession.Reporting;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FieldSession.Store.Exports.Html;

/// <summary>Draws one mean spectrum a spec: an ink, a dash and a mark each, the ring band shaded.</summary>
internal static class SpectrumDrawing
{
    private const double Height = 300;
    private const int MarkEvery = 12;
    private const byte RibbonOpacity = 40;

    private static LineStyle[] Dashes => [LineStyle.Solid, LineStyle.Dash, LineStyle.DashDot, LineStyle.Dot];

    /// <summary>The plot as SVG.</summary>
    /// <param name="chart">What to draw.</param>
    /// <param name="width">Width, CSS pixels.</param>
    public static string Of(SpectrumChart chart, double width)
    {
        PlotModel plot = Drawing.Plot();
        plot.Axes.Add(Frequencies(chart));
        LinearAxis levels = Drawing.Axis(AxisPosition.Left, PageWords.DensityAxis);
        levels.LabelFormatter = Whole;
        plot.Axes.Add(levels);
        plot.Legends.Add(Drawing.Legend(width));
        plot.Annotations.Add(
            new RectangleAnnotation
            {
                MinimumX = chart.Band.LowerHz,
                MaximumX = chart.Band.UpperHz,
                Fill = Drawing.Band,
                Layer = AnnotationLayer.BelowAxes,
            }
        );
        foreach ((int spec, SpectrumLine line) in chart.Lines.Index())
        {
            DrawRibbon(plot, chart, line, spec);
        }

        foreach ((int spec, SpectrumLine line) in chart.Lines.Index())
        {
            Draw(plot, chart, line, spec);
        }

        return Drawing.Drawn(plot, width, Height);
    }

    private static void DrawRibbon(PlotModel plot, SpectrumChart chart, SpectrumLine line, int spec)
    {
        AreaSeries ribbon = new()
        {
            Fill = OxyColor.FromAColor(RibbonOpacity, Drawing.Inks[spec % Drawing.Inks.Length]),
            Color = OxyColors.Transparent,
            Color2 = OxyColors.Transparent,
        };
        foreach ((int i, double half) in line.HalfWidthsDb.Index())
        {
            double hz = chart.FromHz + (i * chart.StepHz);
            ribbon.Points.Add(new DataPoint(hz, line.LevelsDb[i] + half));
            ribbon.Points2.Add(new DataPoint(hz, line.LevelsDb[i] - half));
        }

        plot.Series.Add(ribbon);
    }

    private static void Draw(PlotModel plot, SpectrumChart chart, SpectrumLine line, int spec)
    {
        OxyColor ink = Drawing.Inks[spec % Drawing.Inks.Length];
        LineSeries drawn = new()
        {
            Title = ShortText.Of(line.Name, 34),
            Color = ink,
            StrokeThickness = 1.5,
            LineStyle = Dashes[spec % Dashes.Length],
        };
        ScatterSeries marks = new()
        {
            MarkerType = Drawing.Marks[spec % Drawing.Marks.Length],
            MarkerSize = 4,
            MarkerFill = ink,
        };
        foreach ((int i, double level) in line.LevelsDb.Index())
        {
            double hz = chart.FromHz + (i * chart.StepHz);
            drawn.Points.Add(new DataPoint(hz, level));
            if (i % MarkEvery == spec * 3 % MarkEvery)
            {
                marks.Points.Add(new ScatterPoint(hz, level));
            }
        }

        plot.Series.Add(drawn);
        plot.Series.Add(marks);
    }

    private static LinearAxis Frequencies(SpectrumChart chart)
    {
        LinearAxis axis = Drawing.Axis(AxisPosition.Bottom, PageWords.FrequencyAxis);
        axis.Minimum = chart.FromHz;
        axis.Maximum = chart.FromHz + ((chart.Lines.Max(line => line.LevelsDb.Length) - 1) * chart.StepHz);
        axis.MajorStep = 50;
        axis.LabelFormatter = Whole;
        return axis;
    }

    private static string Whole(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
