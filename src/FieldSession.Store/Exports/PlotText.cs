using System.Globalization;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports;

/// <summary>An interval plot in plain letters, for a report that is read as text: <c>[</c> and <c>]</c> the margin, <c>|</c> zero, <c>---o---</c> the interval.</summary>
internal static class PlotText
{
    private const int HalfWidth = 30;
    private const int LongestName = 16;

    /// <summary>The lines of the plot, the scale below.</summary>
    public static IReadOnlyList<string> Of(IntervalPlot plot)
    {
        double reach = plot.Intervals.SelectMany(one => new[] { Math.Abs(one.Low), Math.Abs(one.High) }).Append(plot.Margin).Max() * 1.1;
        int Column(double value) => HalfWidth + (int)Math.Round(value / reach * HalfWidth);
        string Number(double value) => value.ToString("+0.0;-0.0;0", CultureInfo.InvariantCulture);
        string scale = Number(-reach).PadRight(HalfWidth) + "0" + Number(reach).PadLeft(HalfWidth);
        return
        [
            .. plot.Intervals.Select(one => Name(one.Name) + Line(one, plot.Margin, Column)),
            $"{Name("")}{scale} {plot.Unit}; [ ] margin {Number(plot.Margin)[1..]}",
        ];
    }

    private static string Line(PlottedInterval one, double margin, Func<double, int> column)
    {
        char[] cells = new string(' ', (2 * HalfWidth) + 1).ToCharArray();
        (cells[column(-margin)], cells[HalfWidth], cells[column(margin)]) = ('[', '|', ']');
        for (int at = column(one.Low); at <= column(one.High); at++)
        {
            cells[at] = cells[at] == ' ' ? '-' : cells[at];
        }

        cells[column(one.Value)] = 'o';
        return new string(cells).TrimEnd();
    }

    private static string Name(string name) => (name.Length > LongestName ? name[..LongestName] : name).PadRight(LongestName + 1);
}
