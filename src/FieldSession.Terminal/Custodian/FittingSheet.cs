using System.Collections.Immutable;
using FieldSession.Reviewing;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Terminal.Look;

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
    public static IEnumerable<string> Table(KeySheet key) =>
        key
            .Places.Select(
                (line, place) =>
                    string.Join(
                        ',',
                        key.Plan?.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "",
                        new Place(place),
                        line.Code,
                        Cell(line.Spec),
                        Cell(line.UnderTape)
                    )
            )
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
            .. FittingList
                .Of(key, earlier)
                .SelectMany(row =>
                    new[]
                    {
                        $"{CustodianWords.Slip(row, runs)}  {row.Line.Spec}, mark {row.Line.UnderTape}",
                        $"    {CustodianWords.Change(row)}",
                    }
                ),
            "",
        ];
    }

    private static string Cell(string text)
    {
        string guarded = SpreadsheetText.Guarded(text);
        return guarded.AsSpan().IndexOfAny(",\"\r\n") < 0 ? guarded : $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}

/// <summary>The custodian's list on the screen: first all sets with their marks, then a page for each run.</summary>
internal static class FittingPages
{
    private const int PlaceColumns = 7;
    private const int CodeColumns = 7;
    private const int MarkColumns = 14;
    private const int LabelColumns = 8;
    private const int CodeRows = 3;

    /// <summary>Every page, from top to bottom, without header and footer.</summary>
    /// <param name="key">The key of the fitting.</param>
    /// <param name="earlier">The key of the fitting before it; null: not given.</param>
    /// <param name="columns">Columns to fill.</param>
    /// <param name="form">How a code is written.</param>
    public static ImmutableArray<ImmutableArray<PageRow>> Of(
        KeySheet key,
        KeySheet? earlier,
        int columns,
        LetterForm form = LetterForm.Block
    )
    {
        FittingRow[] rows = [.. FittingList.Of(key, earlier)];
        int runs = key.Plan?.Order.Count ?? 0;
        return [Sets(key, earlier, columns), .. rows.Select((row, at) => Run(row, rows.ElementAtOrDefault(at + 1), runs, columns, form))];
    }

    private static ImmutableArray<PageRow> Sets(KeySheet key, KeySheet? earlier, int columns) =>
        [
            PageRow.Of(Set("place", "code", "mark", "spec", columns), Ink.Quiet),
            .. key.Places.Select(
                (line, place) =>
                    PageRow.Of(Set($"{new State.Place(place)}", line.Code.Digits, line.UnderTape, line.Spec, columns), Ink.Strong)
            ),
            PageRow.Blank,
            .. Text(CustodianWords.MarkFirst, columns),
            .. key.Plan is null ? Text(CustodianWords.OldKeyKnowsNoOrder, columns) : [],
            .. key.Plan is { } plan ? FittingList.OnCars(plan, earlier).SelectMany(set => Text(CustodianWords.OnTheCar(set), columns)) : [],
        ];

    private static ImmutableArray<PageRow> Run(FittingRow row, FittingRow? next, int runs, int columns, LetterForm form) =>
        [
            PageRow.Of(CustodianWords.Run(row, runs), Ink.Strong),
            PageRow.Blank,
            .. LargeText.Of(row.Line.Code.Digits, columns, CodeRows, form).Select(large => PageRow.Of(large, Ink.Strong)),
            PageRow.Of(CustodianWords.TellTheCrew, Ink.Quiet),
            PageRow.Blank,
            .. Labelled("tyres", CustodianWords.Change(row), columns),
            .. Labelled("spec", row.Line.Spec, columns),
            .. Labelled("mark", row.Line.UnderTape, columns),
            PageRow.Blank,
            .. next is null ? [] : Labelled("then", $"{CustodianWords.Run(next, runs)}: {CustodianWords.Change(next)}", columns),
        ];

    private static string Set(string place, string code, string mark, string spec, int columns) =>
        Columns.Left(place, PlaceColumns)
        + Columns.Left(code, CodeColumns)
        + Columns.Left(mark, MarkColumns)
        + Columns.Cut(spec, columns - PlaceColumns - CodeColumns - MarkColumns);

    private static IEnumerable<PageRow> Labelled(string label, string words, int columns) =>
        Wrapped
            .Lines(words, columns - LabelColumns)
            .Select(
                (line, at) =>
                    PageRow
                        .Of(Columns.Left(at == 0 ? label : "", LabelColumns), Ink.Quiet)
                        .And(line, at == 0 && label != "then" ? Ink.Strong : Ink.Plain)
            );

    private static IEnumerable<PageRow> Text(string words, int columns) => Wrapped.Lines(words, columns).Select(line => PageRow.Of(line));
}
