using FieldSession.State;

namespace FieldSession.Journal;

/// <summary>What is said of entries, lines and stages in which something can't be written.</summary>
internal static class JournalWords
{
    public const string UseNewerProgram = "use a newer program";
    public const string StudyHasNoPlan = "the study has no plan";
    public const string MakePlanFirst = "make it with 'start' first";
    public const string OnlyNotesOnceKeyIsOpen = "the key is open: only notes can be added";
    public const string NoteForm = "type '; your words'";
    public const string PredictionsAreLocked = "predictions are locked: the data are frozen";
    public const string AddNoteInstead = "type '; your words' to add a note";
    public const string NoRunIsOn = "no run is on";
    public const string StartRunFirst = "start one with 'run CODE'";

    public static string LineMadeByAnotherHand(Line line, Exception fault) =>
        $"line {line.Number} ('{line.Kind}') of strand {line.Strand} can't be: {fault.Message} Its hash is right, so "
        + "another program made it. Nothing was changed.";

    public static string EntryKindIsUnknown(string kind, int version) =>
        $"this program does not know entries of kind '{kind}' version {version}";

    public static string LineNeedsNewerProgram(LineMark mark, string kind, int version) =>
        $"line {mark.Number} is an entry '{kind}' version {version} by a newer program";

    public static string EntriesAreNotRead(IReadOnlyList<KeyValuePair<string, int>> kinds) =>
        $"A newer program wrote this study. This one can't read {string.Join(", ", kinds.Select(kind => $"{kind.Value} '{kind.Key}'"))}. "
        + "What they say is missing here, and nothing can be added. Nothing was changed; use the newer program.";

    public static string EntryOfNewerProgram(string kind) => $"entry '{kind}' by a newer program";

    public static string StartRunOnCode(SpecCode asked, Study study) => $"type 'run {asked}' to start run {study.Runs.Count + 1}";

    public static string EnterStartsRun(Study study) => $"Enter starts run {study.Runs.Count + 1}";

    public const string NothingHasBeenDriven = "nothing has been driven";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string IsNoCodeOfStudy(SpecCode code) => $"{code} is not a code of this study";

    public static string CodesAre(string codes) => $"the codes are {codes}";

    public static string IsNotInCrew(string person) => $"'{person}' is not in the crew";

    public static string CrewIs(string names) => $"the crew is {names}";

    public static string ThereIsNoSegment(int segment) => $"there is no segment {segment}";

    public static string RouteHasSegmentsTo(Study study) => $"the route has segments 1 to {study.Plan!.Route.Count}";
}
