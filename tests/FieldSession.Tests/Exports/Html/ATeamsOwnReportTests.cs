using AngleSharp.Html.Dom;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports.Html;

/// <summary>A team's folder with a logo and an order of sections; what is left out of an honest report is said at its top.</summary>
public sealed class ATeamsOwnReportTests : IDisposable
{
    private const string Excerpt = "This is an excerpt of the report.";
    private const string Logo =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><title>Crew</title><circle cx=\"5\" cy=\"5\" r=\"4\"/></svg>";

    private readonly AtThePrompt _prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(3);

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void A_logo_is_above_the_title_and_the_report_is_whole()
    {
        IHtmlDocument page = Page(("logo.svg", Logo));
        Assert.NotNull(page.QuerySelector("header .logo svg circle"));
        Assert.DoesNotContain(Excerpt, page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Sections_come_in_the_team_s_order()
    {
        IHtmlDocument page = Page(("sections.txt", "# ours\nlimits\nanswer\nverdict\ncodes\nleft-out\n"));
        Assert.Equal(["limits", "answer", "verdict", "codes", "left-out"], page.QuerySelectorAll("section").Select(section => section.Id));
        Assert.DoesNotContain(Excerpt, page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("answer\nverdict\ncodes\nleft-out\n", "Limits")]
    [InlineData("verdict\ncodes\nlimits\n", "The answer, Readings taken and left out")]
    [InlineData("answer\n", "The verdict in full, Codes and key, Readings taken and left out, Limits")]
    public void Without_the_honest_parts_the_page_says_that_it_is_an_excerpt(string sections, string missing) =>
        Assert.Contains(
            $"{Excerpt} It leaves out words of: {missing}.",
            Page(("sections.txt", sections)).Body!.TextContent,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_template_that_drops_what_the_verdict_hangs_on_makes_an_excerpt()
    {
        string template = _prompt.Write("ours.liquid", "<!DOCTYPE html><title>x</title><body><p>{{ title }}</p></body>");
        _prompt.Must(0, ["report", _prompt.Study, "--out", _prompt.Here("out"), "--template", template]);
        Assert.Contains(Excerpt, File.ReadAllText(_prompt.Here("out/report.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>x</script></svg>", "the logo holds 'script'")]
    [InlineData("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><rect onclick=\"x\"/></svg>", "the logo holds 'onclick'")]
    [InlineData("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><rect fill=\"url(http://x)\"/></svg>", "the logo holds 'fill'")]
    [InlineData("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><image href=\"http://x\"/></svg>", "the logo holds 'image'")]
    [InlineData("logo.svg", "<!DOCTYPE svg [<!ENTITY a \"b\">]><svg/>", "this is not an SVG")]
    [InlineData("logo.svg", "<html/>", "the logo holds 'html'")]
    [InlineData("sections.txt", "answer\nverdikt\n", "line 2: there is no part 'verdikt'")]
    [InlineData("other.txt", "x", "it holds no report.html.liquid, logo.svg or sections.txt")]
    public void What_is_wrong_in_the_folder_is_named_and_nothing_is_written(string file, string text, string why)
    {
        Lay((file, text));
        Assert.Contains(
            why,
            _prompt.Must(2, ["report", _prompt.Study, "--out", _prompt.Here("out"), "--template", _prompt.Here("team")]),
            StringComparison.Ordinal
        );
        Assert.False(Directory.Exists(_prompt.Here("out")));
    }

    [Fact]
    public void One_page_holds_the_answer_the_counts_the_limits_and_is_no_folder_of_details()
    {
        string said = _prompt.Must(0, ["report", _prompt.Study, "--out", _prompt.Here("out"), "--one-page"]);
        Assert.Equal(
            ["one-page.html", "one-page.md"],
            Directory.GetFiles(_prompt.Here("out")).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)
        );
        IHtmlDocument page = AReport.Read(File.ReadAllText(_prompt.Here("out/one-page.html")));
        Assert.Equal(
            ["answer", "how-to-read", "left-out", "limits", "provenance"],
            page.QuerySelectorAll("section").Select(section => section.Id)
        );
        Assert.Empty(page.QuerySelectorAll("details"));
        Assert.Contains("one-page.md", said, StringComparison.Ordinal);
    }

    private IHtmlDocument Page(params (string Name, string Text)[] files)
    {
        Lay(files);
        _prompt.Must(0, ["report", _prompt.Study, "--out", _prompt.Here("out"), "--template", _prompt.Here("team")]);
        return AReport.Read(File.ReadAllText(_prompt.Here("out/report.html")));
    }

    private void Lay(params (string Name, string Text)[] files)
    {
        Directory.CreateDirectory(_prompt.Here("team"));
        foreach ((string name, string text) in files)
        {
            _prompt.Write($"team/{name}", text);
        }
    }
}
