using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>What the plan screen shows: the sheet, where the cursor is, and what was said last.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Row">Row of the cursor, from 0.</param>
/// <param name="Column">Column of the cursor, from 0; fields have one.</param>
/// <param name="Message">What came of the last key; null: nothing to say.</param>
/// <param name="Remark">Which of the sheet's remarks was asked for; null: none.</param>
internal sealed record PlanSight(PlanSheet Sheet, int Row, int Column, string? Message, int? Remark = null)
{
    /// <summary>What the cursor is on.</summary>
    public SheetPart Part => Sheet.PartOf(Row);

    /// <summary>Whether the cursor is on a segment.</summary>
    public bool IsOnSegment => Part == SheetPart.Segment;

    /// <summary>The segment of the cursor, from 0; of use only on one.</summary>
    public int Segment => Row - Sheet.FirstSegment;

    /// <summary>What the cursor's cell is called.</summary>
    public string Label =>
        Part switch
        {
            SheetPart.Segment => $"segment {Segment + 1}, {Sheet.Columns[Column]}",
            SheetPart.Limit => $"limit, {(Column == 0 ? "" : "reason, ")}{Limit.Label}",
            _ => Sheet.Fields[Row].Label,
        };

    /// <summary>What is in the cursor's cell.</summary>
    public string Text =>
        Part switch
        {
            SheetPart.Segment => Sheet.Segments[Segment][Column],
            SheetPart.Limit => Column == 0 ? Limit.Value : Limit.Reason,
            _ => Sheet.Fields[Row].Text,
        };

    /// <summary>What the cursor's cell takes.</summary>
    public string Hint =>
        Part switch
        {
            SheetPart.Segment => Sheet.ColumnHints[Column],
            SheetPart.Limit => Limit.Hint,
            _ => Sheet.Fields[Row].Hint,
        };

    private SheetLimit Limit => Sheet.Limits[Row - Sheet.FirstLimit];
}

/// <summary>The page and the place of its box.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Box">Row, column and width of the box.</param>
internal sealed record PlanPageWords(ImmutableArray<PageRow> Rows, (int Row, int Column, int Columns) Box);

/// <summary>
/// The route on the plan screen: name, then the cells around the cursor that there is room for; the seconds are behind speed and length.
/// </summary>
internal static class PlanRoute
{
    private const int SecondsColumns = 7;
    private const int BeforeSeconds = 4;

    private static ImmutableArray<int> Widths => [18, 8, 9, 9, 9, 10, 22, 20, 6];

    /// <summary>How many columns a cell has.</summary>
    public static int WidthOf(int column) => Widths[column];

    /// <summary>The heads of the columns.</summary>
    public static PageRow Head(PlanSight sight, int width) =>
        Joined(
                sight.Sheet.Columns.Select((name, column) => PageRow.Of(Columns.Left(name, Widths[column]), Ink.Quiet)),
                PageRow.Of(Columns.Right("seconds", SecondsColumns), Ink.Quiet),
                FirstShown(sight, width - 2)
            )
            .Fit(width);

    /// <summary>One segment.</summary>
    public static PageRow Row(PlanSight sight, int segment, int width)
    {
        ImmutableArray<string> cells = sight.Sheet.Segments[segment];
        string seconds = sight.Sheet.Seconds[segment] is { } known ? known.ToString("0.0", CultureInfo.CurrentCulture) : "?";
        bool isHere = sight.IsOnSegment && sight.Segment == segment;
        return Joined(
                cells.Select((text, column) => Cell(text, Widths[column], isHere && sight.Column == column)),
                PageRow.Of(Columns.Right(seconds, SecondsColumns)),
                FirstShown(sight, width - 2)
            )
            .Fit(width - 2);
    }

    // behind the name as many columns are left away as the cursor's own needs to be seen whole
    private static int FirstShown(PlanSight sight, int width)
    {
        int column = sight.IsOnSegment ? sight.Column : 0;
        int first = 1;
        while (first < column && Widths[0] + 1 + WidthFrom(first, column) > width)
        {
            first++;
        }

        return first;
    }

    private static int WidthFrom(int first, int last) =>
        Enumerable.Range(first, last - first + 1).Sum(column => Widths[column] + 1)
        + (first < BeforeSeconds && last >= BeforeSeconds ? SecondsColumns + 1 : 0);

    // an empty cell under the cursor would not be seen
    private static PageRow Cell(string text, int width, bool isHere) =>
        PageRow.Of(Columns.Left(isHere && text.Length == 0 ? "[]" : text, width), isHere ? Ink.Strong : Ink.Plain);

    private static PageRow Joined(IEnumerable<PageRow> cells, PageRow seconds, int first)
    {
        PageRow row = PageRow.Of("");
        foreach ((int column, PageRow cell) in cells.Index().Where(cell => cell.Index == 0 || cell.Index >= first))
        {
            row = column == BeforeSeconds && first < BeforeSeconds ? row.And(seconds).And(" ") : row;
            row = row.And(cell).And(" ");
        }

        return row;
    }
}
