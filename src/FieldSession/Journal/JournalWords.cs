using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>What is said of entries, lines and stages in which something can't be written.</summary>
internal static class JournalWords
{
    public const string UseNewerProgram = "use a newer program";
    public const string StudyHasNoPlan = "the study has no plan";
    public const string MakeItWithStartFirst = "make it with 'start' first";
    public const string KeyIsOpen = "the key is open: only notes can be added";
    public const string TypeYourWords = "type '; your words'";
    public const string PredictionsAreLocked = "predictions are locked: the data are frozen";
    public const string TypeYourWordsToAddNote = "type '; your words' to add a note";
    public const string NoRunIsOn = "no run is on";
    public const string StartOneWithRunCode = "start one with 'run CODE'";

    public static string LineOfStrandCantBeItsHash(Line line, Exception fault) => $"line {line.Number} ('{line.Kind}') of strand {line.Strand} can't be: {fault.Message} Its hash is right, so it was made by another hand. Nothing was changed.";

    public static string ThisProgramDoesNotKnowEntriesOfKind(string kind, int version) => $"this program does not know entries of kind '{kind}' version {version}";

    public static string LineIsEntryVersionByNewerProgram(LineMark mark, string kind, int version) => $"line {mark.Number} is an entry '{kind}' version {version} by a newer program";

    public static string EntryByNewerProgram(string kind) => $"entry '{kind}' by a newer program";

    public static string TypeRunToStartRun(SpecCode asked, Study study) => $"type 'run {asked}' to start run {study.Runs.Count + 1}";
}
