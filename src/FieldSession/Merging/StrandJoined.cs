using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>Where a strand ended when another laptop took note of it.</summary>
/// <param name="Strand">The strand, 16 hex digits.</param>
/// <param name="Line">Number of its last line.</param>
/// <param name="Hash">Hash of that line: the joining line pins all of it.</param>
public sealed record StrandEnd(string Strand, int Line, string Hash);

/// <summary>
/// A laptop takes note of the other laptops' lines: with the first line of its own strand, and with its first line after a merge that
/// brought something new. It is written by itself, before the act that is typed, and says what that act could know.
/// </summary>
/// <param name="Ends">Of each other strand in the file the last line.</param>
public sealed record StrandJoined(ImmutableList<StrandEnd> Ends) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => new(MergingWords.LaptopJoinsByItself, MergingWords.TypeActInstead);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        ImmutableDictionary<string, int> known = Ends.Where(end => end.Strand != OnDisk(mark, study))
            .GroupBy(end => end.Strand == study.FirstStrand ? "" : end.Strand)
            .ToImmutableDictionary(ends => ends.Key, ends => ends.Max(end => end.Line));
        bool isNew = mark.Strand is not null && !study.Hand.HasBegun;
        return study with
        {
            Hand = study.Hand with { Known = known, Began = isNew ? known : study.Hand.Began, HasBegun = true },
            Undoables = [],
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(MergingWords.LaptopTakesNote(Ends.Sum(end => end.Line), Ends.Count));

    private static string? OnDisk(LineMark mark, Study study) => mark.Strand ?? study.FirstStrand;
}

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

    public static string RunStartedOnBoth(Run run, string car, Run other) =>
        $"run {run.Step + 1} of the order{car} was started twice: as run {other.Number} on {other.Code}, as run {run.Number} on {run.Code}";

    public static string RunReadOnBoth(Run run, Reading reading, string segmentName) =>
        $"run {run.Number}, {reading.Segment}{segmentName} was read on both laptops";

    public static string RunShiftedOnBoth(int number) =>
        $"run {number} was shifted on both laptops; check that its readings are where they belong";

    public static string PlanPartChangedOnBoth(string part, string first, string second) =>
        $"{part} of the plan was changed to {first} and to {second}";

    public static string PredictionLockedOnBoth(string person) => $"the prediction of {person} was locked on both laptops";

    public static string DataWrittenWhileFrozen(string strand, LineMark mark) =>
        $"strand {strand} got data from line {mark.Number} on, while the other laptop had frozen them";

    public static string ThereIsNoConflict(int number, int conflicts) => $"there is no conflict {number}; there are 1 to {conflicts}";

    public static string LaptopTakesNote(int lines, int strands) =>
        $"this laptop takes note of {lines} lines of {strands} other strand{(strands == 1 ? "" : "s")}";
}
