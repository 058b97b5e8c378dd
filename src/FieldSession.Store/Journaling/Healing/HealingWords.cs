using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What is said of a damaged study: what is lost, what was repaired, what is whole.</summary>
internal static class HealingWords
{
    // the text
    public const string LineIsBroken = "it is no line, or its 64 digits are not the hash of its text";

    public static string LineDoesNotFollow(Line line, Line head) =>
        $"it is line {line.Number} of strand {line.Strand} and does not follow line {head.Number}, the last "
        + "that holds: a line between was changed, removed or put in";

    public static string LineDoesNotBeginStrand(Line line) =>
        $"it is line {line.Number} of strand {line.Strand} and does not begin it: the lines before it are missing";

    // what is lost
    public const string HoldsNoJournal = "it holds no journal";

    public static string NoLineIsLeft(StudyPaths paths, string beside, string fault) =>
        $"{paths.Study}: no line of a study is in it{beside}: {fault}. Nothing was overwritten. Check the path.";

    public static string NorInJournal(StudyPaths paths) => $" nor in {Path.GetFileName(paths.Journal)}";

    public static string JournalIsNotBesideIt(StudyPaths paths) => $", and {Path.GetFileName(paths.Journal)} is not beside it";

    public static string LinesBeforeAreLost(Line first) =>
        $"lines before line {first.Number} of strand {first.Strand} are lost in both copies";

    public const string MoreThanLastLineIsLost = "several lines of the text can't be read, and the study file lacks them";

    public static string PlaceIsDamaged(FoundStudy found) =>
        $"place {found.Store.FaultAt} of the study file is damaged ({found.Store.Fault}); the text does not hold its line";

    public static string StudyIsDamaged(string where, string damage, FoundStudy found, StudyPaths paths) =>
        $"{where}: {damage}. {found.Lines.Count} lines are whole. Nothing was overwritten. Bring back a copy of the "
        + $"study, or save the lines that are whole: 'fieldsession rescue {Path.GetFileName(paths.Study)} --out NEW'.";

    // what was repaired
    public static string StoreIsMadeAgain(StudyPaths paths, string why, string kept) =>
        $"{paths.Study} was damaged ({why}); it was made again from the text; the old file is kept in {kept}.";

    public static string StoreWasBehind(StudyPaths paths, FoundStudy found) =>
        $"{paths.Study} was behind; lines {found.Store.Lines.Count + 1} to {found.Lines.Count} were brought in from the text.";

    public static string JournalWasWrittenAgain(StudyPaths paths, string kept) =>
        $"{paths.Journal} was damaged; it was written again from the copies; the old file is kept in {kept}.";

    public static string HalfLineWasCutOff(StudyPaths paths, string kept) =>
        $"{paths.Journal} ended in half a line that was never acknowledged; it was cut off, and what it was is kept in {kept}.";

    public static string JournalWasShort(StudyPaths paths, FoundStudy found, string kept) =>
        $"{paths.Journal} was short; lines {found.Text.Lines.Count + 1} to {found.Lines.Count} were brought back from the "
        + $"other copy, and what it was is kept in {kept}.";

    public static string JournalWasMissing(StudyPaths paths, FoundStudy found) =>
        $"{paths.Journal} was missing or empty; its {found.Lines.Count} lines were brought back from the other copy.";

    // two copies of one study
    public static string CopiesHaveTwoHistories(string study, Line line) =>
        $"{study}: two different lines are line {line.Number} of strand {line.Strand}: the study has two "
        + "histories. Nothing was overwritten. Verify each copy, keep the one that is right and move the other one away, "
        + "then open the study again.";

    public static string FilesAreOfTwoStudies(string one, string oneName, string other, string otherName) =>
        $"{one} and {other} are of two studies: the first is {oneName}, the second {otherName}. Nothing was changed. Move "
        + "the one that does not belong here away and bring its own file; a study's files are copied together.";

    // saving what is whole
    public static string NothingToRescue(StudyPaths damaged) =>
        $"{damaged.Study}: no line is whole in any copy. Nothing was changed. Bring back a copy of the study.";

    public static string RescueNameIsTaken(string taken) =>
        $"{taken}: a file is there already. Nothing was changed. Choose another name for the new study.";
}
