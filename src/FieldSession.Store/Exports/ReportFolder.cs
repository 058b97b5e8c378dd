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

    /// <summary>Writes the report and gives the paths of its files.</summary>
    /// <param name="folder">The folder; it is made where it is missing.</param>
    /// <param name="report">The report.</param>
    /// <param name="template">The frame of the page.</param>
    /// <param name="stop">Stops it; nothing is changed then.</param>
    /// <exception cref="ExportRefusedException">The folder is a file, or the disk takes no more.</exception>
    /// <exception cref="TemplateRefusedException">The template is wrong.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<string> Write(string folder, Report report, ReportTemplate template, CancellationToken stop)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        (string, byte[])[] files = NumberForm.OfFiles<(string, byte[])[]>(() =>
        [
            (MarkdownName, Encoding.UTF8.GetBytes(ReportMarkdown.Of(report))),
            (HtmlName, Encoding.UTF8.GetBytes(ReportHtml.Of(report, template))),
        ]);
        FilesTogether.Write(folder, files, new HashSet<string> { MarkdownName, HtmlName }, stop);
        return [Path.Combine(folder, MarkdownName), Path.Combine(folder, HtmlName)];
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
        FilesTogether.Write(folder, [(Path.GetFileName(path), Encoding.UTF8.GetBytes(ReportTemplate.DefaultText))], new HashSet<string>(), CancellationToken.None);
    }
}
