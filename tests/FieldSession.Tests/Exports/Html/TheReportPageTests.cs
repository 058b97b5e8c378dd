using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using FieldSession.Reporting;
using FieldSession.Store.Exports.Html;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports.Html;

/// <summary>The page of both demos, read by a parser that refuses whatever breaks the HTML standard.</summary>
public sealed class TheReportPageTests : IClassFixture<TheDemoPages>
{
    private readonly TheDemoPages _demos;

    public TheReportPageTests(TheDemoPages demos) => _demos = demos;

    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void Nothing_runs_in_it_and_nothing_comes_from_outside(string demo)
    {
        IHtmlDocument page = _demos.Page(demo);
        Assert.Empty(
            page.QuerySelectorAll("script, link, img, defs, iframe, object, embed, form, base, audio, video, image, foreignObject, use")
        );
        Assert.All(
            page.All.SelectMany(element => element.Attributes),
            attribute =>
            {
                Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name);
                Assert.True(
                    attribute.Name is not ("href" or "src" or "action" or "xlink:href") || attribute.Value.StartsWith('#'),
                    attribute.Value
                );
            }
        );
        Assert.DoesNotContain("url(", page.QuerySelector("style")!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", page.QuerySelector("style")!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(
            "default-src 'none'",
            page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content"),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void It_says_its_language_and_fits_a_phone(string demo)
    {
        IHtmlDocument page = _demos.Page(demo);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.Equal("utf-8", page.QuerySelector("meta[charset]")!.GetAttribute("charset"));
        Assert.Equal("width=device-width, initial-scale=1", page.QuerySelector("meta[name=viewport]")!.GetAttribute("content"));
        Assert.NotEqual("", page.Title);
    }

    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void Headings_go_down_step_by_step_and_every_section_is_named_by_its_own(string demo)
    {
        IHtmlDocument page = _demos.Page(demo);
        int[] levels = [.. page.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(heading => heading.LocalName[1] - '0')];
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, level => level == 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        Assert.All(
            page.QuerySelectorAll("section"),
            section => Assert.Equal("h2", page.GetElementById(section.GetAttribute("aria-labelledby")!)!.LocalName)
        );
    }

    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void Every_link_and_every_name_leads_to_the_one_place_that_has_it(string demo)
    {
        IHtmlDocument page = _demos.Page(demo);
        string[] ids = [.. page.QuerySelectorAll("[id]").Select(element => element.Id!)];
        Assert.Equal(ids.Distinct(), ids);
        string[] wanted =
        [
            .. page.QuerySelectorAll("a").Select(link => link.GetAttribute("href")![1..]),
            .. page.QuerySelectorAll("[aria-labelledby]").Select(element => element.GetAttribute("aria-labelledby")!),
            .. page.QuerySelectorAll("[aria-describedby]").Select(element => element.GetAttribute("aria-describedby")!),
        ];
        Assert.True(wanted.Length > 20);
        Assert.All(wanted, id => Assert.Contains(id, ids));
    }

    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void Every_table_names_its_columns_and_its_rows(string demo)
    {
        IElement[] tables = [.. _demos.Page(demo).QuerySelectorAll("table")];
        Assert.True(tables.Length > 8);
        Assert.All(
            tables,
            table =>
            {
                int columns = table.QuerySelectorAll("thead th[scope=col]").Length;
                Assert.Equal(table.QuerySelectorAll("thead > tr > *").Length, columns);
                Assert.All(
                    table.QuerySelectorAll("tbody tr"),
                    row =>
                    {
                        Assert.Equal("row", row.FirstElementChild!.GetAttribute("scope"));
                        Assert.Equal(columns, row.ChildElementCount);
                    }
                );
            }
        );
    }

    [Theory]
    [InlineData("quillmere", 6)]
    [InlineData("dunmarrow", 6)]
    public void Every_plot_is_there_for_wide_and_for_narrow_pages_and_says_in_words_what_it_shows(string demo, int plots)
    {
        IHtmlDocument page = _demos.Page(demo);
        IElement[] drawn = [.. page.QuerySelectorAll("figure svg")];
        Assert.Equal(plots, page.QuerySelectorAll("figure").Length);
        Assert.Equal(plots, page.QuerySelectorAll("figure .wide > svg").Length);
        Assert.Equal(plots, page.QuerySelectorAll("figure .narrow > svg").Length);
        Assert.Equal(2 * plots, drawn.Length);
        Assert.All(
            drawn,
            svg =>
            {
                Assert.Equal("img", svg.GetAttribute("role"));
                Assert.Equal(svg.GetAttribute("aria-label"), svg.QuerySelector("title")!.TextContent);
                Assert.StartsWith("Plot: ", svg.QuerySelector("desc")!.TextContent, StringComparison.Ordinal);
                Assert.NotEmpty(svg.QuerySelectorAll("text"));
            }
        );
    }

    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void The_page_and_the_Markdown_say_the_same(string demo)
    {
        (string markdown, _) = _demos.Texts(demo);
        IHtmlDocument plain = AReport.Read("<!DOCTYPE html><title>x</title>" + AsHtml.Of(markdown));
        IHtmlDocument page = _demos.Page(demo);
        Assert.Equal(Words(plain, "h1, h2, h3"), Words(page, "h1, h2, h3"));
        Assert.Equal(Words(plain, "th, td"), Words(page, "th, td"));
        Assert.Equal(Words(plain, "li"), Words(page, "main section li"));
        string[] described = [.. page.QuerySelectorAll(".wide desc").Select(desc => desc.TextContent)];
        Assert.Equal(Words(plain, "body > p").Where(words => !described.Contains(words)), Words(page, "main p"));
        Assert.Equal(described, Words(plain, "body > p").Where(words => words.StartsWith("Plot: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_head_hash_the_commitment_and_the_version_of_the_program_are_in_it()
    {
        string page = AReport.Read(ReportHtml.Of(AReport.Of(name => name), ReportTemplate.Default)).Body!.TextContent;
        Assert.Contains($"head hash {AReport.HeadHash}.", page, StringComparison.Ordinal);
        Assert.Contains($"Commitment: {new string('a', 64)}.", page, StringComparison.Ordinal);
        Assert.Contains("Program: fieldsession 9.8.7.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_report_with_nothing_in_it_is_a_page_all_the_same()
    {
        IHtmlDocument page = AReport.Read(
            ReportHtml.Of(
                new Report(
                    "",
                    [
                        new ReportSection(
                            ReportPart.Notes,
                            "Empty",
                            [new Points([]), new ReportTable(["A"], []), new IntervalChart("", "dB", []) { Ends = ChartEnds.OfLevels }]
                        ),
                    ]
                ),
                ReportTemplate.Default
            )
        );
        Assert.Equal("Empty", page.QuerySelector("h2")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("table, svg, main ul"));
    }

    private static IEnumerable<string> Words(IHtmlDocument page, string which) =>
        page.QuerySelectorAll(which)
            .Select(element => string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
}

/// <summary>Reports of both demos, made once for all tests of a class.</summary>
public sealed class TheDemoPages
{
    private readonly Dictionary<string, (string Markdown, string Html)> _made = [];

    /// <summary>Both texts of a demo's report.</summary>
    internal (string Markdown, string Html) Texts(string demo)
    {
        if (!_made.TryGetValue(demo, out (string Markdown, string Html) made))
        {
            made = AReport.OfDemo(demo);
            _made.Add(demo, made);
        }

        return made;
    }

    /// <summary>The page of a demo, read strictly.</summary>
    internal IHtmlDocument Page(string demo) => AReport.Read(Texts(demo).Html);
}
