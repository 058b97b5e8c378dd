using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Exports;

namespace FieldSession.Terminal.Custodian;

/// <summary>The custodian's list as text: a sheet to print, with a slip for each run that names the code alone, and a table.</summary>
internal static class FittingSheet
{
    private const string CutHere = "- - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - -";
    private const int Columns = 76;

    /// <summary>The header of the table.</summary>
    public const string TableHeader = "fitting,place,code,spec,mark";

    /// <summary>The sheet to print: the list, then the slips.</summary>
    public static IEnumerable<string> Of(KeySheet key, KeySheet? earlier)
    {
        int runs = key.Plan?.Order.Count ?? 0;
        return
        [
            CustodianWords.KeepSheetAway,
            "",
            .. List(key, earlier),
            .. FittingList.Of(key, earlier).SelectMany(row => new[] { CutHere, "", $"    {CustodianWords.Slip(row, runs)}", "" }),
            CutHere,
        ];
    }

    /// <summary>The table: a row for each place of the order, RFC 4180.</summary>
    public static IEnumerable<string> Table(KeySheet key) => key.Places
        .Select((line, place) => string.Join(',', key.Plan?.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "", new Place(place), line.Code, Cell(line.Spec), Cell(line.UnderTape)))
        .Prepend(TableHeader);

    /// <summary>The list, line by line: all sets, then run by run.</summary>
    public static IEnumerable<string> List(KeySheet key, KeySheet? earlier)
    {
        int runs = key.Plan?.Order.Count ?? 0;
        return
        [
            CustodianWords.Title(key),
            "",
            .. FittingPages.Of(key, earlier, Columns)[0].Select(row => row.Text.TrimEnd()),
            "",
            .. FittingList.Of(key, earlier).SelectMany(row => new[]
            {
                $"{CustodianWords.Slip(row, runs)}  {row.Line.Spec}, mark {row.Line.UnderTape}",
                $"    {CustodianWords.Change(row)}",
            }),
            "",
        ];
    }

    private static string Cell(string text)
    {
        string guarded = SpreadsheetText.Guarded(text);
        return guarded.AsSpan().IndexOfAny(",\"\r\n") < 0 ? guarded : $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
