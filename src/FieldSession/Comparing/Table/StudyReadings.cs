using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>The readings of a study as the comparison sees them: by code, with what was spoilt, and when each run was driven.</summary>
public static class StudyReadings
{
    /// <summary>The cause that is on every reading of a session whose calibration drifted too far.</summary>
    public const string VoidSession = "void session";

    /// <summary>
    /// The cause that is on every reading of a bracket that was driven again, where the plan's rule counts the other drive.
    /// </summary>
    public const string DrivenAgain = LeftOutWords.BracketDrivenAgain;

    /// <summary>The cause that is on every reading of an aborted run that the plan's rule does not count.</summary>
    public const string RunAborted = LeftOutWords.RunAborted;

    /// <summary>The cause that is on a reading that was filled in at a stop, where the plan leaves such readings out.</summary>
    public const string FilledAtStop = LeftOutWords.FilledAtStop;

    /// <summary>The cause that is on what a settled conflict between two laptops leaves out.</summary>
    public const string ConflictSettled = "conflict settled";

    /// <summary>Everything read so far, spoilt readings included.</summary>
    public static MeasuredDay Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return new MeasuredDay([]);
        }

        Run[] driven = [.. study.Runs.Where(run => run.Readings.Any())];
        RunPlace[] places = RunPlaces.Of(study, driven);
        Dictionary<int, string> causes = CausesOfRuns(study, plan);
        List<MeasuredLevel> levels = [];
        for (int i = 0; i < driven.Length; i++)
        {
            levels.AddRange(LevelsOf(study, plan, driven[i], places[i], causes.GetValueOrDefault(driven[i].Number)));
        }

        return new MeasuredDay(
            levels,
            study.Runs.Sum(run => MissedIn(run, plan.Route.Count)),
            [.. plan.Route.Select(s => new PlannedSegment(s.Name, s.Kind.Word, ClassOf(s), s.Seconds))]
        )
        {
            OrderRuns = StudyTerms.OrderRunsOf(study),
        };
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

    // a run has one cause, the first that holds
    private static Dictionary<int, string> CausesOfRuns(Study study, Plan plan)
    {
        ImmutableHashSet<int> drivenAgain = Reruns.NotCounted(study);
        ImmutableHashSet<int> aborted = Aborts.NotCounted(study);
        Dictionary<int, string> causes = [];
        foreach (Run run in study.Runs)
        {
            bool isVoid = study.Sessions[run.Session - 1].DriftDb is { } drift && Math.Abs(drift) > plan.Limits.CalibrationDriftVoidDb;
            string? cause =
                drivenAgain.Contains(run.Number) ? DrivenAgain
                : aborted.Contains(run.Number) ? RunAborted
                : isVoid ? VoidSession
                : IsLeftOut(study, ConflictKind.SameRun, run.Started) ? ConflictSettled
                : null;
            if (cause is not null)
            {
                causes.Add(run.Number, cause);
            }
        }

        return causes;
    }

    // whose whole run is another one's place has no flags of its own to weigh
    private static string? CauseOf(Study study, Plan plan, Reading reading, string? runCause) =>
        reading switch
        {
            _ when runCause is DrivenAgain or RunAborted => runCause,
            { LeftOut: true } => reading.Spoilt!.Cause.Word(),
            _ when runCause is not null => runCause,
            { FilledAtStop: true } when plan.FilledLeftOut == true => FilledAtStop,
            _ => IsLeftOut(study, ConflictKind.SameReading, reading.Mark) ? ConflictSettled : null,
        };

    private static IEnumerable<MeasuredLevel> LevelsOf(Study study, Plan plan, Run run, RunPlace place, string? runCause)
    {
        foreach (Reading reading in InRouteOrder(run))
        {
            Segment segment = plan.Route[reading.Segment - 1];
            string? cause = CauseOf(study, plan, reading, runCause);
            yield return new MeasuredLevel(
                run.Number,
                run.Code.Digits,
                segment.Name,
                segment.Kind.Word,
                ClassOf(segment),
                reading.Levels.LowDb,
                reading.Levels.HighDb,
                cause is not null,
                cause,
                place.Minutes,
                place.Car,
                place.Slot,
                place.Session
            );
        }
    }

    /// <summary>Whether a settled conflict of a kind leaves out what is at a mark.</summary>
    internal static bool IsLeftOut(Study study, ConflictKind kind, LineMark mark) =>
        study.Conflicts.Exists(conflict => conflict.Kind == kind && conflict.LeftOut?.Name == mark.Name);

    // While a run is on, what has not been reached yet is not missed.
    private static int MissedIn(Run run, int segments)
    {
        HashSet<int> read = [.. run.Readings.Select(r => r.Segment)];
        return run.IsOn
            ? run.Passages.OfType<Missed>().Select(m => m.Segment).Distinct().Count(segment => !read.Contains(segment))
            : segments - read.Count;
    }
}
