using System.Globalization;
using System.Text;
using FieldSession.Reporting;
using FieldSession.Reviewing;

namespace FieldSession.Store.Exports;

/// <summary>
/// The report as Markdown (CommonMark with pipe tables). Every text of the crew is escaped: nothing in a note becomes markup.
/// </summary>
public static class ReportMarkdown
{
    private const string Marks = "\\`*_{}[]()<>#+-!|~=$&";

    /// <summary>The whole text, lines ended by LF.</summary>
    public static string Of(Report report)
    {
        ArgumentNullException.ThrowIfNull(report);
        StringBuilder text = new();
        text.Append("# ").Append(Escaped(report.Title)).Append('\n');
        foreach (ReportSection section in report.Sections)
        {
            text.Append("\n## ").Append(Escaped(section.Title)).Append('\n');
            foreach (ReportBlock block in section.Blocks)
            {
                Append(text, block);
            }
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, ReportBlock block)
    {
        switch (block)
        {
            case ReportChart { IsEmpty: false } chart:
                Append(text, chart);
                break;
            case ReadingsMap { Rows.Count: > 0 } map:
                Append(text, map);
                break;
            case ReportTable { Rows.Count: > 0 } table:
                Append(text, table);
                break;
            default:
                text.Append(Words(block));
                break;
        }
    }

    private static string Words(ReportBlock block) =>
        block switch
        {
            Subheading heading => $"\n### {Escaped(heading.Words)}\n",
            Headline headline => $"\n**{Escaped(headline.Words)}**\n",
            Paragraph paragraph => $"\n{Escaped(paragraph.Words)}\n",
            Points points => Listed(points.Items),
            LabelledLines lines => Listed(lines.Items.Select(line => line.ToString())),
            _ => "",
        };

    private static string Listed(IEnumerable<string> items) =>
        string.Concat(items.Select((item, place) => $"{(place == 0 ? "\n" : "")}- {Escaped(item)}\n"));

    private static void Append(StringBuilder text, ReportChart chart)
    {
        text.Append('\n').Append(Escaped(chart.Words)).Append('\n');
        if (chart is IntervalChart intervals)
        {
            // a code block: its letters stay as they are, and hold no markup
            text.Append("\n```text\n").AppendJoin('\n', PlotText.Of(intervals)).Append("\n```\n");
        }
    }

    private static void Append(StringBuilder text, ReportTable table)
    {
        text.Append('\n');
        Row(text, table.Columns.Select(Escaped));
        Row(text, table.Columns.Select(_ => "---"));
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            Row(text, row.Select(Escaped));
        }
    }

    private static void Append(StringBuilder text, ReadingsMap map)
    {
        text.Append('\n');
        Row(text, map.Columns.Select(Escaped));
        Row(text, map.Columns.Select(_ => "---"));
        foreach (MapRow row in map.Rows)
        {
            Row(text, row.Cells.Select(Cell).Prepend(Escaped(row.Name)));
        }
    }

    private static string Cell(MapCell cell) =>
        string.Join(
            ' ',
            new[] { cell.IsOut ? $"~~{Escaped(cell.Levels)}~~" : Escaped(cell.Levels), Escaped(cell.Mark) }.Where(part => part.Length > 0)
        );

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    // Marks that only matter at a line's start (- + =) or between letters (_ ( ) -) are left readable where they are harmless.
    private static string Escaped(string crude)
    {
        string words = VisibleText.Of(crude);
        StringBuilder escaped = new(words.Length + 8);
        for (int i = 0; i < words.Length; i++)
        {
            char c = words[i];
            if (Marks.Contains(c, StringComparison.Ordinal) && !IsHarmless(words, i))
            {
                escaped.Append('\\');
            }

            escaped.Append(c);
        }

        return escaped.ToString();
    }

    private static bool IsHarmless(string words, int at) =>
        words[at] switch
        {
            '(' or ')' => !words.Contains('[', StringComparison.Ordinal),
            '-' or '+' or '=' or '!' or '#' => at > 0 || (words.Length > 1 && char.IsAsciiDigit(words[1])),
            _ => false,
        };
}

/// <summary>
/// An interval plot in plain letters, for a report that is read as text: <c>[</c> and <c>]</c> the margin, <c>|</c> zero, <c>---o---</c>
/// the interval.
/// </summary>
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
            $"{Name("")}o "
                + $"difference{(chart.HasIntervals ? ", --- 95 % interval" : "")}"
                + $"{(chart.HasMargins ? ", [ ] the margin that does not matter" : "")}",
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

    private static string Name(string name) => Columns.Left(ShortText.Of(name, LongestName), LongestName + 1);
}
