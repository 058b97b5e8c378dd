using FieldSession.Terminal.Commands;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Hostile;

public sealed class HostileCommandLinesTests
{
    private static readonly string[] Commands =
    [
        "start",
        "seal",
        "enter",
        "compare",
        "review",
        "predict",
        "report",
        "verify",
        "rescue",
        "size",
        "reveal",
        "export",
        "",
        "--help",
        "--version",
        "@file",
    ];

    private static readonly string[] Options =
    [
        "--out",
        "--backup",
        "--json",
        "--runs",
        "--help",
        "-h",
        "--",
        "-",
        "--order",
        "--level",
        "--key",
        "--sd",
    ];

    [Fact]
    public void Any_words_end_with_an_exit_code_or_a_fault_of_a_file_that_is_said()
    {
        using Folder folder = new();
        new EndlessDay(folder).Begin();
        string[] paths = [folder.Study, folder["missing.study"], folder.Text, folder.Path, folder["no/such/folder/x.study"]];
        for (int seed = 0; seed < 300; seed++)
        {
            Random chance = new(seed);
            Rubbish rubbish = new(chance);
            string[] words = [rubbish.Of(Commands), .. Enumerable.Range(0, chance.Next(5)).Select(_ => Word(chance, rubbish, paths))];
            int code = CodeOf(words, $"seed {seed}: {string.Join(' ', words)}");

            Assert.InRange(code, ExitCode.Done, ExitCode.Damaged);
        }

        Assert.True(Store.Journaling.JournalCheck.Of(folder.Study).Text.Holds);
    }

    // relative paths would be made in the folder of the tests
    private static string Word(Random chance, Rubbish rubbish, string[] paths) =>
        chance.Next(3) switch
        {
            0 => rubbish.Of(Options),
            1 => rubbish.Of(paths),
            _ => $"/dev/null/{rubbish.Line().Replace('\0', ' ')}",
        };

    private static int CodeOf(string[] words, string what)
    {
        try
        {
            return new Outside("5860", "yes", "").Run(words);
        }
        catch (Exception said) when (said is IOException or UnauthorizedAccessException)
        {
            Assert.True(said.Message.Length > 0, what);
            return ExitCode.Damaged;
        }
        catch (Exception fault)
        {
            throw new InvalidOperationException(what, fault);
        }
    }
}
