using System.Text.Json;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journal;

/// <summary>
/// A study that a newer program went on with, opened by this one, which plays the release before: it says what it can't read, and changes
/// nothing.
/// </summary>
public sealed class ANewerStudyTests
{
    [Theory]
    [InlineData("tilt", 1, """{"degrees":3}""", "1 'tilt'")]
    [InlineData("note", 2, """{"words":"hello","run":1}""", "1 'note'")]
    [InlineData("note", 1, """{"words":"hello","mood":"good"}""", "1 'note'")]
    public void What_can_not_be_read_is_named_by_every_command_and_nothing_is_added(string kind, int version, string body, string named)
    {
        using AtThePrompt day = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);
        WriteAsANewerProgram(day.Study, kind, version, body);
        byte[] before = File.ReadAllBytes(day.Here("day.journal"));

        foreach (
            string[] words in new string[][]
            {
                ["review", day.Study],
                ["compare", day.Study],
                ["export", day.Study, "--out", day.Here("new")],
                ["enter", day.Study],
            }
        )
        {
            day.Run(words, "; one more\n");
            Assert.Contains("A newer program wrote this study", day.Said, StringComparison.Ordinal);
            Assert.Contains(named, day.Said, StringComparison.Ordinal);
        }

        Assert.Contains("use a newer program", day.Said, StringComparison.Ordinal);
        Assert.Contains("by a newer program; verify with that one", day.Must(1, ["verify", day.Study]), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(day.Here("day.journal")));
    }

    [Fact]
    public void A_study_without_such_entries_says_nothing_of_them()
    {
        using AtThePrompt day = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(6);
        day.Must(0, ["review", day.Study]);
        Assert.DoesNotContain("newer program", day.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_by_another_hand_is_not_taken_for_one_of_a_newer_program()
    {
        Line line = Line.Make(
            1,
            Line.NoHash,
            new StoppedClock().Now,
            "00000000000000aa",
            EntryKinds.Of(new NoteMade("a")).Name,
            1,
            json => Write(json, """{"words":7,"mood":"good"}""")
        );
        Assert.Throws<JsonException>(() => EntryKinds.EntryIn(line));
    }

    private static void WriteAsANewerProgram(string study, string kind, int version, string body)
    {
        using StudyFile file = StudyFile.Open(study, new StoppedClock());
        Line last = file.Lines[^1];
        file.Append(Line.Make(last.Number + 1, last.Hash, last.At, last.Strand, kind, version, json => Write(json, body)));
    }

    private static void Write(Utf8JsonWriter json, string body)
    {
        using JsonDocument document = JsonDocument.Parse(body);
        document.RootElement.WriteTo(json);
    }
}
