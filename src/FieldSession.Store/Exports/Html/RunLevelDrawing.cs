using System.Globalization;
using FieldSession.Reporting;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// Draws the mean level of every run over the day: a mark and an ink a spec, its drift as a line, the run's number beside it.
/// </summary>
internal static class RunLevelDrawing
{
    /// <summary>Height of the plot, CSS pixels.</summary>
    public const double Height = 300;

    // A scale that shows less than this would make mountains of tenths.
    private const double SmallestSpanDb = 2;

    /// <summary>The plot as SVG.</summary>
    /// <param name="chart">What to draw.</param>
    /// <param name="width">Width, CSS pixels.</param>
    public static string Of(RunLevelChart chart, double width)
    {
        PlotModel plot = Drawing.Plot();
        plot.Axes.Add(Places(chart, width));
        plot.Axes.Add(Levels(chart));
        plot.Legends.Add(Drawing.Legend(width));
        string[] names = [.. chart.Points.Select(point => point.Name).Distinct()];
        for (int spec = 0; spec < names.Length; spec++)
        {
            Draw(plot, chart, names[spec], spec);
        }

        return Drawing.Drawn(plot, width, Height);
    }

    private static void Draw(PlotModel plot, RunLevelChart chart, string name, int spec)
    {
        OxyColor ink = Drawing.Inks[spec % Drawing.Inks.Length];
        foreach (DriftLine drift in chart.Drifts.Where(line => line.Name == name))
        {
            LineSeries line = new()
            {
                Color = ink,
                StrokeThickness = 1.5,
                LineStyle = LineStyle.Dash,
            };
            line.Points.AddRange([new DataPoint(drift.FromAt, drift.FromDb), new DataPoint(drift.ToAt, drift.ToDb)]);
            plot.Series.Add(line);
        }

        ScatterSeries marks = new()
        {
            Title = ShortText.Of(name, 34),
            MarkerType = Drawing.Marks[spec % Drawing.Marks.Length],
            MarkerSize = 5.5,
            MarkerStroke = ink,
            MarkerStrokeThickness = 2,
            MarkerFill = spec == 0 ? OxyColors.White : ink,
        };
        foreach (RunLevelPoint point in chart.Points.Where(point => point.Name == name))
        {
            marks.Points.Add(new ScatterPoint(point.At, point.LevelDb));
            plot.Annotations.Add(NumberOf(point, ink));
        }

        plot.Series.Add(marks);
    }

    private static TextAnnotation NumberOf(RunLevelPoint point, OxyColor ink) =>
        new()
        {
            Text = point.Run.ToString(CultureInfo.InvariantCulture),
            TextPosition = new DataPoint(point.At, point.LevelDb),
            Offset = new ScreenVector(0, -9),
            TextHorizontalAlignment = HorizontalAlignment.Center,
            TextVerticalAlignment = VerticalAlignment.Bottom,
            TextColor = ink,
            FontSize = Drawing.LetterSize - 1,
            StrokeThickness = 0,
            Background = OxyColors.Undefined,
        };

    private static LinearAxis Places(RunLevelChart chart, double width)
    {
        double first = chart.Points.Min(point => point.At);
        double last = chart.Points.Max(point => point.At);
        double air = Math.Max((last - first) * 0.06, chart.OverTime ? 0.1 : 0.5);
        LinearAxis axis = Drawing.Axis(AxisPosition.Bottom, chart.OverTime ? PageWords.MiddleOfRunAxis : "run");
        axis.Minimum = first - air;
        axis.Maximum = last + air;
        axis.IntervalLength = Drawing.IsNarrow(width) ? 70 : 90;
        axis.MinimumMajorStep = chart.OverTime ? 0.25 : 1;
        axis.LabelFormatter = chart.OverTime ? TimeOfDay : value => value.ToString("0", CultureInfo.InvariantCulture);
        return axis;
    }

    private static string TimeOfDay(double hours)
    {
        int minutes = (int)Math.Round(hours * 60);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60 % 24:00}:{minutes % 60:00}");
    }

    private static LinearAxis Levels(RunLevelChart chart)
    {
        double low = chart.Points.Min(point => point.LevelDb);
        double high = chart.Points.Max(point => point.LevelDb);
        double half = Math.Max((high - low) * 0.62, SmallestSpanDb / 2);
        LinearAxis axis = Drawing.Axis(AxisPosition.Left, PageWords.MeanLevelAxis);
        axis.Minimum = (low + high) / 2 - half;
        axis.Maximum = (low + high) / 2 + half;
        axis.IntervalLength = 40;
        axis.LabelFormatter = value => value.ToString("0.0", CultureInfo.InvariantCulture);
        return axis;
    }
}
