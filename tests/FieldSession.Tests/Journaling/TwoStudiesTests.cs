using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

/// <summary>Two studies stay two: everything is called day.study, and people copy only the file that they name.</summary>
public sealed class TwoStudiesTests
{
    public static TheoryData<string, string[]> Commands =>
        new()
        {
            { "review", [] },
            { "compare", [] },
            { "enter", [] },
            { "predict", ["--lock", "Ro feature=417 sure=3"] },
            { "report", ["--out", "OUT"] },
            { "export", ["--out", "OUT"] },
            { "score", [] },
            { "merge", ["OTHER"] },
        };

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_text_of_one_beside_the_LiteDB_file_of_another_is_refused_with_both_named_and_nothing_is_written(
        string command,
        string[] words
    )
    {
        using AtThePrompt yesterday = AWholeDay.Sealed();
        using AtThePrompt today = AWholeDay.Sealed(seed: 2);
        string text = Path.ChangeExtension(today.Study, ".journal");
        File.Copy(Path.ChangeExtension(yesterday.Study, ".journal"), text, overwrite: true);
        byte[][] before = [File.ReadAllBytes(text), File.ReadAllBytes(today.Study)];
        string[] names = Directory.GetFiles(Path.GetDirectoryName(today.Study)!);

        string said = today.Must(
            3,
            [
                command,
                today.Study,
                .. words.Select(word =>
                    word switch
                    {
                        "OUT" => today.Here("out"),
                        "OTHER" => yesterday.Study,
                        _ => word,
                    }
                ),
            ],
            typed: "; a note\n"
        );

        Assert.Contains($"{text} and {today.Study} are of two studies", said, StringComparison.Ordinal);
        Assert.Contains("Nothing was changed", said, StringComparison.Ordinal);
        Assert.Equal(before, [File.ReadAllBytes(text), File.ReadAllBytes(today.Study)]);
        Assert.Equal(names, Directory.GetFiles(Path.GetDirectoryName(today.Study)!));
    }

    [Fact]
    public void A_backup_never_takes_the_place_of_another_studys_file()
    {
        using Folder one = new();
        using Folder other = new();
        one.Write(5);
        List<Line> lines = SomeLines.Of(3, strand: SomeLines.OtherLaptop);
        using (StudyFile study = StudyFile.Create(other.Study, new StoppedClock()))
        {
            lines.ForEach(study.Append);
        }

        // only the named file of the other study was copied there, beside an older text of this one
        File.WriteAllBytes(other.Text, TextFile.BytesOf(SomeLines.Of(2)));
        byte[] foreign = File.ReadAllBytes(other.Study);

        using StudyFile opened = one.Open();
        Assert.Throws<StudyExistsException>(() => opened.CopyTo(other.Path));

        Assert.Equal(foreign, File.ReadAllBytes(other.Study));
    }

    [Fact]
    public void An_older_text_of_the_same_study_is_brought_up_and_what_it_was_is_kept()
    {
        using Folder folder = new();
        List<Line> lines = folder.Write(6);
        byte[] older = TextFile.BytesOf(lines[..4]);
        File.WriteAllBytes(folder.Text, older);

        using (StudyFile study = folder.Open())
        {
            Assert.Equal(lines, study.Lines);
            Assert.Contains(
                "lines 5 to 6 were brought back from the other copy, and what it was is kept in",
                Assert.Single(study.Repaired),
                StringComparison.Ordinal
            );
        }

        Assert.Equal(older, File.ReadAllBytes(Directory.GetFiles(folder.Path, "day.journal.damaged-*").Single()));
    }

    [Fact]
    public void Half_a_line_that_is_cut_off_is_kept_in_the_file_as_it_was()
    {
        using Folder folder = new();
        folder.Write(3);
        byte[] torn = [.. File.ReadAllBytes(folder.Text), .. "0123456789abc"u8];
        File.WriteAllBytes(folder.Text, torn);

        folder.Open().Dispose();

        Assert.Equal(torn, File.ReadAllBytes(Directory.GetFiles(folder.Path, "day.journal.damaged-*").Single()));
    }

    [Fact]
    public void A_study_is_known_by_its_first_line_however_many_follow_and_whoever_wrote_them()
    {
        List<Line> lines = SomeLines.Of(5);
        StudyIdentity? identity = StudyState.IdentityOf(lines);
        Assert.Equal(lines[0].Hash, identity?.Hash);
        Assert.Equal(identity, StudyState.IdentityOf(lines[..1]));
        Assert.NotEqual(identity, StudyState.IdentityOf(SomeLines.Of(5, note: "another day")));
        Assert.Null(StudyState.IdentityOf([]));
    }
}
