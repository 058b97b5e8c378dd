namespace FieldSession.Tests.Making;

public sealed class GoldenTests
{
    [Fact]
    public void A_text_that_changed_shows_the_first_lines_that_differ_and_not_the_whole() =>
        Assert.Equal(
            "line 1, alike: a\nline 2, now:\nB\nc\nline 2, approved:\nb\nc",
            Golden.FirstDifference(["a", "b", "c"], ["a", "B", "c"])
        );
}
