using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Hostile;

/// <summary>What has no end is not read to its end.</summary>
public sealed class LimitsTests
{
    [Fact]
    public void Of_a_line_without_end_no_more_is_kept_than_shows_that_it_is_too_long()
    {
        using Endless input = new(characters: 10_000_000);
        long before = GC.GetAllocatedBytesForCurrentThread();

        string line = TypedLines.Next(input)!;

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100_000);
        Assert.Contains("more than 4000 characters", $"{new ADay().Book.Write(line).Objection}", StringComparison.Ordinal);
        Assert.Null(TypedLines.Next(input));
    }

    [Theory]
    [InlineData("5860\r\n59-61\n", new[] { "5860", "59-61" })]
    [InlineData("\n\nend", new[] { "", "", "end" })]
    [InlineData("", new string[0])]
    public void Lines_end_as_any_system_ends_them(string typed, string[] lines)
    {
        using StringReader input = new(typed);

        Assert.Equal(lines, lines.Select(_ => TypedLines.Next(input)));
        Assert.Null(TypedLines.Next(input));
    }

    [Fact]
    public void A_text_that_is_longer_than_any_study_is_not_opened_and_stays_as_it_is()
    {
        using Folder folder = new();
        folder.Write(3);
        using (FileStream text = new(folder.Text, FileMode.Open))
        {
            text.SetLength(StudyLimits.LongestTextBytes + 1);
        }

        StudyTooLargeException refusal = Assert.Throws<StudyTooLargeException>(folder.Open);

        Assert.Contains($"{folder.Text}: 512 MiB are more than", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(StudyLimits.LongestTextBytes + 1, new FileInfo(folder.Text).Length);
        Assert.Equal(["day.journal", "day.study"], folder.Names);
    }

    [Fact]
    public void A_full_study_takes_no_line_that_it_could_not_open_again()
    {
        using Folder folder = new();
        List<Line> lines = SomeLines.Of(3);
        Disk disk = new();
        long most = TextOnDisk.LengthOf(lines) - 1;
        using TextFile text = new(disk, folder.Text, disk.Open(folder.Text, FileMode.CreateNew), [], most);
        text.Append(lines[0]);
        text.Append(lines[1]);

        LineNotSafeException refusal = Assert.Throws<LineNotSafeException>(() => text.Append(lines[2]));

        Assert.Contains("the study is full", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(TextOnDisk.LengthOf(lines[..2]), new FileInfo(folder.Text).Length);
    }

    private sealed class Endless(long characters) : TextReader
    {
        private long _left = characters;

        public override int Read() => _left-- > 0 ? '5' : -1;
    }
}
