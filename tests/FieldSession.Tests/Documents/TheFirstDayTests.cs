using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>The tutorial is walked word by word: what it says to type is typed, what it shows is what the program shows.</summary>
public sealed class TheFirstDayTests
{
    private const string Tutorial = "docs/first-day.md";

    [Fact]
    public void The_tutorial_shows_what_the_program_shows()
    {
        Page page = new(Tutorial);
        using AStranger stranger = new();
        Dictionary<int, string> told = [];
        foreach (Fence fence in page.Fences)
        {
            Follow(fence, stranger, told);
        }

        Assert.True(told.Count >= 20, $"only {told.Count} screens and answers were seen");
        Golden.Approve(Tutorial, page.With(told));
    }

    [Fact]
    public void No_name_of_a_spec_is_in_the_tutorial_before_the_marks_are_read()
    {
        Page page = new(Tutorial);
        Fence[] before =
        [
            .. page
                .Fences.SkipWhile(fence => !fence.Lines.Contains("fieldsession demo --out first-day"))
                .TakeWhile(fence => !fence.Lines.Contains("quillmere custodian Enter")),
        ];
        Assert.True(before.Length > 20);
        Assert.All(
            before,
            fence =>
                Assert.DoesNotContain(
                    "ST",
                    string.Concat(fence.Lines).Replace("STOP", "", StringComparison.Ordinal),
                    StringComparison.Ordinal
                )
        );
    }

    private static void Follow(Fence fence, AStranger stranger, Dictionary<int, string> told)
    {
        switch (fence.Word)
        {
            case ['f', 'i', 'l', 'e', ' ', .. string file]:
                stranger.Writes(file, fence.Lines);
                break;
            case "sh":
                fence.Lines.ToList().ForEach(stranger.Types);
                break;
            case "keys":
                fence.Lines.ToList().ForEach(stranger.Presses);
                break;
            case "screen":
                told.Add(fence.Place, stranger.Screen);
                break;
            default:
                Assert.Equal("text", fence.Word);
                told.Add(fence.Place, stranger.Said);
                break;
        }
    }
}
