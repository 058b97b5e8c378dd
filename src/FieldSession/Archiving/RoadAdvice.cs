using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>One segment in the place of another.</summary>
/// <param name="Out">The segment of the plan that tells less per minute.</param>
/// <param name="In">A segment of the archive that is not in the plan and tells more.</param>
public sealed record RoadSwap(SegmentSum Out, SegmentSum In);

/// <summary>What earlier days say of a plan's road (docs/team.md, "Choosing the road").</summary>
/// <param name="Swaps">Steady segments to change, those that gain most first.</param>
/// <param name="Missing">The most telling segment of each kind that the archive has and the plan has not.</param>
/// <param name="Spoilt">Segments of the plan that are too often spoilt.</param>
/// <param name="RunsNow">Runs a code that show a difference of the plan's margin in 4 of 5 days, on the plan's steady segments; null: not
/// known.</param>
/// <param name="RunsThen">The same after the swaps; null: not known.</param>
public sealed record RoadAdvice(
    ImmutableArray<RoadSwap> Swaps,
    ImmutableArray<SegmentSum> Missing,
    ImmutableArray<SegmentSum> Spoilt,
    int? RunsNow,
    int? RunsThen
)
{
    private const int MostSwaps = 3;

    // own choices, no source: less gain than this is within what few days can tell, and a third of the readings lost is more than weather
    private const double LeastGain = 1.5;
    private const double TooOftenSpoilt = 1.0 / 3;
    private const int FewestReadings = 6;
    private const int FewestStudies = 2;

    /// <summary>The advice for a plan; null: the archive knows none of its steady segments.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="studies">Finished studies of the archive, on whatever loop.</param>
    public static RoadAdvice? Of(Plan plan, IEnumerable<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArchivedStudy[] finished = [.. studies.Where(study => study.IsFinished)];
        SegmentSum[] known = [.. ArchiveAnswers.SegmentsOf(finished).Where(sum => sum.Studies >= FewestStudies)];
        SegmentSum[] driven = [.. known.Where(sum => plan.Route.Any(segment => IsSame(segment, sum)))];
        SegmentSum[] other = [.. known.Except(driven)];
        SegmentSum[] steady = [.. driven.Where(sum => IsSteady(sum) && sum.PerDb2Minute is not null)];
        if (steady.Length == 0)
        {
            return null;
        }

        RoadSwap[] swaps =
        [
            .. steady
                .OrderBy(sum => sum.PerDb2Minute)
                .Zip(other.Where(sum => IsSteady(sum) && sum.PerDb2Minute is not null), (worst, best) => new RoadSwap(worst, best))
                .TakeWhile(swap => swap.In.PerDb2Minute >= LeastGain * swap.Out.PerDb2Minute)
                .Take(MostSwaps),
        ];
        double? runSd = ArchiveSum.Of(finished).FirstOrDefault(sum => sum is { By: "class", Group: "steady" })?.RunSdDb;
        SegmentSum[] then = [.. steady.Except(swaps.Select(swap => swap.Out)), .. swaps.Select(swap => swap.In)];
        return new RoadAdvice(
            [.. swaps],
            [
                .. other
                    .Where(sum => sum.PerDb2Minute is not null && plan.Route.All(segment => segment.Kind.Word != sum.Kind))
                    .DistinctBy(sum => sum.Kind),
            ],
            [.. driven.Where(sum => sum.Taken >= FewestReadings && sum.SpoiltShare > TooOftenSpoilt)],
            Runs(plan, runSd, steady),
            Runs(plan, runSd, then)
        );
    }

    private static bool IsSame(Segment segment, SegmentSum sum) => segment.Name == sum.Segment && segment.Kind.Word == sum.Kind;

    private static bool IsSteady(SegmentSum sum) => !SegmentKind.Of(sum.Kind).IsImpact;

    // a reading that is left out leaves its run's mean with more scatter: its segment's variance counts as over the share that stays
    private static int? Runs(Plan plan, double? runSd, SegmentSum[] segments)
    {
        double variance = segments.Average(sum => sum.ReadingSdDb!.Value * sum.ReadingSdDb.Value * sum.Taken / sum.Counted);
        return runSd is { } known
            ? DaySize.Of(new SizeTerms(known, Math.Sqrt(variance), segments.Length, plan.MarginDb, plan.MarginDb)).RunsForDifference
            : null;
    }
}

/// <summary>The advice on a road in plain words.</summary>
public static class RoadWords
{
    /// <summary>What earlier days say of the road, a sentence each, at most 15 words.</summary>
    public static IEnumerable<string> Of(RoadAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return
        [
            .. advice.Swaps.Select(swap =>
                string.Create(
                    CultureInfo.CurrentCulture,
                    $"Drive {swap.In.Segment} for {swap.Out.Segment}: it says {swap.In.PerDb2Minute / swap.Out.PerDb2Minute:0.#} "
                        + $"times as much per minute."
                )
            ),
            .. advice.Missing.Select(sum => $"No {sum.Kind} segment is in the plan: add {sum.Segment}."),
            .. advice.Spoilt.Select(sum =>
                string.Create(
                    CultureInfo.CurrentCulture,
                    $"{sum.Segment} lost {sum.SpoiltShare * 100:0} % of its readings: choose another."
                )
            ),
            .. Saved(advice),
        ];
    }

    private static IEnumerable<string> Saved(RoadAdvice advice) =>
        (advice.Swaps.Length, advice.RunsNow, advice.RunsThen) switch
        {
            (0, { } now, _) => [$"The road is good: no segment of the archive saves a run; {now} runs per code are needed."],
            (_, { } now, { } then) when then < now => [$"With these segments {then} runs per code are enough instead of {now}."],
            (> 0, { } now, _) => [$"That saves no run: {now} runs per code are needed either way."],
            _ => [],
        };
}
