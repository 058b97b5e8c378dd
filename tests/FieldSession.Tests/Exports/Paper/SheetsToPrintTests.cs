using AngleSharp.Html.Dom;
using FieldSession.State;
using FieldSession.Store.Exports.Paper;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports.Paper;

/// <summary>Sheets for the day that the battery dies, read by a parser that refuses whatever breaks the HTML standard.</summary>
public sealed class SheetsToPrintTests
{
    private static readonly string[] Sheets =
    [
        "route card",
        "before the first run",
        "run 1",
        "run 2",
        "run 3",
        "ratings of Ro",
        "ratings of Tam",
        "prediction of Ro",
        "prediction of Tam",
    ];

    private static Plan Plan => ADay.ShortPlan with { Attributes = ["roar"], Order = [new Place(0), new Place(1), new Place(0)] };

    [Fact]
    public void Every_run_and_every_person_has_a_sheet()
    {
        IHtmlDocument page = AReport.Read(PaperSheets.Of(Plan));
        string[] heads = [.. page.QuerySelectorAll("h1").Select(head => head.TextContent)];
        Assert.Equal(Sheets.Length, heads.Length);
        Assert.All(Sheets.Zip(heads), pair => Assert.Contains(pair.First, pair.Second, StringComparison.Ordinal));
        Assert.Equal(
            Plan.Route.Select(segment => segment.Name),
            page.QuerySelectorAll("section")[2].QuerySelectorAll("tbody td:nth-child(2)").Select(cell => cell.TextContent)
        );
    }

    [Fact]
    public void A_long_route_goes_on_over_pages()
    {
        IHtmlDocument page = AReport.Read(
            PaperSheets.Of(
                Plan with
                {
                    Route = [.. Enumerable.Range(1, 50).Select(number => ADay.ASegment(number, $"S {number}", "smooth"))],
                }
            )
        );
        Assert.Equal(3, page.QuerySelectorAll("h1").Count(head => head.TextContent.Contains("run 2, page", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_the_crew_wrote_into_the_plan_stays_words()
    {
        IHtmlDocument page = AReport.Read(PaperSheets.Of(Plan with { StudyName = "<script>x</script>", Question = "a & b" }));
        Assert.Empty(page.QuerySelectorAll("script"));
        Assert.Contains("a & b", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_command_writes_them_once_and_never_over_a_file()
    {
        using AtThePrompt prompt = new();
        string demo = Path.Combine(Repository.Root, "demo", "quillmere");
        string said = prompt.Must(0, ["paper", demo, "--out", prompt.Here("sheets")]);
        Assert.EndsWith("paper.html", said.Trim(), StringComparison.Ordinal);
        Assert.Contains(
            "something is there already",
            prompt.Must(3, ["paper", demo, "--out", prompt.Here("sheets")]),
            StringComparison.Ordinal
        );
        Assert.Equal(["paper.html"], Directory.GetFiles(prompt.Here("sheets")).Select(path => Path.GetFileName(path)));
    }

    [Fact]
    public void A_plan_that_is_wrong_is_refused_by_line_and_nothing_is_written()
    {
        using AtThePrompt prompt = new();
        Directory.CreateDirectory(prompt.Here("plan"));
        prompt.Write("plan/plan.toml", "specs = 1\n");
        Assert.Contains(
            "plan.toml",
            prompt.Must(2, ["paper", prompt.Here("plan"), "--out", prompt.Here("sheets")]),
            StringComparison.Ordinal
        );
        Assert.False(Directory.Exists(prompt.Here("sheets")));
    }
}
