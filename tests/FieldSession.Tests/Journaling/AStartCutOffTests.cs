using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

/// <summary>A power cut while a study is made leaves nothing that is in the way.</summary>
public sealed class AStartCutOffTests
{
    public static TheoryData<string, byte[]> Remains =>
        new()
        {
            { "empty", [] },
            { "zeros", new byte[300] },
            { "half a line", "0123456789abcdef0123 {\"seq\":1,"u8.ToArray() },
            { "the end of a line behind a sector that never came", [.. new byte[512], .. "of the first line\"}\n"u8] },
        };

    [Theory]
    [MemberData(nameof(Remains))]
    public void The_study_is_made_in_the_place_of_what_is_left(string what, byte[] text)
    {
        using Folder folder = new();
        File.WriteAllBytes(folder.Text, text);

        Assert.NotEmpty(what);
        Assert.Equal(5, folder.Write(5).Count);
        Assert.True(JournalCheck.Of(folder.Study).Holds);
        Assert.Equal(text, Directory.GetFiles(folder.Path, "*.damaged-*").Select(File.ReadAllBytes).FirstOrDefault([]));
    }

    [Fact]
    public void Also_where_the_LiteDB_file_was_made_already_or_only_half()
    {
        using Folder folder = new();
        StudyFile.Create(folder.Study, new StoppedClock()).Dispose();
        byte[] begun = File.ReadAllBytes(folder.Study);
        File.WriteAllBytes(folder.Study, begun[..8192]);

        Assert.Equal(2, folder.Write(2).Count);
        Assert.True(JournalCheck.Of(folder.Study).Holds);
    }

    [Theory]
    [InlineData("my own text without a line break")]
    [InlineData("0123 a line\n")]
    public void What_may_be_somebody_elses_is_left_alone(string text)
    {
        using Folder folder = new();
        File.WriteAllText(folder.Text, text);
        Assert.Throws<StudyExistsException>(() => folder.Write(1));
        Assert.Equal(text, File.ReadAllText(folder.Text));
        Assert.Equal(["day.journal"], folder.Names);
    }

    [Theory]
    [InlineData("review")]
    [InlineData("enter")]
    [InlineData("verify")]
    public void Until_then_every_command_says_what_it_is_and_what_to_do(string command)
    {
        using AtThePrompt prompt = new();
        prompt.Write("day.journal", "");
        string said = prompt.Must(command == "verify" ? ExitCode.No : ExitCode.Wrong, [command, prompt.Study]);
        Assert.DoesNotContain("freeze hold", said, StringComparison.Ordinal);
        Assert.Contains(
            command == "verify" ? "no line of it can be read" : "Make it again with 'fieldsession start PLAN_DIR",
            said,
            StringComparison.Ordinal
        );
    }
}
