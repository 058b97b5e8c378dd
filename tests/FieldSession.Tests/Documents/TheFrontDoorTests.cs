using System.CommandLine;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Starting;
using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>
/// Who comes new is shown the way: an example with every command, documents that an installed program carries, and what is due in a study.
/// </summary>
public sealed class TheFrontDoorTests
{
    [Fact]
    public void Every_command_shows_an_example_that_the_program_takes()
    {
        RootCommand root = CommandLine.Make(new Outside().World);
        Assert.Equal(root.Subcommands.Select(command => command.Name), GuideWords.Rows.Select(guide => guide.Name));
        IEnumerable<string> lines = GuideWords.Rows.SelectMany(guide => new[] { guide.Example, guide.Next }).OfType<string>();
        TheHouse.NoneOf(
            lines.Where(line => root.Parse(line.Split('|')[0].Split(' ', StringSplitOptions.RemoveEmptyEntries)[1..]).Errors.Count > 0),
            "an example is a line that the program takes"
        );
    }

    [Fact]
    public void The_help_of_a_command_ends_with_its_example_and_the_exit_codes()
    {
        using AtThePrompt prompt = new();
        string help = prompt.Must(0, ["review", "--help"]);
        Assert.Contains("fieldsession review day.study", help, StringComparison.Ordinal);
        Assert.Contains("  3  a file is damaged", help, StringComparison.Ordinal);
        Assert.Contains("'fieldsession help'", prompt.Must(0, ["--help"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_document_of_the_crew_is_in_the_program_and_is_printed_at_80_columns_without_marks()
    {
        using AtThePrompt prompt = new();
        string list = prompt.Must(0, ["help"]);
        Assert.All(
            HelpCommand.Topics,
            topic =>
            {
                Assert.Contains($"  {topic} ", list, StringComparison.Ordinal);
                string[] page = prompt.Must(0, ["help", topic]).Split('\n');
                Assert.Equal(
                    DocumentText.TitleOf(File.ReadAllText(Path.Combine(Repository.Root, "docs", $"{topic}.md"))),
                    page[0].TrimEnd()
                );
                Assert.DoesNotContain(
                    page,
                    line =>
                        line.StartsWith("|--", StringComparison.Ordinal)
                        || line.StartsWith("# ", StringComparison.Ordinal)
                        || line.Contains("**", StringComparison.Ordinal)
                );
                // what the program or a file prints is shown as it is
                Assert.DoesNotContain(page, line => line.Length > 80 && line[0] != ' ');
            }
        );
        Assert.Contains("handbook", HelpCommand.Topics);
    }

    [Fact]
    public void No_message_sends_anybody_to_a_document_that_an_installed_program_does_not_have()
    {
        string[] sources = Directory.GetFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories);
        IEnumerable<string> pointers = sources
            .SelectMany(File.ReadLines)
            .Where(line =>
                !line.TrimStart().StartsWith("//", StringComparison.Ordinal)
                && line.Contains("docs/", StringComparison.Ordinal)
                && line.Contains(".md ", StringComparison.Ordinal)
            );
        TheHouse.NoneOf(pointers, "a message names 'fieldsession help TOPIC'");
    }

    [Fact]
    public void A_study_says_what_is_due_from_the_plan_to_the_report()
    {
        using AtThePrompt day = new();
        day.Write("specs.txt", "PALEGREY\nDARKGREY\n");
        day.Write("plan/plan.toml", AWholeDay.Plan);
        day.Write("plan/route.csv", AWholeDay.Route);
        Directory.CreateDirectory(day.Here("secret"));
        day.Must(0, ["start", day.Here("plan"), day.Study]);
        Assert.Equal("codes: the custodian seals the key, the crew takes the codes", Due(day));
        day.Must(
            0,
            ["seal", day.Here("plan"), "--specs", day.Here("specs.txt"), "--key", day.Here("a.key"), "--public", day.Here("away.codes")]
        );
        day.Must(0, ["codes", day.Study, day.Here("away.codes")]);
        Assert.Equal("drive: run 1, but the meter was not checked before this session", Due(day));
        day.Enter(AWholeDay.Ready);
        Assert.Equal("drive: run 1", Due(day));
        Assert.Equal("drive: run 2", Due(day.Drive(1)));
        Assert.Equal("drive: the calibration check after the last run is missing", Due(day.Drive(5)));
        Assert.Equal("review: the blind review, then the predictions", Due(day.Enter("calibration after 94.0\n")));
        Assert.Equal("predict: the prediction of Tam", Due(day.Enter($"predict Ro feature={day.Now().Codes.First()} sure=4\n")));
        Assert.Equal(
            "reveal: open the key with the custodian",
            Due(day.Enter($"predict Tam feature={day.Now().Codes.First()} sure=80%\n"))
        );
        day.Must(0, day.RevealWords("a.key"));
        Assert.Equal("report: the report", Due(day));
    }

    private static string Due(AtThePrompt day)
    {
        DayAhead ahead = DayAhead.Of(Logbook.Fold(StudyGlance.LinesOf(day.Study)))!;
        return $"{ahead.Command}: {ahead.Next}";
    }

    [Theory]
    [InlineData("review", "review", "next: lock the predictions: fieldsession predict day.study")]
    [InlineData("drive", "review", "next: the blind review, then the predictions: fieldsession review day.study")]
    [InlineData("predict", "reveal", "next: open the key with the custodian: fieldsession reveal day.study --key a.key")]
    [InlineData("reveal", "report", "next: the report: fieldsession report day.study --out report")]
    [InlineData("report", "report", "next: keep the tables: fieldsession export day.study --out tables")]
    [InlineData("drive", "drive", null)]
    public void A_command_ends_by_naming_the_next_one(string done, string due, string? line)
    {
        string next = due switch
        {
            "review" => StageWords.ReviewThenPredict,
            "reveal" => StageWords.OpenTheKey,
            _ => StageWords.TheReport,
        };
        Assert.Equal(line, NextLine.After(done, new DayAhead("", next, due), "day.study"));
    }
}
