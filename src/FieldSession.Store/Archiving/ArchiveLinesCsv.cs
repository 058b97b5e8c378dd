using System.Globalization;
using FieldSession.Archiving;
using FieldSession.State;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Archiving;

/// <summary>The archive as the CSV that 'compare --archive' and a plan read (docs/files.md, "Archive CSV"): a line a study and class.</summary>
public static class ArchiveLinesCsv
{
    /// <summary>The lines, header first, without line breaks.</summary>
    public static IEnumerable<string> Of(IEnumerable<ArchivedStudy> studies) =>
        ArchiveRow.Of(studies).Select(Row).Prepend("day,cls,nu_run,s_run,kbar,nu_e,s_e,study,crew,loop");

    private static string Row(ArchiveRow row)
    {
        EarlierScatter one = row.Scatter;
        return string.Join(
            ',', Text(one.Day), one.Group, Number(one.NuRun), Number(one.SRunDb), Number(one.Kbar), Number(one.NuE), Number(one.SEDb), one.Study, Text(row.Crew ?? ""), Text(row.Loop ?? ""));
    }

    private static string Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "NA";

    private static string Text(string text) => Quoted(SpreadsheetText.Guarded(VisibleText.OfCell(text)));

    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
