using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>What is said of laptops in conflict, and of decisions on it.</summary>
internal static class MergingWords
{
    public const string UseNewerProgram = "use a newer program";
    public const string KeyIsOpen = "the key is open: how a conflict is settled can no longer be decided blind";
    public const string TypeYourWordsToAddNote = "type '; your words' to add a note";
    public const string SettleItAtNextStop = "settle it at the next stop";
    public const string ThereIsNoSuchConflict = "there is no such conflict";
    public const string ReviewListsThem = "'review' lists them";
    public const string OneOfTwoHasToCount = "one of the two has to count";
    public const string TypeSettleFirstBecauseWhyOrSettleSecond = "type 'settle 1 first because WHY' or 'settle 1 second because WHY'";
    public const string OnePartOfPlanWasChangedInTwo = "one part of the plan was changed in two ways";
    public const string OnePersonsPredictionWasLockedOnBothLaptops = "one person's prediction was locked on both laptops";
    public const string OneRunWasShiftedOnBothLaptops = "one run was shifted on both laptops";
    public const string LaptopsDidWhatBothCantHaveMeant = "laptops did what both can't have meant";
    public const string FirstCounts = "the first counts";
    public const string SecondCounts = "the second counts";
    public const string TypeSettleFirstBecauseWhy = "type 'settle 1 first because WHY', or 'second', or 'both'";
    public const string DecisionNamesConflict = "a decision names the conflict, the side that counts, and why";
    public const string NoLaptopsAreInConflict = "no laptops are in conflict";
    public const string LaptopTakesNoteOfOthersLinesByItself = "a laptop takes note of the others' lines by itself";
    public const string TypeAct = "type the act";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string RunOfWasStartedOnBothLaptops(Run run, string car, Run other) => $"run {run.Step + 1} of the order{car} was started on both laptops, as run {other.Number} on {other.Code} and as run {run.Number} on {run.Code}";

    public static string RunWasReadOnBothLaptops(Run run, Reading reading, string name) => $"run {run.Number}, {reading.Segment}{name} was read on both laptops";

    public static string RunWasShiftedOnBothLaptops(int number) => $"run {number} was shifted on both laptops, so its readings are shifted twice";

    public static string OfPlanWasChangedToAndTo(string what, string to, string to2) => $"{what} of the plan was changed to {to} and to {to2}";

    public static string PredictionOfWasLockedOnBothLaptops(string person) => $"the prediction of {person} was locked on both laptops";

    public static string DataWereWrittenOnStrandFromLineOnWhile(string strand, LineMark mark) => $"data were written on strand {strand} from line {mark.Number} on while they were frozen on the other laptop";

    public static string ThereIsNoConflict(int number, Study study) => $"there is no conflict {number}; there are 1 to {study.Conflicts.Count}";

    public static string ThisLaptopTakesNoteOfLinesOfOther(int sum, int endsCount, string more) => $"this laptop takes note of {sum} lines of {endsCount} other strand{more}";
}
