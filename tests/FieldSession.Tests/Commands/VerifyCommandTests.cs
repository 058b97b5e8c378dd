using System.Text.Json;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

public sealed class VerifyCommandTests : IDisposable
{
    private readonly AtThePrompt _prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void The_head_of_the_blind_summary_noted_on_paper_is_found_again_after_the_reveal()
    {
        string review = _prompt.Must(0, ["review", _prompt.Study]);
        string head = review[(review.IndexOf("head ", StringComparison.Ordinal) + 5)..][..64];
        int lines = Lines().Count;
        _prompt.Predict(_prompt.Now().Codes.First()).Must(0, _prompt.RevealWords("a.key"));
        Assert.Contains($"that of line {lines} of {Lines().Count}", Verify(0, "--head", head));
        Assert.Contains($"that of line {lines} of", Verify(0, "--head", head[..16].ToUpperInvariant()));
    }

    [Fact]
    public void The_report_carries_the_head_hash_too()
    {
        _prompt.Must(0, ["report", _prompt.Study, "--out", _prompt.Here("report")]);
        Assert.Contains(Lines()[^1].Hash, File.ReadAllText(_prompt.Here("report/report.md")));
    }

    [Fact]
    public void A_hash_of_no_line_is_a_no_and_no_hash_at_all_is_wrong()
    {
        Assert.Contains("NO line", Verify(1, "--head", new string('a', 64)));
        Assert.Contains("not a hash", Verify(2, "--head", "12ab"));
        Assert.Contains("not a hash", Verify(2, "--head", new string('x', 64)));
    }

    [Fact]
    public void A_journal_written_again_as_a_whole_holds_by_itself_and_fails_by_the_noted_hash()
    {
        string head = Lines()[^1].Hash;
        Forge(lines => lines.Where((_, i) => i != lines.Count - 2));
        Assert.Contains("the journal holds", Verify(0));
        Assert.Contains("NO line", Verify(1, "--head", head));
    }

    [Fact]
    public void A_reading_slipped_in_after_the_first_prediction_is_named()
    {
        _prompt.Predict(_prompt.Now().Codes.First());
        Entry reading = EntryText.Parse("weather air=30", _prompt.Now()).Entry!;
        Forge(lines => lines.Append(reading));
        Assert.Contains($"line {Lines().Count}: data follow the first locked prediction", Verify(1));
    }

    [Fact]
    public void Anything_but_a_note_after_the_reveal_is_named()
    {
        _prompt.Predict(_prompt.Now().Codes.First()).Must(0, _prompt.RevealWords("a.key"));
        _prompt.Enter("; tyres went back to the shop\n");
        Verify(0);
        Forge(lines => lines.Append(EntryText.Parse("predict Ada feature=417 sure=5", _prompt.Now()).Entry!));
        Assert.Contains("something other than a note, or marks read again, follows the reveal", Verify(1));
    }

    [Fact]
    public void A_changed_prediction_a_key_opened_too_early_and_a_false_word_on_the_commitment_are_named()
    {
        _prompt.Predict(_prompt.Now().Codes.First()).Must(0, _prompt.RevealWords("a.key"));
        Entry[] whole = [.. Lines().Select(EntryKinds.EntryIn)];
        Forge(_ => [.. whole[..^1], whole[^2], whole[^1]]);
        Assert.Contains("a second prediction of Tam", Verify(1));
        Forge(_ => [.. whole[..^2], whole[^1]]);
        Assert.Contains("before all predictions were locked", Verify(1));
        FieldSession.Revealing.KeyOpened opened = (FieldSession.Revealing.KeyOpened)whole[^1];
        Forge(_ =>
            [
                .. whole[..^1],
                opened with
                {
                    Key = [.. opened.Key.Select((line, i) => line with { Spec = opened.Key[opened.Key.Count - 1 - i].Spec })],
                },
            ]
        );
        Assert.Contains("not as the line says", Verify(1));
    }

    [Fact]
    public void A_commitment_that_is_no_hash_and_an_entry_that_cant_be_read_are_named()
    {
        Entry[] whole = [.. Lines().Select(EntryKinds.EntryIn)];
        FieldSession.Sealing.SpecsSealed seal = whole.OfType<FieldSession.Sealing.SpecsSealed>().Single();
        Forge(_ => [.. whole.Select(entry => ReferenceEquals(entry, seal) ? seal with { Commitment = "none" } : entry)]);
        Assert.Contains("line 2: the commitment is not 64 hex digits", Verify(1));
        Line[] lines = [.. Lines()];
        Line odd = Line.Make(
            lines.Length + 1,
            lines[^1].Hash,
            lines[^1].At,
            lines[^1].Strand,
            "run",
            1,
            json => json.WriteStringValue("no run")
        );
        Line newer = Line.Make(odd.Number + 1, odd.Hash, odd.At, odd.Strand, "telemetry", 3, WriteNothing);
        Write([.. lines, odd, newer]);
        string said = Verify(1);
        Assert.Contains($"line {odd.Number}: the entry 'run' can't be read", said);
        Assert.Contains($"line {newer.Number}: the entry 'telemetry' version 3 is by a newer program", said);
    }

    private string Verify(int code, params string[] more) => _prompt.Must(code, ["verify", _prompt.Study, .. more]);

    private IReadOnlyList<Line> Lines() => JournalCheck.Of(_prompt.Study).LinesToFirstFailing;

    // A forger with the program's source: a whole new chain whose hashes hold.
    private void Forge(Func<List<Entry>, IEnumerable<Entry>> change)
    {
        Line first = Lines()[0];
        List<Line> forged = [];
        foreach (Entry entry in change([.. Lines().Select(EntryKinds.EntryIn)]))
        {
            forged.Add(
                EntryKinds.Of(entry).Write(entry, forged.Count + 1, forged.LastOrDefault()?.Hash ?? Line.NoHash, first.At, first.Strand)
            );
        }

        Write(forged);
    }

    private void Write(List<Line> lines)
    {
        foreach (string file in Directory.GetFiles(_prompt.Here(""), "day*"))
        {
            File.Delete(file);
        }

        using StudyFile study = StudyFile.Create(_prompt.Study, _prompt.Clock);
        lines.ForEach(study.Append);
    }

    private static void WriteNothing(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteEndObject();
    }
}
