using FieldSession.Journal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journal;

/// <summary>
/// Journals outlive programs: one line of every kind, as the first version wrote it, is kept for ever. It is read to the
/// same fact and written to the same bytes by every later program. Lines are added to the file, never changed; a member
/// added to a kind later is absent from its old line, so it is null unless told.
/// </summary>
public sealed class GoldenLineTests
{
    private const string Kept = "tests/FieldSession.Tests/Journal/lines-v1.txt";

    public static TheoryData<string> EveryKind => [.. EntryKinds.All.Select(kind => kind.Name)];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void A_kept_line_is_read_and_written_to_the_same_bytes(string kind)
    {
        Line line = KeptLine(kind);
        Entry entry = EntryKinds.EntryIn(line);
        Assert.IsNotType<EntryByNewerProgram>(entry);
        Assert.Equal(line.ToString(), WrittenAsBefore(entry, line).ToString());
    }

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void The_fact_of_a_kept_line_is_written_today_as_it_was_then(string kind)
    {
        Line line = KeptLine(kind);
        Entry fact = OneOfEachKind.All.Single(entry => EntryKinds.Of(entry).Name == kind);
        Assert.Equal(line.ToString(), WrittenAsBefore(fact, line).ToString());
    }

    [Fact]
    public void A_kept_line_is_of_a_kind_that_is_still_known() =>
        Assert.Empty(KeptLines().Select(line => line.Kind).Except(EntryKinds.All.Select(kind => kind.Name)));

    private static Line WrittenAsBefore(Entry entry, Line line) =>
        EntryKinds.Of(entry).Write(entry, line.Number, line.PreviousHash, line.At, line.Strand);

    private static Line KeptLine(string kind)
    {
        Line? line = KeptLines().FirstOrDefault(kept => kept.Kind == kind);
        Assert.True(
            line is not null,
            $"{Kept} has no line of kind '{kind}'; add one of it to OneOfEachKind and to the end of the file:\n{LineOf(kind)}"
        );
        return line;
    }

    private static IEnumerable<Line> KeptLines() =>
        File.ReadLines(Path.Combine(Repository.Root, Kept))
            .Select(text => Line.Parse(text) ?? throw new InvalidDataException($"no valid line: {text}"));

    private static string LineOf(string kind)
    {
        Entry? fact = OneOfEachKind.All.FirstOrDefault(entry => EntryKinds.Of(entry).Name == kind);
        return fact is null ? "" : EntryKinds.Of(fact).Write(fact, 1, Line.NoHash, new StoppedClock().Now, "00000000000000aa").ToString();
    }
}
