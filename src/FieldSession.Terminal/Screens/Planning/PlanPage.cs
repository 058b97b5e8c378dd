using System.Collections.Immutable;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>
/// The plan screen in words: the cell that is edited and what is said of it on top, below it the whole sheet around the cursor.
/// </summary>
internal static class PlanPage
{
    /// <summary>Rows above the sheet: the cell's name, the box, what is said of it.</summary>
    public const int TopRows = 6;

    private const string Prompt = " > ";
    private const int LabelColumns = 22;
    private const int SaidRows = 3;

    /// <summary>The page in so many columns and rows.</summary>
    public static PlanPageWords Of(PlanSight sight, int columns, int rows) =>
        Framed(
            sight.Label,
            StateOf(sight.Sheet),
            Said(sight, columns - 4),
            Table(sight, Width(columns), Math.Max(1, rows - TopRows)),
            columns,
            rows
        );

    /// <summary>The page on the orders to choose from.</summary>
    public static PlanPageWords Of(OrdersSight orders, int columns, int rows) =>
        Framed(
            PlanScreenWords.ChooseAnOrder,
            "",
            Wrapped
                .Lines(orders.Message ?? OrdersPage.Advice(orders.RestsOn), columns - 4)
                .Select(line => PageRow.Of($" {line}", orders.Message is null ? Ink.Quiet : Ink.Alarm)),
            OrdersPage.Of(orders, Width(columns), Math.Max(1, rows - TopRows)),
            columns,
            rows
        );

    private static PlanPageWords Framed(
        string label,
        string state,
        IEnumerable<PageRow> said,
        IEnumerable<PageRow> below,
        int columns,
        int rows
    )
    {
        int width = Width(columns);
        PageRow[] told = [.. said.Take(SaidRows)];
        ImmutableArray<PageRow> all =
        [
            PageRow.Of(Columns.Cut(label, width - Columns.Of(state) - 2), Ink.Strong).WithRight(PageRow.Of(state, Ink.Quiet), width),
            PageRow.Of(Prompt, Ink.Strong),
            .. told,
            .. Enumerable.Repeat(PageRow.Blank, SaidRows - told.Length),
            PageRow.Blank,
            .. below,
        ];
        return new PlanPageWords(
            [.. all.Take(rows).Select(row => PageRow.Of(" ").And(row))],
            (1, Prompt.Length + 1, Math.Max(4, width - Prompt.Length))
        );
    }

    private static int Width(int columns) => Math.Max(10, columns - 2);

    private static string StateOf(PlanSheet sheet)
    {
        int problems = sheet.Remarks.Count(remark => remark.IsProblem);
        int warnings = sheet.Remarks.Length - problems;
        string[] judged =
        [
            .. sheet.IsChanged ? ["not written"] : Array.Empty<string>(),
            problems > 0 ? $"{problems} to fix" : "good",
            .. warnings > 0 ? [PlanScreenWords.WarningsToLookAt(warnings)] : Array.Empty<string>(),
        ];
        return string.Join(", ", judged) + (sheet.Remarks.Length > 0 ? $" ({PlanKeys.Look})" : "");
    }

    private static IEnumerable<PageRow> Said(PlanSight sight, int width)
    {
        if (sight.Message is { } message)
        {
            return Wrapped.Lines(message, width).Select(line => PageRow.Of($" {line}", Ink.Alarm));
        }

        if (sight.Remark is { } asked && asked < sight.Sheet.Remarks.Length)
        {
            return Told(sight.Sheet.Remarks[asked], $"{asked + 1} of {sight.Sheet.Remarks.Length}: ", width);
        }

        return sight.Sheet.Remarks.FirstOrDefault(remark => remark.Row == sight.Row) is { } here
            ? Told(here, "", width)
            :
            [
                .. Wrapped.Lines(sight.Hint, width).Select(line => PageRow.Of($"  {line}", Ink.Quiet)),
                .. Whole(sight, width),
                .. Cut(sight, width),
            ];
    }

    // a text that is longer than its cell is read here
    private static IEnumerable<PageRow> Cut(PlanSight sight, int width)
    {
        int cell = sight.Part switch
        {
            SheetPart.Field => width - LabelColumns - 2,
            SheetPart.Segment => PlanRoute.WidthOf(sight.Column),
            _ => 0,
        };
        return cell > 0 && Columns.Of(sight.Text) > cell
            ? Wrapped.Lines($"= {sight.Text}", width).Select(line => PageRow.Of($"  {line}"))
            : [];
    }

    // what is wrong with the whole has no row to be at
    private static IEnumerable<PageRow> Whole(PlanSight sight, int width) =>
        sight.Sheet.Remarks.FirstOrDefault(remark => remark is { Row: null, IsProblem: true }) is { } whole ? Told(whole, "", width) : [];

