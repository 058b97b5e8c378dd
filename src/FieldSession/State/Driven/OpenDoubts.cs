namespace FieldSession.State;

/// <summary>A doubtful reading that nobody has confirmed, corrected or flagged.</summary>
/// <param name="Run">Its run.</param>
/// <param name="Reading">The reading.</param>
public sealed record OpenDoubt(Run Run, Reading Reading)
{
    /// <summary>Its place as it is typed, such as "2.5".</summary>
    public string Place => Run.PlaceOf(Reading);
}

/// <summary>Finds the doubts that are still open, in whichever run: they stay so until they are answered.</summary>
public static class OpenDoubts
{
    /// <summary>Every open doubt, in the order of the runs, those of a run in route order.</summary>
    public static IEnumerable<OpenDoubt> In(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Runs.SelectMany(run =>
            run.Readings.Where(reading => reading.IsToBeAsked && !reading.LeftOut)
                .OrderBy(reading => reading.Segment)
                .Select(reading => new OpenDoubt(run, reading))
        );
    }
}
