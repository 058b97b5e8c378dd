using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// The co-driver has read the meter. The fact names no code and no segment: they follow from the run that is on.
/// </summary>
/// <param name="Levels">Low-high range, or one value.</param>
/// <param name="Swapped">Whether the range was typed high first.</param>
/// <param name="Spoilt">What spoilt it, where it was flagged at once; null: clean.</param>
/// <param name="Words">More about what spoilt it; null: none.</param>
public sealed record ReadingTaken(LevelRange Levels, bool Swapped = false, SpoiltCause? Spoilt = null, string? Words = null) : Entry
{
    /// <summary>Whether one value was typed with two figures, in whole decibels; null: it was not.</summary>
    public bool? TwoFigures { get; init; }

    /// <summary>Whether Enter was missing, and the reading was stored when the next figures came; null: it was not.</summary>
    public bool? WithoutEnter { get; init; }

    /// <inheritdoc/>
    public override bool HoldsFlag => Spoilt is not null;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileARunIsOn(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.RunOn is not { } run || study.NextSegment is not { } segment)
        {
            return study;
        }

        Reading reading = new(segment.Number, Levels, mark)
        {
            Swapped = Swapped,
            Spoilt = Spoilt is { } cause ? new Spoiling(cause, Words, Late: Paper is { FlaggedOnSpot: not true }) : null,
            Doubt = ReadingDoubt.Of(this, segment, run, study.Plan!.Limits),
        };
        return Passing.Of(study, run, reading).Undoably(study, mark, Levels.ToString());
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string where = before.NextSegment is { } segment ? $" on {segment.Number} {segment.Name}" : "";
        string spoilt = Spoilt is { } cause ? $", spoilt by {cause.Word()}{(Words is null ? "" : $": {Words}")}" : "";
        string swapped = Swapped ? DrivingWords.TypedHighFirst : "";
        string wide = Levels.WidthDb > (after.Plan?.Limits.WidthWarnDb ?? double.MaxValue) + 1e-9 ? $", {Levels.WidthDb:0.#} dB wide" : "";
        return new Echo($"{Levels} dB{where}{spoilt}{swapped}{wide}{Passing.WhatIsNext(after)}", after.LastRun?.LastReading?.Doubt);
    }
}

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
        string? again = run.Passed(segment.Number) ? DrivingWords.SegmentWasPassedAlready(segment) : null;
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

    private static bool HasPeakInTenths(Run run, Segment segment) =>
        segment.Kind.IsImpact && run.Readings.Any(reading => reading.Levels.IsSingle && !IsWhole(reading.Levels));

    private static bool IsRangeInTenths(LevelRange levels) => !levels.IsSingle && !IsWhole(levels);

    private static bool HasOnlyWholeRanges(Run run) => Ranges(run).Any() && Ranges(run).All(IsWhole);

    private static IEnumerable<LevelRange> Ranges(Run run) =>
        run.Readings.Select(reading => reading.Levels).Where(levels => !levels.IsSingle);

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

    private static string? OfKind(LevelRange levels, SegmentKind kind) =>
        (kind.IsImpact, levels.IsSingle) switch
        {
            (true, false) => DrivingWords.RangeOnImpactSegment,
            (false, true) => DrivingWords.OneValueOnSteadySegment,
            _ => null,
        };
}

/// <summary>How the car moves on along the route: one segment a passage, and the run is over after the last.</summary>
public static class Passing
{
    /// <summary>The study after a passage in the run that is on.</summary>
    public static Study Of(Study study, Run run, Passage passage)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(passage);
        int next = passage.Segment + 1;
        return study.WithLastRun(
            run with
            {
                Passages = run.Passages.Add(passage),
                NextSegment = next,
                Furthest = Math.Max(run.Furthest, passage.Segment),
                Ended = next > study.Plan!.Route.Count ? passage.Mark : null,
            }
        );
    }

    /// <summary>What comes next, as the end of an answer: the next segment, or that the run is over.</summary>
    public static string WhatIsNext(Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return after.NextSegment is { } next ? $"; next {next.Number} {next.Name}" : DrivingWords.RunIsOver(after);
    }
}
