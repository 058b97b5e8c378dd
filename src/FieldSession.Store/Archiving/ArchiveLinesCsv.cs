using System.Globalization;
using FieldSession.Archiving;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Archiving;

/// <summary>The archive as the CSV that 'compare --archive' reads (docs/files.md, "Archive CSV"): a line a study and class.</summary>
public static class ArchiveLinesCsv
{
    /// <summary>The lines, header first, without line breaks.</summary>
    public static IEnumerable<string> Of(IEnumerable<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(studies);
        return studies.SelectMany(study => study.Scatter.Where(one => !one.IsKind).Select(one => Row(study, one))).Prepend("day,cls,nu_run,s_run,kbar,nu_e,s_e");
    }

    private static string Row(ArchivedStudy study, ArchivedScatter one) => string.Join(
        ',', Quoted(SpreadsheetText.Guarded(VisibleText.OfCell(study.Name))), one.Group, Number(one.NuRun), Number(one.SRunDb), Number(one.Kbar), Number(one.NuE), Number(one.SEDb));

    private static string Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "NA";

    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
