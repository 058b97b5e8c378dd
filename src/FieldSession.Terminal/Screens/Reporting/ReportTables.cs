using System.Collections.Immutable;
using FieldSession.Reporting;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reporting;

/// <summary>A table of the report: columns as wide as their cells, the widest wrapped where the terminal is narrower.</summary>
internal static class ReportTables
{
    private const int Gap = 2;
    private const int LeastColumns = 7;

    /// <summary>The rows.</summary>
    public static IEnumerable<PageRow> Rows(ReportTable table, int columns)
    {
        int[] natural = [.. table.Columns.Select((head, i) => table.Rows.Select(row => Columns.Of(row[i])).Append(Columns.Of(head)).Max())];
        ImmutableArray<int> widths = Fitted([.. natural.Select(width => Math.Max(1, width))], columns - (Gap * (natural.Length - 1)));
        return
        [
            .. Row(table.Columns, widths, Ink.Quiet),
            .. table.Rows.SelectMany(row => Row(row, widths, Ink.Plain)),
        ];
    }

    // The widest column gives way first, column by column, down to a least width.
    private static ImmutableArray<int> Fitted(int[] widths, int room)
    {
        while (widths.Sum() > room && widths.Max() > LeastColumns)
        {
            widths[Array.IndexOf(widths, widths.Max())]--;
        }

        return [.. widths];
    }

    private static IEnumerable<PageRow> Row(IReadOnlyList<string> cells, ImmutableArray<int> widths, Ink ink)
    {
        string[][] lines = [.. cells.Select((cell, i) => Wrapped.Lines(cell, widths[i]).ToArray())];
        for (int at = 0; at < lines.Max(cell => cell.Length); at++)
        {
            yield return PageRow.Of(string.Join(new string(' ', Gap), lines.Select((cell, i) => Columns.Left(cell.ElementAtOrDefault(at) ?? "", widths[i]))), ink);
        }
    }
}
