using AngleSharp.Html.Dom;
using FieldSession.Reporting;
using FieldSession.Store.Exports;
using FieldSession.Store.Exports.Html;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

/// <summary>Whatever the crew calls things, the report has the same parts as with plain names, and the words are in it as words.</summary>
public sealed class AHostileReportTests
{
    private static IHtmlDocument PlainPage => AReport.Read(ReportHtml.Of(AReport.Of(name => name), ReportTemplate.Default));

    public static TheoryData<string> Hostile =>
        [
            "</p></section></main><script>alert(1)</script>",
            "<img src=x onerror=alert(1)>",
            "\"><svg onload=alert(1)>",
            "' onmouseover='alert(1)",
            "<!-- <![CDATA[ ]]> -->",
            "&lt;b&gt; &amp;&#106;",
            "{{ title }}{% raw %}{% for a in b %}",
            "[words](javascript:alert(1)) ![x](http://nowhere.invalid/x.png)",
            "| a | b |",
            "``` ~~~ `code`",
            "# heading",
            "- point 1. point > quote",
            "*strong* _soft_ **both** __all__ ~~gone~~",
            "=HYPERLINK(\"http://nowhere.invalid\")",
            "<http://nowhere.invalid> http://nowhere.invalid",
            "\\ \\\\ \\| \\",
            "\u202Eright to left\u202C \u05D0\u05D1 \u2066isolate",
            "\u0000\u0007\u001B[2J\u0085\u009F",
            "half a pair \uD83D and no character \uFFFF",
            "line one\r\nline two\n\n# three\u2028four",
        ];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void In_the_page_a_name_changes_nothing_but_itself(string hostile)
    {
        IHtmlDocument page = AReport.Read(ReportHtml.Of(AReport.Of(name => $"{hostile} {name}"), ReportTemplate.Default));
        Assert.Equal(Parts(PlainPage), Parts(page));
        string shown = string.Join(' ', VisibleText.Of(hostile).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(
            shown,
            string.Join(' ', page.Body!.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(page.Body.TextContent, letter => char.IsControl(letter) && letter != '\n');
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void In_the_Markdown_a_name_changes_nothing_but_itself(string hostile)
    {
        IHtmlDocument plain = Read(ReportMarkdown.Of(AReport.Of(name => name)));
        string markdown = ReportMarkdown.Of(AReport.Of(name => $"{hostile} {name}"));
        IHtmlDocument read = Read(markdown);
        Assert.Equal(Parts(plain), Parts(read));
        Assert.DoesNotContain(markdown, letter => char.IsControl(letter) && letter != '\n');
        string shown = string.Join(' ', VisibleText.Of(hostile).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(
            shown,
            string.Join(' ', read.Body!.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Ten_thousand_letters_make_the_page_no_wider()
    {
        string longest = new('W', 10_000);
        Report report = AReport.Of(name => longest + name);
        IHtmlDocument page = AReport.Read(ReportHtml.Of(report, ReportTemplate.Default));
        Assert.Equal(Parts(PlainPage), Parts(page));
        Assert.All(
            page.QuerySelectorAll("th, td").Where(cell => cell.TextContent.Length > 1000),
            cell => Assert.Contains("long", cell.ClassList)
        );
        Assert.All(page.QuerySelectorAll("svg text"), text => Assert.True(text.TextContent.Length < 60, text.TextContent));
        Assert.All(
            page.QuerySelectorAll("figure svg"),
            svg => Assert.Contains(svg.GetAttribute("viewBox")!.Split(' ')[2], new[] { "720", "340" })
        );
    }

    private static IHtmlDocument Read(string markdown) => AReport.Read("<!DOCTYPE html><title>x</title>" + AsHtml.Of(markdown));

    // Every element and every attribute by name, in order; plots by what may be in them, as longer names take more room and leave fewer
    // lines.
    private static IEnumerable<string> Parts(IHtmlDocument page)
    {
        string[] inPlots = ["title", "desc", "g", "text", "rect", "line", "polyline", "polygon", "ellipse", "path", "circle"];
        Assert.All(page.QuerySelectorAll("svg *"), element => Assert.Contains(element.LocalName, inPlots));
        return page
            .All.Where(element => element.LocalName == "svg" || element.Closest("svg") is null)
            .Select(element =>
                $"{element.LocalName} "
                + $"{string.Join(' ', element.Attributes.Select(attribute => attribute.Name).Where(name => name != "class"))}"
            );
    }
}
