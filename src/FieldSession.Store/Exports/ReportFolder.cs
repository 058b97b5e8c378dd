using System.Text;
using FieldSession.Reporting;
using FieldSession.Store.Exports.Html;

namespace FieldSession.Store.Exports;

/// <summary>Writes a report into a folder, as Markdown and as a page of HTML: both or neither.</summary>
public static class ReportFolder
{
    /// <summary>Name of the report in Markdown.</summary>
    public const string MarkdownName = "report.md";

    /// <summary>Name of the report as a page.</summary>
    public const string HtmlName = "report.html";

    /// <summary>Name of the sheet to hand over in Markdown.</summary>
    public const string OnePageMarkdownName = "one-page.md";

    /// <summary>Name of the sheet to hand over as a page.</summary>
    public const string OnePageHtmlName = "one-page.html";

    /// <summary>Writes the report on one page, to hand over, and gives the paths of its files; nothing on it is folded.</summary>
    /// <inheritdoc cref="Write"/>
    public static IReadOnlyList<string> WriteOnePage(string folder, Report report, ReportTemplate template, CancellationToken stop) =>
        Written(folder, DayReport.OnePage(report), template, (OnePageMarkdownName, OnePageHtmlName), stop);

    /// <summary>Writes the report and gives the paths of its files.</summary>
    /// <param name="folder">The folder; it is made where it is missing.</param>
    /// <param name="report">The report.</param>
    /// <param name="template">The frame of the page.</param>
    /// <param name="stop">Stops it; nothing is changed then.</param>
    /// <exception cref="ExportRefusedException">The folder is a file, or the disk takes no more.</exception>
    /// <exception cref="TemplateRefusedException">The template is wrong.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<string> Write(string folder, Report report, ReportTemplate template, CancellationToken stop) =>
        Written(folder, report, template, (MarkdownName, HtmlName), stop);

    private static string[] Written(
        string folder,
        Report report,
        ReportTemplate template,
        (string Markdown, string Html) names,
        CancellationToken stop
    )
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        (string, byte[])[] files = NumberForm.OfFiles<(string, byte[])[]>(() =>
            [
                (names.Markdown, Encoding.UTF8.GetBytes(ReportMarkdown.Of(report))),
                (names.Html, Encoding.UTF8.GetBytes(ReportHtml.Of(report, template, isFolded: names.Html == HtmlName))),
            ]
        );
        FilesTogether.Write(folder, files, new HashSet<string> { names.Markdown, names.Html }, stop);
        return [Path.Combine(folder, names.Markdown), Path.Combine(folder, names.Html)];
    }

    /// <summary>Writes the text of the program's own template to a file that is not there yet.</summary>
    /// <exception cref="ExportRefusedException">The file is there already, or can't be written.</exception>
    public static void WriteTemplate(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        if (Path.Exists(path))
        {
            throw new ExportRefusedException(ExportWords.NameIsTaken(path));
        }

        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        FilesTogether.Write(
            folder,
            [(Path.GetFileName(path), Encoding.UTF8.GetBytes(ReportTemplate.DefaultText))],
            new HashSet<string>(),
            CancellationToken.None
        );
    }
}
