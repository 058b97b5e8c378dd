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
    /// <param name="isFolded">Whether what is there to be looked up is folded.</param>
    /// <exception cref="TemplateRefusedException">The template names what there is not.</exception>
    public static string Of(Report report, ReportTemplate template, bool isFolded = true)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(template);
        IEnumerable<ReportSection> shown = template.Order is { } order
            ? order.SelectMany(part => report.Sections.Where(section => section.Part == part))
            : report.Sections;
        string page = template.Filled(new Dictionary<string, FluidValue>
        {
            ["title"] = Values.Text(report.Title),
            ["logo"] = Values.Drawn(template.Logo),
            ["sections"] = Values.List(shown.Select(section => SectionValues.Of(section, isFolded && section.IsDetail))),
        });
        return Excerpt.Marked(page, report);
    }
}
