using System.Collections.Immutable;

namespace FieldSession.Terminal;

/// <summary>What is said of a plan as it stands on the sheet.</summary>
/// <param name="Row">Row of the sheet that it is about; null: the whole.</param>
/// <param name="Words">The words.</param>
/// <param name="IsProblem">Whether the plan can't be driven so; else it only warns.</param>
internal sealed record PlanRemark(int? Row, string Words, bool IsProblem);

/// <summary>A plan as it is edited: fields of one text, then the segments with a text for each column. A new one for each change.</summary>
internal sealed record PlanSheet
{
    /// <summary>The fields: what each is called, and its text.</summary>
    public required ImmutableArray<(string Label, string Text)> Fields { get; init; }

    /// <summary>The heads of a segment's columns.</summary>
    public required ImmutableArray<string> Columns { get; init; }

    /// <summary>The segments.</summary>
    public required ImmutableList<ImmutableArray<string>> Segments { get; init; }

    /// <summary>Seconds that each segment lasts; null: not known yet.</summary>
    public required ImmutableArray<double?> Seconds { get; init; }

    /// <summary>Everything that is said of it, problems first.</summary>
    public required ImmutableArray<PlanRemark> Remarks { get; init; }

    /// <summary>Whether it is changed since it was written.</summary>
    public bool IsChanged { get; init; }

    /// <summary>Rows, fields and segments together.</summary>
    public int Rows => Fields.Length + Segments.Count;
}

/// <summary>What a sheet can be asked to do; each gives the sheet as it is then.</summary>
internal interface IPlanTable
{
    /// <summary>The sheet now.</summary>
    PlanSheet Sheet { get; }

    /// <summary>Sets a field's text, or a segment's column.</summary>
    void Set(int row, int column, string text);

    /// <summary>Adds a segment behind a row: empty, or the copy of one.</summary>
    void Add(int afterRow, bool isCopy);

    /// <summary>Takes a segment away.</summary>
    void Delete(int row);

    /// <summary>Moves a segment up (-1) or down (1).</summary>
    /// <returns>The row where it stands now.</returns>
    int Move(int row, int by);

    /// <summary>Writes the plan folder.</summary>
    /// <returns>What came of it, in words.</returns>
    string Save();
}
