using FieldSession.Checking;
using FieldSession.Driving;
using FieldSession.Flagging;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession;

/// <summary>The one grammar of typed lines, in the entry box of the drive screen and on standard input alike.</summary>
public static class EntryText
{
    private const string Hint = LogbookWords.AskForEntry;

    /// <summary>Whether a line is passed over: empty, or a remark that begins with #.</summary>
    public static bool IsPassedOver(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return string.IsNullOrWhiteSpace(line) || line.TrimStart()[0] == '#';
    }

    /// <summary>The fact that a typed line means in the study as it is, or what to type instead.</summary>
    public static Parsed Parse(string line, Study study)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(study);
        if (ObjectionToText(line) is { } objection)
        {
            return new Parsed(null, objection);
        }

        string text = line.Replace('\t', ' ').Trim();
        if (!PaperTime.Begins(text))
        {
            return Fact(text, study);
        }

        return PaperTime.Parse(text) is { } paper
            ? Fact(paper.Line, study) with { Paper = paper.When }
            : Parsed.No(LogbookWords.IsNoPaperTime, LogbookWords.PaperTimeForm);
    }

    private static Parsed Fact(string text, Study study)
    {
        string word = Typed.Words(text).FirstOrDefault("");
        return ReadingText.Parse(text)
            ?? NoteText.Parse(text, study.Plan)
            ?? (word.Length == 1 ? OfOneLetter(text, study) : VerbTable.Of(word)?.Read(text, study))
            ?? WeatherText.Parse(text, study.Plan?.Units ?? UnitSystem.Metric)
            ?? CheckText.Parse(text, study.Plan?.Units ?? UnitSystem.Metric)
            ?? Parsed.No(LogbookWords.IsNoEntry(Shortened(text)), VerbTable.Near(word) is { } near ? LogbookWords.WasMeant(near) : Hint);
    }

    private static Parsed? OfOneLetter(string text, Study study) =>
        MoveText.Parse(text, study) ?? FlagText.Parse(text, study) ?? StopText.Parse(text, study);

    private static Objection? ObjectionToText(string line)
    {
        if (line.Length > Typed.LongestLine)
        {
            return new Objection(LogbookWords.LineIsTooLong, LogbookWords.WriteItAsSeveralNotes);
        }

        bool broken = line.Any(c => (char.IsControl(c) && c != '\t') || c == '\uFFFD');
        return broken ? new Objection(LogbookWords.LineHasUnreadableCharacters, LogbookWords.TypeItAgainInPlainLetters) : null;
    }

    private static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "...";
}
