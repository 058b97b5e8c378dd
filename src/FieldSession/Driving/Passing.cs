using FieldSession.State;

namespace FieldSession.Driving;

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
        return study.WithLastRun(run with
        {
            Passages = run.Passages.Add(passage),
            NextSegment = next,
            Furthest = Math.Max(run.Furthest, passage.Segment),
            Ended = next > study.Plan!.Route.Count ? passage.Mark : null,
        });
    }

    /// <summary>What comes next, as the end of an answer: the next segment, or that the run is over.</summary>
    public static string WhatIsNext(Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return after.NextSegment is { } next
            ? $"; next {next.Number} {next.Name}"
            : DrivingWords.RunIsOver(after);
    }
}
