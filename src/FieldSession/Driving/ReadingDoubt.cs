using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// Why a reading will be asked about at the next stop. It is held against the plan only, never against another code's
/// reading, so that no question can tell how the codes compare.
/// </summary>
public static class ReadingDoubt
{
    /// <summary>The doubt in words; null: none.</summary>
    public static string? Of(ReadingTaken taken, Segment segment, Run run, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(taken);
        ArgumentNullException.ThrowIfNull(segment);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(limits);
        string? again = run.Passed(segment.Number)
            ? DrivingWords.SegmentWasPassedAlready(segment)
            : null;
        return Joined([.. All(taken.Levels, segment, limits), again, .. OfTyping(taken, segment, run, limits)]);
    }

    /// <summary>The doubt that the reading's own value gives rise to, wherever it is; null: none.</summary>
    public static string? OfValue(LevelRange levels, Segment segment, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(segment);
        ArgumentNullException.ThrowIfNull(limits);
        return Joined(All(levels, segment, limits));
    }

    private static string? Joined(IEnumerable<string?> doubts)
    {
        string joined = string.Join("; ", doubts.OfType<string>());
        return joined.Length == 0 ? null : joined;
    }

    private static IEnumerable<string?> All(LevelRange levels, Segment segment, Limits limits) =>
    [
        OfLevel(levels, segment, limits),
        levels.WidthDb > limits.WidthDoubtDb ? DrivingWords.RangeIsWide(levels) : null,
        OfKind(levels, segment.Kind),
    ];

    // A key left out, doubled or swapped often leaves a reading that could be: what gives it away is how it was typed.
    private static IEnumerable<string?> OfTyping(ReadingTaken taken, Segment segment, Run run, Limits limits) =>
    [
        taken.WithoutEnter == true ? DrivingWords.EnterWasMissing : null,
        taken.Swapped && taken.Levels.WidthDb > limits.WidthWarnDb ? DrivingWords.TypedHighFirstAndWide(taken.Levels) : null,
        taken.TwoFigures == true && HasPeakInTenths(run, segment) ? DrivingWords.TwoFiguresOfPeak : null,
        IsRangeInTenths(taken.Levels) && HasOnlyWholeRanges(run) ? DrivingWords.RangeInTenths : null,
    ];

    private static bool HasPeakInTenths(Run run, Segment segment) => segment.Kind.IsImpact && run.Readings.Any(reading => reading.Levels.IsSingle && !IsWhole(reading.Levels));

    private static bool IsRangeInTenths(LevelRange levels) => !levels.IsSingle && !IsWhole(levels);

    private static bool HasOnlyWholeRanges(Run run) => Ranges(run).Any() && Ranges(run).All(IsWhole);

    private static IEnumerable<LevelRange> Ranges(Run run) => run.Readings.Select(reading => reading.Levels).Where(levels => !levels.IsSingle);

    private static bool IsWhole(LevelRange levels) => double.IsInteger(levels.LowDb) && double.IsInteger(levels.HighDb);

    private static string? OfLevel(LevelRange levels, Segment segment, Limits limits)
    {
        if (levels.LowDb < limits.LevelLowestDb || levels.HighDb > limits.LevelHighestDb)
        {
            return DrivingWords.LevelIsOutsideLimits(levels, limits);
        }

        return segment.NominalDb is { } nominal && Math.Abs(levels.MidpointDb - nominal) > limits.NominalDistanceDb
            ? DrivingWords.LevelIsFarFromNominal(limits, nominal)
            : null;
    }

    private static string? OfKind(LevelRange levels, SegmentKind kind) => (kind.IsImpact, levels.IsSingle) switch
    {
        (true, false) => DrivingWords.RangeOnImpactSegment,
        (false, true) => DrivingWords.OneValueOnSteadySegment,
        _ => null,
    };
}
