using System.Text;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports;

/// <summary>The report as Markdown (CommonMark with pipe tables). Every text of the crew is escaped: nothing in a note becomes markup.</summary>
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

    private static string Words(ReportBlock block) => block switch
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
        string.Join(' ', new[] { cell.IsOut ? $"~~{Escaped(cell.Levels)}~~" : Escaped(cell.Levels), Escaped(cell.Mark) }.Where(part => part.Length > 0));

    private static void Row(StringBuilder text, IEnumerable<string> cells) =>
        text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

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

    private static bool IsHarmless(string words, int at) => words[at] switch
    {
        '(' or ')' => !words.Contains('[', StringComparison.Ordinal),
        '-' or '+' or '=' or '!' or '#' => at > 0 || (words.Length > 1 && char.IsAsciiDigit(words[1])),
        _ => false,
    };
}
