namespace FieldSession.State;

/// <summary>
/// Nothing of ring, bands, spectrum or decay by code is shown before the last prediction is locked: the crew know which way the feature
/// pushes the ring, so a ring level by code would tell them what is behind it.
/// </summary>
public static class RingCover
{
    /// <summary>Whether what recordings hold may be shown by code.</summary>
    public static bool IsOpen(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Opening is not null || study.RingOpening is not null || (study.DataFrozen && !study.StillToPredict.Any());
    }

    /// <summary>Whether somebody typed levels of the bands that hold the ring.</summary>
    public static bool HasTypedBands(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Runs.Exists(run => run.Readings.Any(reading => reading.Extras is { Band200Db: not null } or { Band250Db: not null }));
    }
}
