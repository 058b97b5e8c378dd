using System.Collections.Immutable;
using FieldSession.Reporting;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reporting;

/// <summary>The report in columns of the terminal.</summary>
internal static class ReportRows
{
    /// <summary>The rows.</summary>
    public static ImmutableArray<PageRow> Of(Report report, int columns) =>
        [
            .. Text("", report.Title, columns, Ink.Strong),
            .. report.Sections.SelectMany(section =>
                (IEnumerable<PageRow>)
                    [
                        PageRow.Blank,
                        .. Text("", section.Title.ToUpperInvariant(), columns, Ink.Strong),
                        .. section.Blocks.SelectMany(block =>
                            section.Part == ReportPart.Answer ? CardRows.Of(block, columns) : Of(block, columns)
                        ),
                    ]
            ),
        ];

    private static IEnumerable<PageRow> Of(ReportBlock block, int columns) =>
        block switch
        {
            Subheading heading => Text("", heading.Words, columns, Ink.Strong),
            Paragraph paragraph => Text("", paragraph.Words, columns),
            LabelledLines lines => lines.Items.SelectMany(line => CardRows.Labelled(line, columns)),
            ReadingsMap { Rows.Count: > 0 } map => ReportTables.Rows(new ReportTable(map.Columns, [.. map.Rows.Select(Row)]), columns),
            Points points => points.Items.SelectMany(item => Text("- ", item, columns)),
            ReportTable { Rows.Count: > 0 } table => ReportTables.Rows(table, columns),
            _ => [],
        };

    private static IReadOnlyList<string> Row(MapRow row) =>
        [row.Name, .. row.Cells.Select(cell => cell.IsOut ? $"({cell.Levels}) {cell.Mark}" : cell.Words)];

    private static IEnumerable<PageRow> Text(string mark, string words, int columns, Ink ink = Ink.Plain) =>
        Wrapped
            .Lines(words, columns - mark.Length)
            .Select((line, place) => PageRow.Of(place == 0 ? mark : new string(' ', mark.Length)).And(line, ink));
}

/// <summary>A table of the report: columns as wide as their cells, the widest wrapped where the terminal is narrower.</summary>
internal static class ReportTables
{
    private const int Gap = 2;
    private const int LeastColumns = 7;

    /// <summary>The rows.</summary>
    public static IEnumerable<PageRow> Rows(ReportTable table, int columns)
    {
        IEnumerable<string> Column(int i) => table.Rows.Select(row => row[i]).Append(table.Columns[i]);
        int[] places = [.. Enumerable.Range(0, table.Columns.Count)];
        int[] natural = [.. places.Select(i => Math.Max(1, Column(i).Max(Columns.Of)))];
        int[] words = [.. places.Select(i => Column(i).SelectMany(cell => cell.Split(' ')).Max(Columns.Of))];
        ImmutableArray<int> widths = Fitted(natural, words, columns - (Gap * (natural.Length - 1)));
        return [.. Row(table.Columns, widths, Ink.Quiet), .. table.Rows.SelectMany(row => Row(row, widths, Ink.Plain))];
    }

    // The widest column gives way first, as far as its words stay whole; only then are words broken.
    private static ImmutableArray<int> Fitted(int[] widths, int[] words, int room)
    {
        foreach (Func<int, int> least in new Func<int, int>[] { i => Math.Max(LeastColumns, words[i]), _ => LeastColumns })
        {
            while (
                widths.Sum() > room && Enumerable.Range(0, widths.Length).Where(i => widths[i] > least(i)).ToArray() is { Length: > 0 } wide
            )
            {
                widths[wide.MaxBy(i => widths[i])]--;
            }
        }

        return [.. widths];
    }

    private static IEnumerable<PageRow> Row(IReadOnlyList<string> cells, ImmutableArray<int> widths, Ink ink)
    {
        string[][] lines = [.. cells.Select((cell, i) => Wrapped.Lines(cell, widths[i]).ToArray())];
        for (int at = 0; at < lines.Max(cell => cell.Length); at++)
        {
            yield return PageRow.Of(
                string.Join(new string(' ', Gap), lines.Select((cell, i) => Columns.Left(cell.ElementAtOrDefault(at) ?? "", widths[i]))),
                ink
            );
        }
    }
}

/// <summary>What the report screen says.</summary>
internal static class ReportScreenWords
{
    public const string NotWritableHere = "the report can't be written here; use 'report' from the shell";

    public static string HowToWrite(string nextStep) =>
        $"w: writes it to its file; {(nextStep.Length == 0 ? "a note: '; words'" : nextStep)}";

    public static string NotWritten(Exception refused) =>
        $"not written: {refused.Message}; nothing was overwritten, make room or free the file, then try again";
}
