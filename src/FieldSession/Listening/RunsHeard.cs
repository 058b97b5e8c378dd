using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>Which runs a recording holds, by the clock.</summary>
public static class RunsHeard
{
    /// <summary>The runs of which it holds half of the windows and more; or why there is none, and what to do.</summary>
    /// <param name="study">The study.</param>
    /// <param name="survey">What was read of the recording.</param>
    /// <param name="clock">When it began.</param>
    /// <param name="asked">The only run that is asked for; null: all.</param>
    public static (ImmutableArray<Run> Runs, Objection? Objection) Of(Study study, Survey survey, RecordingClock clock, int? asked)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(clock);
        ImmutableArray<Run> runs = [.. study.Runs.Where(run => (asked is null || run.Number == asked) && IsHeld(study, run, survey.Seconds, clock.Offset!))];
        return runs.IsEmpty ? ([], WhyNone(study, survey, clock, asked)) : (runs, null);
    }

    private static Objection WhyNone(Study study, Survey survey, RecordingClock clock, int? asked)
    {
        Run? part = study.Runs.Find(run => (asked is null || run.Number == asked) && HeldOf(study, run, survey.Seconds, clock.Offset!).Held > 0);
        return survey.HasPistonphone ? new Objection(ListeningWords.PistonphoneAlone, ListeningWords.GiveOtherTone)
            : part is null ? new Objection(ListeningWords.NoRunInIt(clock.BegunAt, survey.Seconds, asked), ListeningWords.GiveRightTime)
            : new Objection(ListeningWords.LessThanHalfOfRun(part.Number), ListeningWords.JoinParts);
    }

    private static bool IsHeld(Study study, Run run, double seconds, ClockOffset offset)
    {
        (int held, int asked) = HeldOf(study, run, seconds, offset);
        return held > 0 && held * 2 >= asked;
    }

    private static (int Held, int Asked) HeldOf(Study study, Run run, double seconds, ClockOffset offset)
    {
        ImmutableArray<HeardWindow> windows = HeardWindow.Of(run, study.Plan!.Route, offset);
        return (windows.Count(window => window.Window.FromS >= 0 && window.Window.ToS <= seconds), windows.Length);
    }
}
