using System.Collections.Immutable;
using FieldSession.Reviewing;

namespace FieldSession.Terminal;

/// <summary>What is said of a plan as it is on the sheet.</summary>
/// <param name="Row">Row of the sheet that it is about; null: the whole.</param>
/// <param name="Words">The words.</param>
/// <param name="IsProblem">Whether the plan can't be driven so; else it only warns.</param>
internal sealed record PlanRemark(int? Row, string Words, bool IsProblem);

/// <summary>A field of one text.</summary>
/// <param name="Label">What it is called.</param>
/// <param name="Text">Its text; empty: the plan does not hold it.</param>
/// <param name="Hint">What it takes, and what holds where it is empty.</param>
internal sealed record SheetField(string Label, string Text, string Hint);

/// <summary>A limit of the checks.</summary>
/// <param name="Label">What it limits.</param>
/// <param name="Default">What holds where the plan does not change it.</param>
/// <param name="Value">The plan's value; empty: the default.</param>
/// <param name="Reason">Why it is changed.</param>
/// <param name="Hint">What it takes.</param>
internal sealed record SheetLimit(string Label, string Default, string Value, string Reason, string Hint);

/// <summary>What a row of the sheet is.</summary>
internal enum SheetPart
{
    /// <summary>A field of one text.</summary>
    Field,

    /// <summary>A segment, a text for each column.</summary>
    Segment,

    /// <summary>A limit: its value and the reason.</summary>
    Limit,
}

/// <summary>
/// A plan as it is edited: fields of one text, then the segments with a text for each column, then the limits. A new one for each change.
/// </summary>
internal sealed record PlanSheet
{
    /// <summary>The fields.</summary>
    public required ImmutableArray<SheetField> Fields { get; init; }

    /// <summary>The heads of a segment's columns.</summary>
    public required ImmutableArray<string> Columns { get; init; }

    /// <summary>What each of the columns takes.</summary>
    public required ImmutableArray<string> ColumnHints { get; init; }

    /// <summary>The segments.</summary>
    public required ImmutableList<ImmutableArray<string>> Segments { get; init; }

    /// <summary>Seconds that each segment lasts; null: not known yet.</summary>
    public required ImmutableArray<double?> Seconds { get; init; }

    /// <summary>The limits.</summary>
    public required ImmutableArray<SheetLimit> Limits { get; init; }

    /// <summary>Everything that is said of it, problems first.</summary>
    public required ImmutableArray<PlanRemark> Remarks { get; init; }

    /// <summary>Whether it is changed since it was written.</summary>
    public bool IsChanged { get; init; }

    /// <summary>Row of the first segment, or where it would be.</summary>
    public int FirstSegment => Fields.Length;

    /// <summary>Row of the first limit.</summary>
    public int FirstLimit => Fields.Length + Segments.Count;

    /// <summary>Rows of all three parts together.</summary>
    public int Rows => FirstLimit + Limits.Length;

    /// <summary>What a row is.</summary>
    public SheetPart PartOf(int row) =>
        row < FirstSegment ? SheetPart.Field
        : row < FirstLimit ? SheetPart.Segment
        : SheetPart.Limit;

    /// <summary>How many cells a row has.</summary>
    public int CellsOf(int row) =>
        PartOf(row) switch
        {
            SheetPart.Segment => Columns.Length,
            SheetPart.Limit => 2,
            _ => 1,
        };
}

/// <summary>What a sheet can be asked to do; each gives the sheet as it is then.</summary>
internal interface IPlanTable
{
    /// <summary>The sheet now.</summary>
    PlanSheet Sheet { get; }

    /// <summary>Sets a field's text, a segment's column, or a limit's value or reason.</summary>
    void Set(int row, int column, string text);

    /// <summary>Adds a segment behind a row: empty, or the copy of one.</summary>
    /// <returns>The row where it is.</returns>
    int Add(int afterRow, bool isCopy);

    /// <summary>Takes a segment away.</summary>
    void Delete(int row);

    /// <summary>Moves a segment up (-1) or down (1).</summary>
    /// <returns>The row where it is now.</returns>
    int Move(int row, int by);

    /// <summary>The plan's own order, then orders that are proposed for it; empty: what is wrong has to be repaired first.</summary>
    ImmutableArray<OrderSight> Orders();

    /// <summary>What the figures of the last <see cref="Orders"/> rest on, in few words.</summary>
    string OrdersRestOn { get; }

    /// <summary>What earlier days say of the road, a sentence each; empty: nothing, or no archive is named.</summary>
    ImmutableArray<string> Road { get; }

    /// <summary>Puts a proposed order, with its cars and drivers, into the plan.</summary>
    /// <param name="number">Its place in <see cref="Orders"/>.</param>
    /// <param name="drivers">Who of the crew share the wheel, cut by commas or semicolons; empty: as it was proposed.</param>
    /// <returns>What is wrong with the drivers, and nothing was changed; null: taken.</returns>
    string? TakeOrder(int number, string drivers);

    /// <summary>Writes the plan folder.</summary>
    /// <returns>What came of it, in words.</returns>
    string Save();
}
