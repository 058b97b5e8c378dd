using System.Collections.Immutable;

namespace FieldSession.Store.Exports;

/// <summary>What is in a column.</summary>
public enum FieldType
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A number with a point.</summary>
    Number,

    /// <summary>true or false.</summary>
    YesNo,

    /// <summary>Date and time in UTC, such as 2026-02-03T09:15:00Z.</summary>
    Time,
}

/// <summary>A column of a table.</summary>
/// <param name="Name">Its name in the header.</param>
/// <param name="Type">What is in it.</param>
/// <param name="Unit">The unit of its numbers; null: none.</param>
/// <param name="Description">What it means.</param>
public sealed record ExportField(string Name, FieldType Type, string? Unit, string Description)
{
    /// <summary>Whether it is never empty.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Whether no two rows hold the same.</summary>
    public bool IsUnique { get; init; }

    /// <summary>The only words that may be in it; empty: any.</summary>
    public ImmutableArray<string> Words { get; init; } = [];
}

/// <summary>Columns that name a row of another table.</summary>
/// <param name="Field">The column.</param>
/// <param name="Table">The other table, without extension.</param>
/// <param name="OtherField">The column there.</param>
public sealed record TableLink(string Field, string Table, string OtherField);
