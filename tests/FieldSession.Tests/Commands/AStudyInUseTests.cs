using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

public class AStudyInUseTests
{
    [Theory]
    [InlineData("compare")]
    [InlineData("compare", "--json")]
    [InlineData("enter")]
    [InlineData("review")]
    [InlineData("predict", "--lock", "Ro feature=417 sure=3")]
    [InlineData("reveal", "--key", "a.key")]
    [InlineData("report", "--out", "somewhere")]
    [InlineData("export", "--out", "somewhere")]
    public void Another_program_is_told_which_study_it_is_and_what_to_do(params string[] words)
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        using OpenedStudy opened = OpenedStudy.At(prompt.Study, prompt.Outside());

        string said = prompt.Must(3, [words[0], prompt.Study, .. words.Skip(1)]);

        Assert.Contains($"fieldsession: {prompt.Study}: the study is open in another window or program. Nothing was changed. Close it there", said);
        Assert.False(Directory.Exists("somewhere"));
    }
}
