using FieldSession.Reporting;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// The report as one page of HTML: no scripts, nothing from outside, plots as SVG inside it. The page is a template filled with the report's own
/// words, every one of them escaped.
/// </summary>
public static class ReportHtml
{
    /// <summary>The whole page.</summary>
    /// <param name="report">The report.</param>
    /// <param name="template">Its frame.</param>
    /// <exception cref="TemplateRefusedException">The template names what there is not.</exception>
    public static string Of(Report report, ReportTemplate template)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(template);
        return template.Filled(new Dictionary<string, FluidValue>
        {
            ["title"] = Values.Text(report.Title),
            ["sections"] = Values.List(report.Sections.Select((section, place) => SectionValues.Of(section, $"s{place + 1}"))),
        });
    }
}
