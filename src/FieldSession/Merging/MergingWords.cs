using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>What is said of laptops in conflict, and of decisions on it.</summary>
internal static class MergingWords
{
    public const string TooLateToSettleBlind = "the key is open: how a conflict is settled can no longer be decided blind";
    public const string SettleAtNextStop = "settle it at the next stop";
    public const string ThereIsNoSuchConflict = "there is no such conflict";
    public const string ReviewListsConflicts = "'review' lists them";
    public const string OneSideHasToCount = "one of the two has to count";
    public const string SettleOneSideForm = "type 'settle 1 first because WHY' or 'settle 1 second because WHY'";
    public const string SamePlanPartOnBoth = "one part of the plan was changed in two ways";
    public const string SamePredictionOnBoth = "one person's prediction was locked on both laptops";
    public const string SameShiftOnBoth = "one run was shifted on both laptops";
    public const string BothCantBeMeant = "two laptops contradict each other";
    public const string FirstSideCounts = "the first counts";
    public const string SecondSideCounts = "the second counts";
    public const string SettleForm = "type 'settle 1 first because WHY', or 'second', or 'both'";
    public const string DecisionNamesConflictSideReason = "a decision names the conflict, the side that counts, and why";
    public const string NoLaptopsAreInConflict = "no laptops are in conflict";
    public const string LaptopJoinsByItself = "a laptop takes note of the others' lines by itself";
    public const string TypeActInstead = "type the act";

    public static string RunStartedOnBoth(Run run, string car, Run other) => $"run {run.Step + 1} of the order{car} was started twice: as run {other.Number} on {other.Code}, as run {run.Number} on {run.Code}";

    public static string RunReadOnBoth(Run run, Reading reading, string segmentName) => $"run {run.Number}, {reading.Segment}{segmentName} was read on both laptops";

    public static string RunShiftedOnBoth(int number) => $"run {number} was shifted on both laptops; check that its readings are where they belong";

    public static string PlanPartChangedOnBoth(string part, string first, string second) => $"{part} of the plan was changed to {first} and to {second}";

    public static string PredictionLockedOnBoth(string person) => $"the prediction of {person} was locked on both laptops";

    public static string DataWrittenWhileFrozen(string strand, LineMark mark) => $"strand {strand} got data from line {mark.Number} on, while the other laptop had frozen them";

    public static string ThereIsNoConflict(int number, int conflicts) => $"there is no conflict {number}; there are 1 to {conflicts}";

    public static string LaptopTakesNote(int lines, int strands) => $"this laptop takes note of {lines} lines of {strands} other strand{(strands == 1 ? "" : "s")}";
}
