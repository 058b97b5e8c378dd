using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journaling;

public sealed class JournalCheckTests : IDisposable
{
    private readonly Folder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_sound_study_holds_and_names_the_end_of_its_chain()
    {
        List<Line> lines = _folder.Write(12);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.True(check.Holds);
        Assert.Equal(12, check.Text.LinesHolding);
        Assert.Equal(12, check.Store.LinesHolding);
        Assert.Equal(new StrandHead(SomeLines.OneLaptop, 12, lines[^1].Hash), Assert.Single(check.Text.Heads));
    }

    [Fact]
    public void An_edited_line_of_the_text_is_found_though_the_other_copy_holds()
    {
        _folder.Write(12);
        string[] text = File.ReadAllLines(_folder.Text);
        text[4] = text[4].Replace("dry", "wet", StringComparison.Ordinal);
        File.WriteAllLines(_folder.Text, text);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.False(check.Holds);
        Assert.Equal(5, check.Text.FirstFailing);
        Assert.Contains("not the hash", check.Text.Why);
        Assert.Equal(4, check.Text.LinesHolding);
        Assert.True(check.Store.Holds);
    }

    [Fact]
    public void An_edited_line_with_a_fresh_hash_breaks_the_chain_at_the_next_line()
    {
        List<Line> lines = _folder.Write(12);
        string[] text = File.ReadAllLines(_folder.Text);
        text[4] = SomeLines.After(lines[3], note: "the road is wet").ToString();
        File.WriteAllLines(_folder.Text, text);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.Equal(6, check.Text.FirstFailing);
        Assert.Contains("does not follow", check.Text.Why);
        Assert.Equal(5, check.FirstDifference);
    }

    [Fact]
    public void An_edited_last_line_with_a_fresh_hash_is_found_by_the_other_copy()
    {
        List<Line> lines = _folder.Write(3);
        string[] text = File.ReadAllLines(_folder.Text);
        text[2] = SomeLines.After(lines[1], note: "the road is wet").ToString();
        File.WriteAllLines(_folder.Text, text);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.True(check.Text.Holds);
        Assert.Equal(3, check.FirstDifference);
        Assert.False(check.Holds);
        Assert.Throws<TwoHistoriesException>(_folder.Open);
        Assert.Equal(text, File.ReadAllLines(_folder.Text));
    }

    [Fact]
    public void A_removed_line_is_found()
    {
        _folder.Write(12);
        string[] text = File.ReadAllLines(_folder.Text);
        File.WriteAllLines(_folder.Text, text.Where((_, i) => i != 6));

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.Equal(7, check.Text.FirstFailing);
        Assert.Contains("does not follow line 6, the last that holds", check.Text.Why);
    }

    [Fact]
    public void A_rotten_document_is_found_by_its_place()
    {
        _folder.Write(12);
        byte[] pages = File.ReadAllBytes(_folder.Study);
        int at = pages.AsSpan().IndexOf("the road is dry, 9"u8);
        pages[at] ^= 4;
        File.WriteAllBytes(_folder.Study, pages);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.Equal(9, check.Store.FirstFailing);
        Assert.True(check.Text.Holds);
    }

    [Fact]
    public void A_check_changes_nothing_and_can_be_made_while_the_study_is_open()
    {
        List<Line> lines = SomeLines.Of(5);
        using StudyFile study = StudyFile.Create(_folder.Study, new StoppedClock());
        lines.ForEach(study.Append);
        byte[] before = new Disk().ReadAll(_folder.Text);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.True(check.Text.Holds);
        Assert.Equal(5, check.Text.LinesHolding);
        Assert.Equal(before, new Disk().ReadAll(_folder.Text));
        Assert.Equal(["day-log.study", "day.journal", "day.study"], _folder.Names);
        study.Append(SomeLines.After(lines[^1]));
    }

    [Fact]
    public void A_missing_copy_is_named()
    {
        _folder.Write(4);
        File.Delete(_folder.Text);

        JournalCheck check = JournalCheck.Of(_folder.Study);

        Assert.False(check.Text.IsThere);
        Assert.False(check.Holds);
        Assert.True(check.Store.Holds);
        Assert.Equal(["day.study"], _folder.Names);
    }
}