    private static IEnumerable<PageRow> Told(PlanRemark remark, string before, int width) =>
        Wrapped
            .Lines(before + remark.Words, width)
            .Select(
                (line, i) => PageRow.Of($"{(i > 0 ? " " : remark.IsProblem ? "!" : "?")} {line}", remark.IsProblem ? Ink.Alarm : Ink.Plain)
            );

    private static IEnumerable<PageRow> Table(PlanSight sight, int width, int rows)
    {
        PlanSheet sheet = sight.Sheet;
        List<(int Row, PageRow Words)> all = [.. Enumerable.Range(0, sheet.FirstSegment).Select(row => (row, Field(sight, row, width)))];
        all.Add((-1, PageRow.Blank));
        all.Add((-1, PageRow.Of("  ").And(PlanRoute.Head(sight, width))));
        all.AddRange(
            Enumerable
                .Range(0, sheet.Segments.Count)
                .Select(segment =>
                    (
                        sheet.FirstSegment + segment,
                        PageRow.Of(Mark(sight, sheet.FirstSegment + segment)).And(PlanRoute.Row(sight, segment, width))
                    )
                )
        );
        if (sheet.Segments.Count == 0)
        {
            all.Add((-1, PageRow.Of(PlanScreenWords.NoSegmentYet, Ink.Quiet)));
        }

        all.Add((-1, PageRow.Blank));
        all.Add((-1, PlanLimitRows.Head(width)));
        all.AddRange(
            Enumerable
                .Range(0, sheet.Limits.Length)
                .Select(limit =>
                    (
                        sheet.FirstLimit + limit,
                        PageRow.Of(Mark(sight, sheet.FirstLimit + limit)).And(PlanLimitRows.Row(sight, limit, width))
                    )
                )
        );
        int cursor = all.FindIndex(line => line.Row == sight.Row);
        int first = Math.Clamp(cursor - (rows / 2), 0, Math.Max(0, all.Count - rows));
        return all.Skip(first).Take(rows).Select(line => line.Words);
    }

    private static PageRow Field(PlanSight sight, int row, int width)
    {
        SheetField field = sight.Sheet.Fields[row];
        return PageRow
            .Of(Mark(sight, row))
            .And(Columns.Left(field.Label, LabelColumns), Ink.Quiet)
            .And(Columns.Cut(field.Text, width - LabelColumns - 2), row == sight.Row ? Ink.Strong : Ink.Plain);
    }

    private static string Mark(PlanSight sight, int row)
    {
        PlanRemark? remark = sight.Sheet.Remarks.FirstOrDefault(one => one.Row == row);
        string said =
            remark is null ? " "
            : remark.IsProblem ? "!"
            : "?";
        return $"{(row == sight.Row ? ">" : " ")}{said}";
    }
}

/// <summary>The limits on the plan screen: what each limits, its default, the plan's value, and why it is changed.</summary>
internal static class PlanLimitRows
{
    private const int MostLabelColumns = 46;
    private const int FewestLabelColumns = 20;
    private const int NumberColumns = 8;
    private const int FewestReasonColumns = 14;

    /// <summary>The heads of the columns.</summary>
    public static PageRow Head(int width) =>
        PageRow
            .Of(
                $"  {Columns.Left("limit of a check", LabelColumns(width))}{Columns.Right("default", NumberColumns)}  "
                    + $"{Columns.Left("here", NumberColumns)} reason",
                Ink.Quiet
            )
            .Fit(width);

    /// <summary>One limit.</summary>
    public static PageRow Row(PlanSight sight, int limit, int width)
    {
        SheetLimit one = sight.Sheet.Limits[limit];
        bool isHere = sight.Row == sight.Sheet.FirstLimit + limit;
        return PageRow
            .Of(Columns.Left(one.Label, LabelColumns(width)), Ink.Quiet)
            .And(Columns.Right(one.Default, NumberColumns))
            .And("  ")
            .And(Cell(one.Value, NumberColumns, isHere && sight.Column == 0))
            .And(" ")
            .And(Cell(one.Reason, width - LabelColumns(width) - (2 * NumberColumns) - 5, isHere && sight.Column == 1))
            .Fit(width - 2);
    }

    private static int LabelColumns(int width) =>
        Math.Clamp(width - (2 * NumberColumns) - FewestReasonColumns - 5, FewestLabelColumns, MostLabelColumns);

    // an empty cell under the cursor would not be seen
    private static PageRow Cell(string text, int width, bool isHere) =>
        PageRow.Of(Columns.Left(isHere && text.Length == 0 ? "[]" : text, width), isHere ? Ink.Strong : Ink.Plain);
}
