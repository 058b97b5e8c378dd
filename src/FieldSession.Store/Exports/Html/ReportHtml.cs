using System.Text.Encodings.Web;
using System.Text.Unicode;
using FieldSession.Reporting;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// The report as one page of HTML: no scripts, nothing from outside, plots as SVG inside it. The page is a template filled with the
/// report's own words, every one of them escaped.
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
        string page = template.Filled(
            new Dictionary<string, FluidValue>
            {
                ["title"] = Values.Text(report.Title),
                ["logo"] = Values.Drawn(template.Logo),
                ["sections"] = Values.List(shown.Select(section => SectionValues.Of(section, isFolded && section.IsDetail))),
            }
        );
        return Excerpt.Marked(page, report);
    }
}

/// <summary>
/// Looks whether a page made with a team's own template still says what an honest report has to say: verdict, what it hangs on, what was
/// left out, limits. Where it doesn't, the page says at its top that it is an excerpt.
/// </summary>
internal static class Excerpt
{
    /// <summary>The page, marked as an excerpt where it is one.</summary>
    /// <param name="page">The page.</param>
    /// <param name="report">The whole report.</param>
    public static string Marked(string page, Report report)
    {
        HtmlEncoder encoder = HtmlEncoder.Create(UnicodeRanges.All);
        string[] missing =
        [
            .. report
                .Sections.Where(section =>
                    section.IsHonest
                    && !Sentences(section).All(words => page.Contains(encoder.Encode(VisibleText.Of(words)), StringComparison.Ordinal))
                )
                .Select(section => section.Title),
        ];
        return missing.Length == 0 ? page : WithNote(page, encoder.Encode(PageWords.IsExcerpt(string.Join(", ", missing))));
    }

    private static IEnumerable<string> Sentences(ReportSection section) =>
        section.Blocks.SelectMany(block =>
            block switch
            {
                Headline headline => [headline.Words],
                Paragraph paragraph => [paragraph.Words],
                LabelledLines lines => lines.Items.Select(line => line.Words),
                Points points => points.Items,
                _ => Enumerable.Empty<string>(),
            }
        );

    // behind the tag that opens the body, or before all else where there is none
    private static string WithNote(string page, string words)
    {
        string note = PageWords.ExcerptNote(words);
        int tag = page.IndexOf("<body", StringComparison.OrdinalIgnoreCase);
        int end = tag < 0 ? -1 : page.IndexOf('>', tag);
        return end < 0 ? note + page : page.Insert(end + 1, "\n" + note);
    }
}
