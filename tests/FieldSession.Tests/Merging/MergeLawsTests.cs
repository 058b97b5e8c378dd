using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Store.Exports;

namespace FieldSession.Tests.Merging;

/// <summary>Whatever laptops typed, and however their strands come together, one study comes of it.</summary>
public sealed class MergeLawsTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Merging_is_commutative_associative_and_idempotent(int seed)
    {
        Crews crews = new Crews(seed, 3).Type(150).Evening().Type(30);
        IReadOnlyList<Line>[] of = [.. crews.Laptops.Select(laptop => laptop.Lines)];
        string[] told =
        [
            Crews.Told(Crews.Merged(Crews.Merged(of[0], of[1]), of[2])),
            Crews.Told(Crews.Merged(of[0], Crews.Merged(of[1], of[2]))),
            Crews.Told(Crews.Merged(Crews.Merged(of[2], of[1]), of[0])),
            Crews.Told(Crews.Merged(of[1], Crews.Merged(of[0], of[2]))),
            Crews.Told(Crews.Merged(Crews.Merged(Crews.Merged(of[0], of[1]), of[2]), Crews.Merged(of[1], of[0]))),
        ];
        Assert.All(told, one => Assert.Equal(told[0], one));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_laptop_sees_while_it_types_what_its_lines_tell_when_they_are_read_again(int seed)
    {
        foreach (Crews.Laptop laptop in new Crews(seed, 2).Type(120).Laptops)
        {
            Logbook again = Logbook.Open(new Making.MemoryJournal(laptop.Lines), laptop.Clock, laptop.Strand);
            Assert.Equal(laptop.Book.Study.Runs.Count, again.Study.Runs.Count);
            Assert.Equal(
                laptop.Book.Study.Runs.Select(run => string.Join(" / ", run.Passages)),
                again.Study.Runs.Select(run => string.Join(" / ", run.Passages))
            );
            Assert.Equal(laptop.Book.Study.Conflicts, again.Study.Conflicts);
            Assert.Equal(laptop.Book.Study.Sessions, again.Study.Sessions);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_line_of_every_laptop_is_in_the_merged_journal_and_keeps_the_rules(int seed)
    {
        Crews crews = new Crews(seed, 3).Type(150).Evening().Type(30);
        IReadOnlyList<Line> all = crews.Laptops.Select(laptop => laptop.Lines).Aggregate((IReadOnlyList<Line>)[], Crews.Merged);
        Assert.Empty(crews.Laptops.SelectMany(laptop => laptop.Lines).Except(all));
        Assert.Empty(JournalRules.BrokenIn(all));
        // a line never is before one of its strand, nor before one that its laptop knew
        IReadOnlyList<Line> ordered = StrandOrder.Of(all);
        Dictionary<(string, int), int> places = ordered.Index().ToDictionary(x => (x.Item.Strand, x.Item.Number), x => x.Index);
        Assert.All(
            ordered,
            line => Assert.True(line.Number == 1 || places[(line.Strand, line.Number - 1)] < places[(line.Strand, line.Number)])
        );
        Assert.All(
            ordered,
            line =>
                Assert.All(
                    StrandOrder.EndsIn(line),
                    end => Assert.True(places[(end.Strand, end.Line)] < places[(line.Strand, line.Number)])
                )
        );
    }

    [Fact]
    public void Every_kind_of_entry_is_written_on_one_of_several_laptops_in_these_tests()
    {
        HashSet<string> written =
        [
            .. Enumerable
                .Range(1, 60)
                .SelectMany(seed => new Crews(seed, 3).Type(150).Evening().Laptops)
                .SelectMany(laptop => laptop.Lines)
                .Select(line => line.Kind),
        ];
        Assert.Empty(EntryKinds.All.Select(kind => kind.Name).Except(written));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void The_comparison_is_the_same_to_the_last_digit(int seed)
    {
        IReadOnlyList<Line>[] of = [.. new Crews(seed, 2).Type(200).Laptops.Select(laptop => laptop.Lines)];
        string one = Compared(Crews.Merged(of[0], of[1]));
        Assert.Equal(one, Compared(Crews.Merged(of[1], of[0])));
    }

    [Fact]
    public void Another_laptop_s_lines_change_the_comparison()
    {
        Assert.Contains(
            Enumerable.Range(1, 10),
            seed =>
            {
                IReadOnlyList<Line>[] of = [.. new Crews(seed, 2).Type(200).Laptops.Select(laptop => laptop.Lines)];
                return Compared(Crews.Merged(of[0], of[1])) != Compared(of[0]);
            }
        );
    }

    private static string Compared(IReadOnlyList<Line> lines)
    {
        FieldSession.State.Study study = Logbook.Fold(lines);
        return ComparisonJson.Of(BlindComparison.InFull(StudyReadings.Of(study), StudyTerms.Of(study)), null);
    }
}
