using System.Text.Encodings.Web;
using System.Text.Unicode;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// Looks whether a page made with a team's own template still says what an honest report has to say: verdict, what it hangs on, what was left out,
/// limits. Where it doesn't, the page says at its top that it is an excerpt.
/// </summary>
internal static class Excerpt
{
    /// <summary>The page, marked as an excerpt where it is one.</summary>
    /// <param name="page">The page.</param>
    /// <param name="report">The whole report.</param>
    public static string Marked(string page, Report report)
    {
        HtmlEncoder encoder = HtmlEncoder.Create(UnicodeRanges.All);
        string[] missing = [.. report.Sections
            .Where(section => section.IsHonest && !Sentences(section).All(words => page.Contains(encoder.Encode(VisibleText.Of(words)), StringComparison.Ordinal)))
            .Select(section => section.Title)];
        return missing.Length == 0 ? page : WithNote(page, encoder.Encode(PageWords.IsExcerpt(string.Join(", ", missing))));
    }

    private static IEnumerable<string> Sentences(ReportSection section) => section.Blocks.SelectMany(block => block switch
    {
        Headline headline => [headline.Words],
        Paragraph paragraph => [paragraph.Words],
        LabelledLines lines => lines.Items.Select(line => line.Words),
        Points points => points.Items,
        _ => Enumerable.Empty<string>(),
    });

    // behind the tag that opens the body, or before all else where there is none
    private static string WithNote(string page, string words)
    {
        string note = $"<p role=\"note\" style=\"margin:0;padding:.6em 1em;border:3px solid;background:#fff;color:#1f262c;font-weight:bold\">{words}</p>";
        int tag = page.IndexOf("<body", StringComparison.OrdinalIgnoreCase);
        int end = tag < 0 ? -1 : page.IndexOf('>', tag);
        return end < 0 ? note + page : page.Insert(end + 1, "\n" + note);
    }
}
