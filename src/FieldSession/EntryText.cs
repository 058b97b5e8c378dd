using FieldSession.Checking;
using FieldSession.Driving;
using FieldSession.Flagging;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Predicting;
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
            ? Fact(paper.Line, study) with
            {
                Paper = paper.When,
            }
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
            ?? Parsed.No(
                LogbookWords.IsNoEntry(Shortened(text)),
                VerbTable.Near(word) is { } near ? LogbookWords.WasMeant(near, study) : Hint
            );
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

/// <summary>What the logbook says of lines that it can't take, and what the check of a journal finds.</summary>
internal static class LogbookWords
{
    public const string AskForEntry = "type a reading (5860) or a word; ? lists them";
    public const string WriteItAsSeveralNotes = "write it as several notes";
    public const string LineHasUnreadableCharacters = "the line has characters that can't be read";
    public const string TypeItAgainInPlainLetters = "type it again in plain letters";
    public const string CommitmentIsNotHexDigits = "the commitment is not 64 hex digits";
    public const string SomethingOtherThanNoteFollowsReveal = "something other than a note, or marks read again, follows the reveal";
    public const string DataFollowFirstLockedPrediction = "data follow the first locked prediction";
    public const string ClipsPlayedBeforeAllPredictions = "clips were played before all predictions were locked";
    public const string KeyOpenedBeforeAllPredictions = "the key was opened before all predictions were locked";
    public const string MarksReadBeforeReveal = "marks were read again before the key was open";
    public const string MarksAreNotAsLineSays = "how the marks compare with the key is not as the line says";
    public const string CommitmentIsNotAsLineSays = "whether the key gives the published commitment is not as the line says";

    public static string LineHasNoBody(Line line) => $"line {line.Number} has no body";

    public const string IsNoPaperTime = "the time of the paper is not understood";
    public const string PaperTimeForm = "type 'at=10:42 5860', with a date 'at=2026-11-26T10:42 5860'";
    public const string IsNeverOnPaper = "this is done now, never on paper";
    public const string TypeItWithoutTime = "type it without 'at='";
    public const string SpotIsAboutFlag = "'spot' belongs to a flag, and there is none";
    public const string LeaveSpotAway = "leave 'spot' out, or add the cause letter";
    public const string TypePaperInOrder = "type the lines of the paper in order, before any later act";

    public static string TimeIsToCome(DateTimeOffset at) => $"{at:yyyy-MM-dd} {at:t} is in the future";

    public static string TimeIsBeforeLast(DateTimeOffset at, DateTimeOffset last) =>
        $"{at:yyyy-MM-dd} {at:t} is before the last act, {last:yyyy-MM-dd} {last:t}";

    public static string TypedLater(OnPaper paper) =>
        $"; typed later, {paper.At:yyyy-MM-dd} {paper.At:t}{(paper.FlaggedOnSpot == true ? ", flagged on the spot" : "")}";

    public static string IsNoEntry(string shortened) => $"'{shortened}' is not understood";

    public static string WasMeant(Verb near, Study study) => $"did you mean '{near.ExampleIn(study)}'?";

    public static string LineIsTooLong => $"the line has more than {Typed.LongestLine} characters";

    public static string EntryCantBeRead(Told told) => $"the entry '{told.Line.Kind}' can't be read";

    public static string EntryNeedsNewerProgram(EntryByNewerProgram newer) =>
        $"the entry '{newer.Kind}' version {newer.Version} is by a newer program; verify with that one";

    public static string SecondPredictionOf(PredictionLocked prediction) => $"a second prediction of {prediction.Person}";

    public static string LineTakenBackOrLeftOut(int number, string kind) =>
        $"line {number} ('{kind}'): taken back, or left out by a decision";
}
