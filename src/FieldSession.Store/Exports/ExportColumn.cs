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
        new(
            new ExportField(name, FieldType.Text, null, description),
            row => of(row) is { } text ? SpreadsheetText.Guarded(VisibleText.OfCell(text)) : null
        );

    /// <summary>A whole number.</summary>
    public static ExportColumn<T> Count<T>(string name, string description, Func<T, int?> of) =>
        new(new ExportField(name, FieldType.Count, null, description), row => of(row)?.ToString(CultureInfo.InvariantCulture));

    /// <summary>A number, unrounded: the shortest text that reads back to the same number.</summary>
    public static ExportColumn<T> Number<T>(string name, string unit, string description, Func<T, double?> of) =>
        new(
            new ExportField(name, FieldType.Number, unit, description),
            row => of(row) is { } number && double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : null
        );

    /// <summary>true or false.</summary>
    public static ExportColumn<T> YesNo<T>(string name, string description, Func<T, bool?> of) =>
        new(
            new ExportField(name, FieldType.YesNo, null, description),
            row =>
                of(row) switch
                {
                    null => null,
                    true => "true",
                    false => "false",
                }
        );

    /// <summary>Date and time in UTC, to the millisecond.</summary>
    public static ExportColumn<T> Time<T>(string name, string description, Func<T, DateTimeOffset?> of) =>
        new(
            new ExportField(name, FieldType.Time, "UTC", description),
            row => of(row)?.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.FFF'Z'", CultureInfo.InvariantCulture)
        );
}

/// <summary>
/// Text in a CSV cell that no spreadsheet takes for a formula: an apostrophe goes before a text that begins with
/// = + - @, a tab or a carriage return (OWASP, "CSV Injection"). A text that begins with apostrophes and then one of these gets
/// one more, so that taking one off always gives the text back. Numbers are never touched.
/// </summary>
public static class SpreadsheetText
{
    private const char Guard = '\'';
    private const string FormulaStarts = "=+-@\t\r";

    /// <summary>The text as it is in a cell.</summary>
    public static string Guarded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsTakenForFormula(text) ? Guard + text : text;
    }

    /// <summary>The text that a cell holds.</summary>
    public static string Plain(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.StartsWith(Guard) && IsTakenForFormula(cell) ? cell[1..] : cell;
    }

    private static bool IsTakenForFormula(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> behindGuards = text.TrimStart(Guard);
        return behindGuards.Length > 0 && FormulaStarts.Contains(behindGuards[0], StringComparison.Ordinal);
    }
}

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
