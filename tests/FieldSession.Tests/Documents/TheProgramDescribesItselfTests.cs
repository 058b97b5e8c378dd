using System.CommandLine;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>The manual page and the completion scripts are made from the program's own words.</summary>
public sealed class TheProgramDescribesItselfTests
{
    [Fact]
    public void Every_file_of_an_export_is_told_in_the_document_on_files()
    {
        string told = File.ReadAllText(Path.Combine(Repository.Root, "docs/files.md"));
        Assert.All(FieldSession.Store.Exports.Exports.All, file => Assert.Contains($"`{file.Name}`", told, StringComparison.Ordinal));
    }

    [Fact]
    public void The_manual_page_tells_every_command_with_every_option()
    {
        using AtThePrompt prompt = new();
        string page = prompt.Must(0, ["man"]).Replace("\\-", "-", StringComparison.Ordinal);
        RootCommand root = CommandLine.Make(prompt.Outside());
        Assert.All(
            root.Subcommands,
            command =>
            {
                string about = page[page.IndexOf($".SS fieldsession {command.Name}", StringComparison.Ordinal)..];
                Assert.Contains(command.Description!, about, StringComparison.Ordinal);
                Assert.All(command.Options, option => Assert.Contains($"{option.Name}", about, StringComparison.Ordinal));
            }
        );
        Assert.Equal(
            "fieldsession report [STUDY]",
            page.Split('\n').First(line => line.StartsWith(".SS fieldsession report", StringComparison.Ordinal))[4..]
        );
    }

    [Fact]
    public void No_line_of_the_manual_page_is_taken_for_a_macro_that_is_none()
    {
        using AtThePrompt prompt = new();
        string[] macros = [".TH", ".SH", ".SS", ".TP", ".B", ".I", ".br"];
        Assert.All(
            prompt.Must(0, ["man"]).Split('\n').Where(line => line.StartsWith('.')),
            line => Assert.Contains(line.Split(' ')[0], macros)
        );
    }

    [Theory]
    [InlineData("bash", "complete -o default -F")]
    [InlineData("zsh", "compdef")]
    [InlineData("fish", "complete -c fieldsession")]
    [InlineData("powershell", "Register-ArgumentCompleter")]
    public void A_shell_gets_its_script_which_asks_the_program(string shell, string registers)
    {
        using AtThePrompt prompt = new();
        string script = prompt.Must(0, ["completion", shell]);
        Assert.Contains(registers, script, StringComparison.Ordinal);
        Assert.Contains("[suggest:", script, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shell_that_is_not_known_is_refused_with_those_that_are()
    {
        using AtThePrompt prompt = new();
        Assert.Contains("'powershell'", prompt.Must(2, ["completion", "nushell"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rev", new[] { "reveal", "review" })]
    [InlineData("seal x.study --s", new[] { "--specs" })]
    [InlineData("completion ", new[] { "bash", "fish", "powershell", "zsh" })]
    public void The_program_says_what_may_are_next(string line, string[] words)
    {
        using AtThePrompt prompt = new();
        string said = prompt.Must(0, [$"[suggest:{line.Length}]", line]);
        Assert.Equal(
            words,
            said.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(word => word.Trim())
                .Where(word => word.Length > 2 && word != "--help")
        );
    }

    [Fact]
    public void Every_call_in_the_documents_is_one_that_the_program_knows()
    {
        RootCommand root = CommandLine.Make(new Outside().World);
        string[] pages =
        [
            "README.md",
            .. Directory.GetFiles(Path.Combine(Repository.Root, "docs"), "*.md").Select(path => $"docs/{Path.GetFileName(path)}"),
        ];
        string[] calls = [.. pages.SelectMany(page => new Page(page).Calls)];
        Assert.True(calls.Length > 40, $"only {calls.Length} calls were found");
        TheHouse.NoneOf(
            calls.Where(call => root.Parse(Words(call)).Errors.Count > 0),
            "a call in a document is one that the program takes"
        );
    }

    // Behind the words of the call may be a remark, a pipe or a file to read from or write to.
    private static string[] Words(string call) =>
        [.. call.Split(['#', '|', '<', '>'])[0].Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Skip(1)];
}
