using System.Collections.Immutable;
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
    public string Label => Part switch
    {
        SheetPart.Segment => $"segment {Segment + 1}, {Sheet.Columns[Column]}",
        SheetPart.Limit => $"limit, {(Column == 0 ? "" : "reason, ")}{Limit.Label}",
        _ => Sheet.Fields[Row].Label,
    };

    /// <summary>What is in the cursor's cell.</summary>
    public string Text => Part switch
    {
        SheetPart.Segment => Sheet.Segments[Segment][Column],
        SheetPart.Limit => Column == 0 ? Limit.Value : Limit.Reason,
        _ => Sheet.Fields[Row].Text,
    };

    /// <summary>What the cursor's cell takes.</summary>
    public string Hint => Part switch
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
internal sealed record PlanWords(ImmutableArray<PageRow> Rows, (int Row, int Column, int Columns) Box);
