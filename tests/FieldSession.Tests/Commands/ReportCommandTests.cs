using FieldSession.Store.Exports.Html;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

public sealed class ReportCommandTests : IDisposable
{
    private readonly AtThePrompt _prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(3);

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void Markdown_and_page_are_written_and_printed_one_a_line_and_nothing_else_is_left()
    {
        string said = _prompt.Must(0, ["report", _prompt.Study, "--out", Out]);
        Assert.Equal([Path.Combine(Out, "report.md"), Path.Combine(Out, "report.html")], said.Trim().Split(Environment.NewLine));
        Assert.Equal(["report.html", "report.md"], Written);
        Assert.Equal("T-7: blind comparison of tyre specs, key not opened", AReport.Read(Page).Title);
    }

    [Fact]
    public void Before_the_reveal_no_spec_is_in_the_page()
    {
        _prompt.Must(0, ["report", _prompt.Study, "--out", Out]);
        Assert.DoesNotContain("ALPHA", Page, StringComparison.Ordinal);
        Assert.DoesNotContain("BETA", Page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_study_gives_the_same_bytes()
    {
        _prompt.Must(0, ["report", _prompt.Study, "--out", Out]);
        string first = Page;
        _prompt.Must(0, ["report", _prompt.Study, "--out", Out]);
        Assert.Equal(first, Page);
    }

    [Fact]
    public void A_team_starts_from_the_program_s_template_and_makes_it_its_own()
    {
        string template = _prompt.Here("ours.liquid");
        Assert.Equal(template, _prompt.Must(0, ["report", "--template-out", template]).Trim());
        Assert.Equal(ReportTemplate.DefaultText, File.ReadAllText(template));
        File.WriteAllText(
            template,
            "<!DOCTYPE html><title>Ours</title>{% for section in sections %}<h2>{{ section.title }}</h2>{% endfor %}"
        );
        _prompt.Must(0, ["report", _prompt.Study, "--out", Out, "--template", template]);
        Assert.Contains("<title>Ours</title><h2>The answer</h2><h2>The verdict in full</h2>", Page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_template_never_writes_over_a_file()
    {
        string mine = _prompt.Write("mine.liquid", "mine");
        string said = _prompt.Must(3, ["report", "--template-out", mine]);
        Assert.Equal($"fieldsession: {mine}: something is there already. Nothing was changed. Give a free name.", said.Trim());
        Assert.Equal("mine", File.ReadAllText(mine));
    }

    [Theory]
    [InlineData("{{ titel }}", "titel")]
    [InlineData("{% for section in sections %}{{ section.title", "this is not a template")]
    [InlineData("{% for section in sections %}", "this is not a template")]
    [InlineData("{% for section in sections %}{{ section.titel }}{% endfor %}", "there is no 'titel' here, but id, title")]
    [InlineData("{{ title | shout }}", "shout")]
    [InlineData("{% include 'secret' %}", "secret")]
    [InlineData("{% for i in (1..9000000) %}{% for j in (1..9000000) %}x{% endfor %}{% endfor %}", "it never ends")]
    public void A_template_that_is_wrong_is_named_and_nothing_is_written(string text, string why)
    {
        string template = _prompt.Write("ours.liquid", text);
        string said = _prompt.Must(ExitCode.Wrong, ["report", _prompt.Study, "--out", Out, "--template", template]);
        Assert.StartsWith(template, said, StringComparison.Ordinal);
        Assert.Contains(why, said, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public void A_template_that_is_missing_or_not_text_is_named()
    {
        Assert.Contains(
            "can't be read as a template",
            _prompt.Must(ExitCode.Wrong, ["report", _prompt.Study, "--out", Out, "--template", _prompt.Here("none")]),
            StringComparison.Ordinal
        );
        File.WriteAllBytes(_prompt.Here("bytes"), [0xC3, 0x28]);
        Assert.Contains(
            "can't be read as a template",
            _prompt.Must(ExitCode.Wrong, ["report", _prompt.Study, "--out", Out, "--template", _prompt.Here("bytes")]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_template_escapes_what_it_prints()
    {
        string template = _prompt.Write(
            "ours.liquid",
            "{% for section in sections %}{% for block in section.blocks %}{% if block.kind == 'points' %}{{ block.items | "
                + "join: ' ' }}{% endif %}{% endfor %}{% endfor %}"
        );
        _prompt.Enter("; <b>bold</b>\n");
        _prompt.Must(0, ["report", _prompt.Study, "--out", Out, "--template", template]);
        Assert.Contains("&lt;b&gt;bold&lt;/b&gt;", Page, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", Page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("report")]
    [InlineData("report", "day.study")]
    [InlineData("report", "day.study", "--template-out", "x.liquid")]
    public void Words_that_do_not_belong_together_are_wrong(params string[] words) =>
        Assert.Contains("report STUDY --out DIR", _prompt.Must(ExitCode.Wrong, words), StringComparison.Ordinal);

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_wrong_input()
    {
        string file = _prompt.Write("report", "mine");
        Assert.Contains(
            "this is a file; give a folder",
            _prompt.Must(ExitCode.Wrong, ["report", _prompt.Study, "--out", file]),
            StringComparison.Ordinal
        );
        Assert.Equal("mine", File.ReadAllText(file));
    }

    [Fact]
    public void Stopped_it_says_so_and_the_earlier_report_stays()
    {
        _prompt.Must(0, ["report", _prompt.Study, "--out", Out]);
        string before = Page;
        _prompt.Enter("; one more note\n");
        StringWriter error = new();
        Surroundings outside = new()
        {
            Input = TextReader.Null,
            Output = TextWriter.Null,
            Error = error,
            Clock = _prompt.Clock,
            Lot = new Sealing.SeededLot(1),
        };
        int code = ReportCommand.Run(
            new ReportWords(_prompt.Study, Out, null, null, IsOnePage: false),
            outside,
            new CancellationToken(canceled: true)
        );
        Assert.Equal((ExitCode.No, $"{Out}: stopped; nothing was changed there"), (code, error.ToString().Trim()));
        Assert.Equal(before, Page);
        Assert.Equal(["report.html", "report.md"], Written);
    }

    private string Out => _prompt.Here("report");

    private string Page => File.ReadAllText(Path.Combine(Out, "report.html"));

    private string[] Written => [.. Directory.GetFiles(Out).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
