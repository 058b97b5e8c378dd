using System.Collections.Immutable;
using System.Globalization;

namespace FieldSession.Store.Exports;

/// <summary>A column with the way from a row to its cell.</summary>
/// <param name="Field">What the column is.</param>
/// <param name="Cell">The cell's text in a row; null: unknown, an empty cell.</param>
internal sealed record ExportColumn<T>(ExportField Field, Func<T, string?> Cell)
{
    /// <summary>The same column, never empty.</summary>
    public ExportColumn<T> Always => this with { Field = Field with { IsRequired = true } };

    /// <summary>The same column, no two rows alike.</summary>
    public ExportColumn<T> Unique => this with { Field = Field with { IsUnique = true } };

    /// <summary>The same column, which holds nothing but these words.</summary>
    public ExportColumn<T> OneOf(params ImmutableArray<string> words) => this with { Field = Field with { Words = words } };
}

/// <summary>The kinds of columns: each knows how its values are written.</summary>
internal static class Column
{
    /// <summary>Text; what a spreadsheet would take for a formula is guarded.</summary>
    public static ExportColumn<T> Text<T>(string name, string description, Func<T, string?> of) =>
        new(new ExportField(name, FieldType.Text, null, description), row => of(row) is { } text ? SpreadsheetText.Guarded(VisibleText.OfCell(text)) : null);

    /// <summary>A whole number.</summary>
    public static ExportColumn<T> Count<T>(string name, string description, Func<T, int?> of) =>
        new(new ExportField(name, FieldType.Count, null, description), row => of(row)?.ToString(CultureInfo.InvariantCulture));

    /// <summary>A number, unrounded: the shortest text that reads back to the same number.</summary>
    public static ExportColumn<T> Number<T>(string name, string unit, string description, Func<T, double?> of) =>
        new(new ExportField(name, FieldType.Number, unit, description), row => of(row) is { } number && double.IsFinite(number)
            ? number.ToString("R", CultureInfo.InvariantCulture)
            : null);

    /// <summary>true or false.</summary>
    public static ExportColumn<T> YesNo<T>(string name, string description, Func<T, bool?> of) =>
        new(new ExportField(name, FieldType.YesNo, null, description), row => of(row) switch { null => null, true => "true", false => "false" });

    /// <summary>Date and time in UTC, to the millisecond.</summary>
    public static ExportColumn<T> Time<T>(string name, string description, Func<T, DateTimeOffset?> of) =>
        new(new ExportField(name, FieldType.Time, "UTC", description), row =>
            of(row)?.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.FFF'Z'", CultureInfo.InvariantCulture));
}
