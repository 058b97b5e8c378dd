namespace FieldSession.Store.Exports;

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
