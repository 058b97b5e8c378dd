using System.Collections.Immutable;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>What the plan screen shows: the sheet, where the cursor is, and what was said last.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Row">Row of the cursor, from 0.</param>
/// <param name="Column">Column of the cursor, from 0; fields have one.</param>
/// <param name="Message">What came of the last key; null: nothing to say.</param>
internal sealed record PlanSight(PlanSheet Sheet, int Row, int Column, string? Message)
{
    /// <summary>Whether the cursor is on a segment.</summary>
    public bool IsOnSegment => Row >= Sheet.Fields.Length && Row < Sheet.Rows;

    /// <summary>The segment of the cursor, from 0; of use only on one.</summary>
    public int Segment => Row - Sheet.Fields.Length;

    /// <summary>What the cursor's cell is called.</summary>
    public string Label => IsOnSegment ? $"segment {Segment + 1}, {Sheet.Columns[Column]}" : Sheet.Fields[Row].Label;

    /// <summary>What stands in the cursor's cell.</summary>
    public string Text => IsOnSegment ? Sheet.Segments[Segment][Column] : Sheet.Fields[Row].Text;
}

/// <summary>The page and the place of its box.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Box">Row, column and width of the box.</param>
internal sealed record PlanWords(ImmutableArray<PageRow> Rows, (int Row, int Column, int Columns) Box);
