using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

public sealed class StudyFileTests : IDisposable
{
    private readonly Folder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_line_comes_back_exactly_and_in_order()
    {
        List<Line> written = _folder.Write(250);

        using StudyFile study = _folder.Open();

        Assert.Equal(written, study.Lines);
        Assert.Empty(study.Repaired);
        Assert.False(study.IsStoreBehind);
    }

    [Fact]
    public void After_a_close_only_the_study_and_its_journal_lie_there()
    {
        _folder.Write(3);

        Assert.Equal(["day.journal", "day.study"], _folder.Names);
    }

    [Fact]
    public void The_text_can_be_checked_without_the_program()
    {
        List<Line> written = _folder.Write(5);

        Assert.Equal(written.Select(line => line.ToString()), File.ReadAllLines(_folder.Text));
    }

    [Fact]
    public void A_line_that_does_not_follow_is_refused_and_nothing_is_written()
    {
        List<Line> lines = SomeLines.Of(3);
        using StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock());
        study.Append(lines[0]);

        Assert.Throws<ArgumentException>(() => study.Append(lines[2]));
        study.Append(lines[1]);
        study.Dispose();

        using StudyFile again = _folder.Open();
        Assert.Equal(lines[..2], again.Lines);
    }

    [Fact]
    public void Two_laptops_keep_a_chain_each_in_one_file()
    {
        Line first = SomeLines.After(null);
        Line other = SomeLines.After(null, SomeLines.OtherLaptop);
        Line second = SomeLines.After(first);
        using (StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock()))
        {
            study.Append(first);
            study.Append(other);
            study.Append(second);
        }

        using StudyFile again = _folder.Open();
        Assert.Equal([first, other, second], again.Lines);
    }

    [Fact]
    public void A_study_that_is_open_cannot_be_opened_again()
    {
        _folder.Write(2);
        using StudyFile study = _folder.Open();

        StudyInUseException refusal = Assert.Throws<StudyInUseException>(_folder.Open);

        Assert.Contains("day.study", refusal.Message);
        Assert.Contains("Close it there", refusal.Message);
    }

    [Fact]
    public void A_closed_study_takes_no_line()
    {
        StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock());
        study.Dispose();
        study.Dispose();

        Assert.Throws<ObjectDisposedException>(() => study.Append(SomeLines.After(null)));
    }

    [Fact]
    public void A_study_cannot_be_named_like_its_journal()
    {
        Assert.Throws<StudyNameException>(() => StudyFile.Create(_folder.Text, new StoppedClock()));
        Assert.Empty(_folder.Names);
    }

    [Fact]
    public void A_new_study_never_takes_the_place_of_a_file()
    {
        File.WriteAllText(_folder.Study, "somebody's notes");

        Assert.Throws<StudyExistsException>(() => StudyFile.Create(_folder.Study, new StoppedClock()));

        Assert.Equal("somebody's notes", File.ReadAllText(_folder.Study));
        Assert.Equal(["day.study"], _folder.Names);
    }

    [Fact]
    public void A_missing_study_or_folder_is_said_and_nothing_is_made()
    {
        Assert.Throws<StudyMissingException>(_folder.Open);
        Assert.Throws<StudyMissingException>(() => StudyFile.Create(_folder["no/such/day.study"], new StoppedClock()));
        Assert.Empty(_folder.Names);
    }

    [Theory]
    [InlineData(6)]
    [InlineData(20000)]
    public void A_foreign_file_is_refused_and_stays_as_it_is(int length)
    {
        byte[] foreign = new byte[length];
        new Random(7).NextBytes(foreign);
        File.WriteAllBytes(_folder.Study, foreign);

        Assert.Throws<StudyDamagedException>(_folder.Open);

        Assert.Equal(foreign, File.ReadAllBytes(_folder.Study));
        Assert.Equal(["day.study"], _folder.Names);
    }

    [Fact]
    public void A_database_of_another_program_is_refused_and_stays_as_it_is()
    {
        using (LiteDB.LiteDatabase other = new(_folder.Study))
        {
            other.GetCollection("shopping").Insert(new LiteDB.BsonDocument { ["what"] = "bread" });
        }

        byte[] before = File.ReadAllBytes(_folder.Study);

        Assert.Throws<StudyDamagedException>(_folder.Open);

        Assert.Equal(before, File.ReadAllBytes(_folder.Study));
    }

    [Fact]
    public void The_study_file_is_plain_LiteDB()
    {
        List<Line> written = _folder.Write(3);

        using LiteDB.LiteDatabase database = new($"Filename={_folder.Study};ReadOnly=true");
        LiteDB.BsonDocument[] documents = [.. database.GetCollection("journal").FindAll()];

        Assert.Equal([1L, 2L, 3L], documents.Select(document => document["_id"].AsInt64));
        Assert.Equal(written.Select(line => line.Json), documents.Select(document => document["json"].AsString));
        Assert.Equal(written.Hashes(), documents.Select(document => Convert.ToHexStringLower(document["hash"].AsBinary)));
    }

    [Fact]
    public void A_copy_made_while_writing_is_the_whole_study()
    {
        List<Line> lines = SomeLines.Of(30);
        using Folder stick = new();
        using StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock());
        lines[..20].ForEach(study.Append);
        study.CopyTo(stick.Path);
        lines[20..].ForEach(study.Append);

        Assert.True(JournalCheck.Of(stick.Study).Holds);
        Assert.Equal(["day.journal", "day.study"], stick.Names);
        using (StudyFile copy = stick.Open())
        {
            Assert.Equal(lines[..20], copy.Lines);
        }

        study.CopyTo(stick.Path);
        using StudyFile newer = stick.Open();
        Assert.Equal(lines, newer.Lines);
        Assert.Empty(newer.Repaired);
    }

    [Fact]
    public void A_copy_never_takes_the_place_of_another_study()
    {
        using Folder stick = new();
        stick.Write(4);
        byte[] before = File.ReadAllBytes(stick.Study);
        using StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock());
        study.Append(SomeLines.After(null, SomeLines.OtherLaptop));

        Assert.Throws<StudyExistsException>(() => study.CopyTo(stick.Path));

        Assert.Equal(before, File.ReadAllBytes(stick.Study));
    }

    [Fact]
    public void A_large_study_opens_with_a_look_at_the_end_of_its_store()
    {
        List<Line> lines = SomeLines.Of(10_050);
        _folder.Write(1);
        File.WriteAllLines(_folder.Text, lines.Select(line => line.ToString()));
        using (StudyFile grown = _folder.Open())
        {
            Assert.Contains("behind", Assert.Single(grown.Repaired));
        }

        using StudyFile study = _folder.Open();

        Assert.Equal(lines, study.Lines);
        Assert.Empty(study.Repaired);
    }
}
