using System.Diagnostics;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

/// <summary>What reaches the terminal, and what is said when it takes no more.</summary>
public sealed class PlainOutputTests
{
    // ECMA-48: ESC [ begins a control sequence, ESC ] an operating system command, U+009B is ESC [ in one character
    [Theory]
    [InlineData("\u001b[2J\u001b[31mred", "[U+001B][2J[U+001B][31mred")]
    [InlineData("\u001b]0;title\u0007", "[U+001B]]0;title[U+0007]")]
    [InlineData("\u009b2J", "[U+009B]2J")]
    [InlineData("over\rwritten", "over[U+000D]written")]
    [InlineData("two\nlines\tand a tab", "two\nlines\tand a tab")]
    [InlineData("Grüße, 😀", "Grüße, 😀")]
    public void No_control_sequence_reaches_the_terminal(string text, string shown)
    {
        using StringWriter terminal = new() { NewLine = "\n" };
        using PlainOutput output = new(terminal, refused: null);
        output.WriteLine(text);
        output.Write(text.ToCharArray());
        Assert.Equal($"{shown}\n{shown}", terminal.ToString());
    }

    [Fact]
    public void A_full_standard_output_says_which_one_it_is_and_a_full_message_stream_ends_nothing()
    {
        using StreamWriter full = new(new FileStream("/dev/full", FileMode.Open, FileAccess.Write, FileShare.ReadWrite, 0))
        {
            AutoFlush = true,
        };
        using PlainOutput output = new(full, fault => new OutputRefusedException(fault));
        IOException refusal = Assert.ThrowsAny<IOException>(() => output.WriteLine("the answer"));
        Assert.StartsWith("standard output takes no more", refusal.Message, StringComparison.Ordinal);

        using PlainOutput messages = new(full, refused: null);
        messages.WriteLine("a message");
    }

    [Theory]
    [InlineData("review {0}")]
    [InlineData("enter {0}")]
    [InlineData("compare {0}")]
    [InlineData("compare {0}.csv")]
    [InlineData("verify {0}")]
    [InlineData("start {1} {0}")]
    public async Task A_pipe_in_the_place_of_a_study_or_a_csv_is_refused_at_once(string words)
    {
        using Folder folder = new();
        foreach (string name in new[] { "day.study", "day.journal", "day.study.csv" })
        {
            using Process made = Process.Start("mkfifo", folder[name]);
            await made.WaitForExitAsync();
        }

        StringWriter said = new();
        string[] typed =
        [
            .. words
                .Split(' ')
                .Select(word =>
                    word.Replace("{0}", folder.Study, StringComparison.Ordinal)
                        .Replace("{1}", Path.Combine(Repository.Root, "demo", "quillmere"), StringComparison.Ordinal)
                ),
        ];
        int code = await Task.Run(() => CommandLine.Run(typed, new Outside([]).World with { Output = said, Error = said }))
            .WaitAsync(TimeSpan.FromSeconds(20));

        Assert.NotEqual(ExitCode.Done, code);
        Assert.Matches("pipe or a device|lies there already", said.ToString());
    }
}
