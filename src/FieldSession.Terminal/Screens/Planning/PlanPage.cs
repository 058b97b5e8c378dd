using System.Collections.Immutable;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The plan screen in words: the cell that is edited and what is said of it on top, below it the whole sheet around the cursor.</summary>
internal static class PlanPage
{
    private const string Prompt = " > ";
    private const int LabelColumns = 22;
    private const int TopRows = 5;

    /// <summary>The page in so many columns and rows.</summary>
    public static PlanWords Of(PlanSight sight, int columns, int rows)
    {
        int width = Math.Max(10, columns - 2);
        PageRow[] said = [.. Said(sight, width).Take(2)];
        ImmutableArray<PageRow> all =
        [
            PageRow.Of(Columns.Cut(sight.Label, width - 30), Ink.Strong).WithRight(PageRow.Of(State(sight.Sheet), Ink.Quiet), width),
            PageRow.Of(Prompt, Ink.Strong),
            .. said, .. Enumerable.Repeat(PageRow.Blank, 2 - said.Length),
            PageRow.Blank,
            .. Table(sight, width, Math.Max(1, rows - TopRows)),
        ];
        return new PlanWords([.. all.Take(rows).Select(row => PageRow.Of(" ").And(row))], (1, Prompt.Length + 1, Math.Max(4, width - Prompt.Length)));
    }

    private static string State(PlanSheet sheet)
    {
        int problems = sheet.Remarks.Count(remark => remark.IsProblem);
        string judged = problems > 0 ? $"{problems} to mend" : sheet.Remarks.Length > 0 ? $"good, {sheet.Remarks.Length} to look at" : "good";
        return $"{(sheet.IsChanged ? "not written, " : "")}{judged}";
    }

    private static IEnumerable<PageRow> Said(PlanSight sight, int width)
    {
        if (sight.Message is { } message)
        {
            return Wrapped.Lines(message, width - 1).Select(line => PageRow.Of($" {line}", Ink.Alarm));
        }

        PlanRemark? here = sight.Sheet.Remarks.FirstOrDefault(remark => remark.Row == sight.Row)
            ?? sight.Sheet.Remarks.FirstOrDefault(remark => remark.Row is null);
        return here is null ? [] : Wrapped.Lines(here.Words, width - 2).Select((line, i) => PageRow.Of($"{(i > 0 ? " " : here.IsProblem ? "!" : "?")} {line}", here.IsProblem ? Ink.Alarm : Ink.Plain));
    }

    private static IEnumerable<PageRow> Table(PlanSight sight, int width, int rows)
    {
        PageRow[] all =
        [
            .. Enumerable.Range(0, sight.Sheet.Fields.Length).Select(row => Field(sight, row, width)),
            PlanRoute.Head(sight.Sheet, width),
            .. Enumerable.Range(0, sight.Sheet.Segments.Count).Select(segment => PageRow.Of(Mark(sight, sight.Sheet.Fields.Length + segment)).And(PlanRoute.Row(sight, segment, width))),
        ];
        int cursor = sight.Row >= sight.Sheet.Fields.Length ? sight.Row + 1 : sight.Row;
        int first = Math.Clamp(cursor - (rows / 2), 0, Math.Max(0, all.Length - rows));
        return all.Skip(first).Take(rows);
    }

    private static PageRow Field(PlanSight sight, int row, int width)
    {
        (string label, string text) = sight.Sheet.Fields[row];
        return PageRow.Of(Mark(sight, row)).And(Columns.Left(label, LabelColumns), Ink.Quiet)
            .And(Columns.Cut(text, width - LabelColumns - 2), row == sight.Row ? Ink.Strong : Ink.Plain);
    }

    private static string Mark(PlanSight sight, int row)
    {
        PlanRemark? remark = sight.Sheet.Remarks.FirstOrDefault(one => one.Row == row);
        string said = remark is null ? " " : remark.IsProblem ? "!" : "?";
        return $"{(row == sight.Row ? ">" : " ")}{said}";
    }
}
