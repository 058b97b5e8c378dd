using FieldSession.Journal;
using FieldSession.Tests.Journaling;

namespace FieldSession.Tests.Archiving;

/// <summary>A study is known by its first line, so that it counts once however often it was copied, cut short or merged.</summary>
public sealed class StudiesCountOnceTests
{
    private const int Cases = 200;

    [Fact]
    public void Any_set_of_copies_prefixes_and_merges_of_n_studies_counts_n()
    {
        for (int seed = 0; seed < Cases; seed++)
        {
            Random chance = new(seed);
            int studies = chance.Next(1, 6);
            List<Copy> copies = [];
            for (int i = 0; i < studies; i++)
            {
                (List<Line> one, List<Line> other) = TwoLaptops($"study {seed} {i}", chance);
                copies.Add(new Copy([.. one, .. other]));
                copies.AddRange(
                    Enumerable
                        .Range(0, chance.Next(0, 8))
                        .Select(_ =>
                            chance.Next(3) switch
                            {
                                0 => copies[^1] with { },
                                1 => new Copy(one[..chance.Next(4, one.Count + 1)]),
                                _ => new Copy([.. other[..chance.Next(1, other.Count + 1)], .. one[..chance.Next(4, one.Count + 1)]]),
                            }
                        )
                );
            }

            Copy[] mixed = [.. copies.OrderBy(_ => chance.Next())];
            StudyCopies<Copy>[] found = [.. Of(mixed)];

            Assert.Equal(studies, found.Length);
            Assert.All(found, study => Assert.NotNull(study.Newest));
            Assert.Equal(mixed.Length, found.Sum(study => 1 + study.Others.Length));
            Assert.All(
                found,
                study =>
                    Assert.Equal(
                        mixed.Where(copy => copy.State.Study == study.Study).Max(copy => copy.Lines.Count),
                        study.Newest!.Lines.Count
                    )
            );
        }
    }

    [Fact]
    public void Copies_that_went_on_differently_are_both_named_until_one_holds_the_lines_of_both()
    {
        (List<Line> one, List<Line> other) = TwoLaptops("a day", new Random(1));
        Copy first = new(one);
        Copy second = new([.. one[..4], .. other]);

        StudyCopies<Copy> apart = Assert.Single(Of([first, new Copy(one[..3]), second]));
        Assert.Null(apart.Newest);
        Assert.Equal([first, second], apart.Others.OrderByDescending(copy => copy == first));

        Copy merged = new([.. one, .. other]);
        Assert.Equal(merged, Assert.Single(Of([first, second, merged])).Newest);
    }

    [Fact]
    public void An_old_copy_that_was_written_on_is_no_earlier_state()
    {
        List<Line> lines = SomeLines.Of(9);
        List<Line> written = [.. lines[..5], .. SomeLines.Of(2, after: lines[4], note: "the road is wet")];
        Assert.Null(Assert.Single(Of([new Copy(lines), new Copy(written)])).Newest);
    }

    [Fact]
    public void Only_copies_that_differ_are_read_again()
    {
        List<Line> lines = SomeLines.Of(9);
        int read = 0;
        _ = EachStudyOnce
            .Of(Enumerable.Range(0, 300).Select(_ => new Copy([.. lines])), copy => copy.State, copy => Counted(copy.Lines))
            .ToArray();
        Assert.Equal(0, read);

        IReadOnlyList<Line> Counted(IReadOnlyList<Line> told)
        {
            read++;
            return told;
        }
    }

    private static IEnumerable<StudyCopies<Copy>> Of(IEnumerable<Copy> copies) =>
        EachStudyOnce.Of(copies, copy => copy.State, copy => copy.Lines);

    // the second laptop took the study over after the fourth line
    private static (List<Line> One, List<Line> Other) TwoLaptops(string note, Random chance)
    {
        List<Line> one = SomeLines.Of(chance.Next(5, 12), note: note);
        Line joined = Line.Make(
            1,
            Line.NoHash,
            one[3].At,
            SomeLines.OtherLaptop,
            "joined",
            1,
            body =>
            {
                body.WriteStartObject();
                body.WriteStartArray("ends");
                body.WriteStartObject();
                body.WriteString("strand", SomeLines.OneLaptop);
                body.WriteNumber("line", 4);
                body.WriteString("hash", one[3].Hash);
                body.WriteEndObject();
                body.WriteEndArray();
                body.WriteEndObject();
            }
        );
        Assert.Single(StrandOrder.EndsIn(joined));
        return (one, [joined, .. SomeLines.Of(chance.Next(1, 6), SomeLines.OtherLaptop, joined, note)]);
    }

    private sealed record Copy(IReadOnlyList<Line> Lines)
    {
        public StudyState State { get; } = StudyState.Of(Lines)!;
    }
}
