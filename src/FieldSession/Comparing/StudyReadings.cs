using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The readings of a study as the comparison sees them: by code, with what was spoilt, and when each run was driven.</summary>
public static class StudyReadings
{
    /// <summary>The cause that stands on every reading of a session whose calibration drifted too far.</summary>
    public const string VoidSession = "void session";

    /// <summary>The cause that stands on every reading of a bracket that was driven again, where the plan's rule counts the other drive.</summary>
    public const string DrivenAgain = "bracket driven again";

    /// <summary>
    /// Two runs whose middles lie closer than this were not driven at the times of their lines, but typed in afterwards.
    /// Minutes; own rule: no loop of a road test is driven in less.
    /// </summary>
    public const double ShortestRunMinutes = 2;

    /// <summary>Everything read so far, spoilt readings included.</summary>
    public static MeasuredDay Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return new MeasuredDay([]);
        }

        ImmutableHashSet<int> drivenAgain = Rerun.NotCounted(study);
        Run[] driven = [.. study.Runs.Where(run => run.Readings.Any())];
        double?[] minutes = Minutes(driven);
        List<MeasuredLevel> levels = [];
        for (int i = 0; i < driven.Length; i++)
        {
            levels.AddRange(LevelsOf(study, plan, driven[i], minutes[i], drivenAgain.Contains(driven[i].Number)));
        }

        return new MeasuredDay(
            levels,
            study.Runs.Sum(run => MissedIn(run, plan.Route.Count)),
            [.. plan.Route.Select(s => new PlannedSegment(s.Name, s.Kind.Word, ClassOf(s), s.Seconds))]);
    }

    /// <summary>
    /// The readings of a run in route order, those of one segment as they were typed: a sum over them then does not depend on the
    /// order in which a crew caught up, and is the same for a file that holds them in this order.
    /// </summary>
    public static IEnumerable<Reading> InRouteOrder(Run run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.Readings.OrderBy(reading => reading.Segment);
    }

    /// <summary>How a segment is read.</summary>
    public static MeasureClass ClassOf(Segment segment)
    {
        ArgumentNullException.ThrowIfNull(segment);
        return segment.Kind.IsImpact ? MeasureClass.Impact : MeasureClass.Steady;
    }

    private static IEnumerable<MeasuredLevel> LevelsOf(Study study, Plan plan, Run run, double? minutes, bool isDrivenAgain)
    {
        Session session = study.Sessions[run.Session - 1];
        bool isVoid = session.DriftDb is { } drift && Math.Abs(drift) > plan.Limits.CalibrationDriftVoidDb;
        string? runCause = isDrivenAgain ? DrivenAgain : isVoid ? VoidSession : null;
        string? sessionName = study.Sessions.Count > 1 ? $"{run.Session}" : null;
        foreach (Reading reading in InRouteOrder(run))
        {
            Segment segment = plan.Route[reading.Segment - 1];
            yield return new MeasuredLevel(
                run.Number,
                run.Code.Digits,
                segment.Name,
                segment.Kind.Word,
                ClassOf(segment),
                reading.Levels.LowDb,
                reading.Levels.HighDb,
                reading.LeftOut || runCause is not null,
                reading.LeftOut ? reading.Spoilt!.Cause.Word() : runCause,
                minutes,
                Car: run.Car,
                Session: sessionName);
        }
    }

    // While a run is on, what has not been reached yet is not missed.
    private static int MissedIn(Run run, int segments)
    {
        HashSet<int> read = [.. run.Readings.Select(r => r.Segment)];
        return run.IsOn
            ? run.Passages.OfType<Missed>().Select(m => m.Segment).Distinct().Count(segment => !read.Contains(segment))
            : segments - read.Count;
    }

    private static double?[] Minutes(Run[] runs)
    {
        if (!InOrder(runs))
        {
            return new double?[runs.Length];
        }

        double?[] middles = [.. runs.Select(run => (double?)MiddleOf(run, runs[0].Started.At))];
        for (int i = 1; i < middles.Length; i++)
        {
            if (middles[i] - middles[i - 1] < ShortestRunMinutes)
            {
                return new double?[runs.Length];
            }
        }

        return middles;
    }

    // The journal says what came first. Times that say otherwise are those of a clock that was set back.
    private static bool InOrder(Run[] runs)
    {
        DateTimeOffset[] times = [.. runs.SelectMany(run => (DateTimeOffset[])[run.Started.At, run.Ended?.At ?? run.Passages[^1].Mark.At])];
        return times.Zip(times.Skip(1)).All(pair => pair.First <= pair.Second);
    }

    private static double MiddleOf(Run run, DateTimeOffset start)
    {
        DateTimeOffset end = run.Ended?.At ?? run.Passages[^1].Mark.At;
        return ((run.Started.At - start).TotalMinutes + (end - start).TotalMinutes) / 2;
    }
}
