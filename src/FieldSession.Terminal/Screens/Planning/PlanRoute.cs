using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The route on the plan screen: name, then the cells around the cursor that there is room for; the seconds are behind speed and length.</summary>
internal static class PlanRoute
{
    private const int SecondsColumns = 7;
    private const int BeforeSeconds = 4;

    private static ImmutableArray<int> Widths => [18, 8, 9, 9, 9, 10, 22, 20, 6];

    /// <summary>How many columns a cell has.</summary>
    public static int WidthOf(int column) => Widths[column];

    /// <summary>The heads of the columns.</summary>
    public static PageRow Head(PlanSight sight, int width) => Joined(
        sight.Sheet.Columns.Select((name, column) => PageRow.Of(Columns.Left(name, Widths[column]), Ink.Quiet)),
        PageRow.Of(Columns.Right("seconds", SecondsColumns), Ink.Quiet),
        FirstShown(sight, width - 2)).Fit(width);

    /// <summary>One segment.</summary>
    public static PageRow Row(PlanSight sight, int segment, int width)
    {
        ImmutableArray<string> cells = sight.Sheet.Segments[segment];
        string seconds = sight.Sheet.Seconds[segment] is { } known ? known.ToString("0.0", CultureInfo.CurrentCulture) : "?";
        bool isHere = sight.IsOnSegment && sight.Segment == segment;
        return Joined(
            cells.Select((text, column) => Cell(text, Widths[column], isHere && sight.Column == column)),
            PageRow.Of(Columns.Right(seconds, SecondsColumns)),
            FirstShown(sight, width - 2)).Fit(width - 2);
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
        Enumerable.Range(first, last - first + 1).Sum(column => Widths[column] + 1) + (first < BeforeSeconds && last >= BeforeSeconds ? SecondsColumns + 1 : 0);

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
