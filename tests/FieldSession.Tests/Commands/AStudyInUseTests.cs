using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

public class AStudyInUseTests
{
    [Theory]
    [InlineData("enter")]
    [InlineData("predict", "--lock", "Ro feature=417 sure=3")]
    [InlineData("reveal", "--key", "a.key")]
    public void Another_program_that_would_write_is_told_which_study_it_is_and_what_to_do(params string[] words)
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        using OpenedStudy opened = OpenedStudy.At(prompt.Study, prompt.Outside());

        string said = prompt.Must(3, [words[0], prompt.Study, .. words.Skip(1)]);

        Assert.Contains(
            $"fieldsession: {prompt.Study}: the study is open in another window or program. Nothing was changed. Close it there",
            said
        );
    }

    [Theory]
    [InlineData("compare")]
    [InlineData("review")]
    [InlineData("verify")]
    [InlineData("report", "--out", "OUT")]
    [InlineData("export", "--out", "OUT")]
    public void A_command_that_only_reads_is_answered_beside_it_and_changes_no_file(params string[] words)
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        using OpenedStudy opened = OpenedStudy.At(prompt.Study, prompt.Outside());
        string[] before = Files(prompt);

        prompt.Must(0, [words[0], prompt.Study, .. words.Skip(1).Select(word => word == "OUT" ? prompt.Here("out") : word)]);

        Assert.Equal(before, Files(prompt));
    }

    private static string[] Files(AtThePrompt prompt) =>
        [
            .. Directory
                .GetFiles(Path.GetDirectoryName(prompt.Study)!)
                .Order(StringComparer.Ordinal)
                .Select(file => $"{file} {File.GetLastWriteTimeUtc(file).Ticks} {new FileInfo(file).Length}"),
        ];
}
