using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The route on the plan screen: the cells that are always needed, the seconds they make, then as many others as there is room for.</summary>
internal static class PlanRoute
{
    private const int SecondsColumns = 7;
    private const int BeforeSeconds = 4;

    private static ImmutableArray<int> Widths => [18, 8, 9, 9, 9, 10, 22, 20, 6];

    /// <summary>The heads of the columns.</summary>
    public static PageRow Head(PlanSheet sheet, int width)
    {
        IEnumerable<string> heads = sheet.Columns.Zip(Widths, Columns.Left);
        return PageRow.Of($"  {Joined(heads, "seconds")}", Ink.Quiet).Fit(width);
    }

    /// <summary>One segment.</summary>
    public static PageRow Row(PlanSight sight, int segment, int width)
    {
        ImmutableArray<string> cells = sight.Sheet.Segments[segment];
        string seconds = sight.Sheet.Seconds[segment] is { } known ? known.ToString("0.0", CultureInfo.InvariantCulture) : "?";
        bool isHere = sight.IsOnSegment && sight.Segment == segment;
        PageRow row = PageRow.Of("");
        for (int column = 0; column < cells.Length; column++)
        {
            row = column == BeforeSeconds ? row.And(Columns.Right(seconds, SecondsColumns)).And(" ") : row;
            row = row.And(Cell(cells[column], Widths[column], isHere && sight.Column == column)).And(" ");
        }

        return row.Fit(width - 2);
    }

    // an empty cell under the cursor would not be seen
    private static PageRow Cell(string text, int width, bool isHere) =>
        PageRow.Of(Columns.Left(isHere && text.Length == 0 ? "[]" : text, width), isHere ? Ink.Strong : Ink.Plain);

    private static string Joined(IEnumerable<string> cells, string seconds) =>
        string.Join(' ', cells.Take(BeforeSeconds).Append(Columns.Right(seconds, SecondsColumns)).Concat(cells.Skip(BeforeSeconds)));
}
