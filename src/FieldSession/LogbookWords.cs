using FieldSession.Journal;
using FieldSession.Predicting;

namespace FieldSession;

/// <summary>What the logbook says of lines that it can't take, and what the check of a journal finds.</summary>
internal static class LogbookWords
{
    public const string AskForEntry = "type a reading (5860), run CODE, m, u, t, '; note', end, or ask for help";
    public const string WriteItAsSeveralNotes = "write it as several notes";
    public const string LineHasUnreadableCharacters = "the line has characters that can't be read";
    public const string TypeItAgainInPlainLetters = "type it again in plain letters";
    public const string CommitmentIsNotHexDigits = "the commitment is not 64 hex digits";
    public const string SomethingOtherThanNoteFollowsReveal = "something other than a note follows the reveal";
    public const string DataFollowFirstLockedPrediction = "data follow the first locked prediction";
    public const string KeyOpenedBeforeAllPredictions = "the key was opened before all predictions were locked";
    public const string CommitmentIsNotAsLineSays = "whether the key gives the published commitment is not as the line says";

    public static string LineHasNoBody(Line line) => $"line {line.Number} has no body";

    public static string IsNoEntry(string shortened) => $"'{shortened}' is no entry";

    public static string WasMeant(Verb near) => $"did you mean '{near.Example}'?";

    public static string LineIsTooLong => $"the line has more than {Typed.LongestLine} characters";

    public static string EntryCantBeRead(Told told) => $"the entry '{told.Line.Kind}' can't be read";

    public static string EntryNeedsNewerProgram(EntryByNewerProgram newer) => $"the entry '{newer.Kind}' version {newer.Version} is by a newer program; verify with that one";

    public static string SecondPredictionOf(PredictionLocked prediction) => $"a second prediction of {prediction.Person}";

    public static string LineTakenBackOrLeftOut(int number, string kind) => $"line {number} ('{kind}'): taken back, or left out by a decision";
}
