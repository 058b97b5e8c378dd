using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The limits on the plan screen: what each limits, its default, the plan's value, and why it is changed.</summary>
internal static class PlanLimitRows
{
    private const int MostLabelColumns = 46;
    private const int FewestLabelColumns = 20;
    private const int NumberColumns = 8;
    private const int FewestReasonColumns = 14;

    /// <summary>The heads of the columns.</summary>
    public static PageRow Head(int width) => PageRow.Of(
        $"  {Columns.Left("limit of a check", LabelColumns(width))}{Columns.Right("default", NumberColumns)}  {Columns.Left("here", NumberColumns)} reason", Ink.Quiet).Fit(width);

    /// <summary>One limit.</summary>
    public static PageRow Row(PlanSight sight, int limit, int width)
    {
        SheetLimit one = sight.Sheet.Limits[limit];
        bool isHere = sight.Row == sight.Sheet.FirstLimit + limit;
        return PageRow.Of(Columns.Left(one.Label, LabelColumns(width)), Ink.Quiet)
            .And(Columns.Right(one.Default, NumberColumns)).And("  ")
            .And(Cell(one.Value, NumberColumns, isHere && sight.Column == 0)).And(" ")
            .And(Cell(one.Reason, width - LabelColumns(width) - (2 * NumberColumns) - 5, isHere && sight.Column == 1))
            .Fit(width - 2);
    }

    private static int LabelColumns(int width) =>
        Math.Clamp(width - (2 * NumberColumns) - FewestReasonColumns - 5, FewestLabelColumns, MostLabelColumns);

    // an empty cell under the cursor would not be seen
    private static PageRow Cell(string text, int width, bool isHere) =>
        PageRow.Of(Columns.Left(isHere && text.Length == 0 ? "[]" : text, width), isHere ? Ink.Strong : Ink.Plain);
}
