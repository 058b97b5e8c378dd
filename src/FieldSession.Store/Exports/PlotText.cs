using System.Globalization;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports;

/// <summary>An interval plot in plain letters, for a report that is read as text: <c>[</c> and <c>]</c> the margin, <c>|</c> zero, <c>---o---</c> the interval.</summary>
internal static class PlotText
{
    private const int HalfWidth = 30;
    private const int LongestName = 26;

    /// <summary>The lines of the plot, the scale below.</summary>
    public static IReadOnlyList<string> Of(IntervalChart chart)
    {
        double reach = chart.Rows.SelectMany(Reaches).Max() * 1.1;
        int Column(double value) => HalfWidth + (int)Math.Round(value / reach * HalfWidth);
        string Number(double value) => value.ToString("+0.0;-0.0;0", CultureInfo.InvariantCulture);
        string scale = Number(-reach).PadRight(HalfWidth) + "0" + Number(reach).PadLeft(HalfWidth);
        return
        [
            .. chart.Rows.Select(row => Name(row.Label) + Line(row, Column)),
            $"{Name("")}{scale} {chart.Unit}",
            $"{Name("")}{$"< {chart.Ends.Below}".PadRight(HalfWidth)}{$"{chart.Ends.Above} >".PadLeft(HalfWidth + 1)}",
            $"{Name("")}o difference{(chart.HasIntervals ? ", --- 95 % interval" : "")}{(chart.HasMargins ? ", [ ] the margin that does not matter" : "")}",
        ];
    }

    private static IEnumerable<double> Reaches(IntervalRow row) =>
        new[] { row.Estimate, row.Low95 ?? 0, row.High95 ?? 0, row.Margin ?? 0, double.Epsilon }.Select(Math.Abs);

    private static string Line(IntervalRow row, Func<double, int> column)
    {
        char[] cells = new string(' ', (2 * HalfWidth) + 1).ToCharArray();
        if (row.Margin is { } margin)
        {
            (cells[column(-margin)], cells[column(margin)]) = ('[', ']');
        }

        cells[HalfWidth] = '|';
        for (int at = column(row.Low95 ?? row.Estimate); at <= column(row.High95 ?? row.Estimate); at++)
        {
            cells[at] = cells[at] == ' ' ? '-' : cells[at];
        }

        cells[column(row.Estimate)] = 'o';
        return new string(cells).TrimEnd();
    }

    private static string Name(string name) => ShortText.Of(name, LongestName).PadRight(LongestName + 1);
}
