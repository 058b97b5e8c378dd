using System.Collections.Immutable;
using FieldSession.Reporting;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reporting;

/// <summary>The report in columns of the terminal.</summary>
internal static class ReportRows
{
    /// <summary>The rows.</summary>
    public static ImmutableArray<PageRow> Of(Report report, int columns) =>
    [
        .. Text("", report.Title, columns, Ink.Strong),
        .. report.Sections.SelectMany(section => (IEnumerable<PageRow>)
        [
            PageRow.Blank,
            .. Text("", section.Title.ToUpperInvariant(), columns, Ink.Strong),
            .. section.Blocks.SelectMany(block => section.Part == ReportPart.Answer ? CardRows.Of(block, columns) : Of(block, columns)),
        ]),
    ];

    private static IEnumerable<PageRow> Of(ReportBlock block, int columns) => block switch
    {
        Subheading heading => Text("", heading.Words, columns, Ink.Strong),
        Paragraph paragraph => Text("", paragraph.Words, columns),
        LabelledLines lines => lines.Items.SelectMany(line => CardRows.Labelled(line, columns)),
        ReadingsMap { Rows.Count: > 0 } map => ReportTables.Rows(new ReportTable(map.Columns, [.. map.Rows.Select(Row)]), columns),
        Points points => points.Items.SelectMany(item => Text("- ", item, columns)),
        ReportTable { Rows.Count: > 0 } table => ReportTables.Rows(table, columns),
        _ => [],
    };

    private static IReadOnlyList<string> Row(MapRow row) => [row.Name, .. row.Cells.Select(cell => cell.IsOut ? $"({cell.Levels}) {cell.Mark}" : cell.Words)];

    private static IEnumerable<PageRow> Text(string mark, string words, int columns, Ink ink = Ink.Plain) => Wrapped
        .Lines(words, columns - mark.Length)
        .Select((line, place) => PageRow.Of(place == 0 ? mark : new string(' ', mark.Length)).And(line, ink));
}
