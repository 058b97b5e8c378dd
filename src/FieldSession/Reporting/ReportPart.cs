namespace FieldSession.Reporting;

/// <summary>The parts of a report, in the order it is read.</summary>
public enum ReportPart
{
    /// <summary>The answer card.</summary>
    Answer,

    /// <summary>The verdict in full.</summary>
    Verdict,

    /// <summary>How to read the report.</summary>
    HowToRead,

    /// <summary>What the day was to answer.</summary>
    Question,

    /// <summary>The codes and the checks of the key.</summary>
    Codes,

    /// <summary>The differences.</summary>
    Result,

    /// <summary>Every reading.</summary>
    Readings,

    /// <summary>What was left out, and why.</summary>
    LeftOut,

    /// <summary>What the day can't say.</summary>
    Limits,

    /// <summary>Kinds and segments.</summary>
    Explored,

    /// <summary>What the recordings hear.</summary>
    Ring,

    /// <summary>Ratings and forced choices.</summary>
    Ear,

    /// <summary>The energy days.</summary>
    Energy,

    /// <summary>Car, tyres, meter and people.</summary>
    Facts,

    /// <summary>Calibration, weather and route.</summary>
    Conditions,

    /// <summary>The checks.</summary>
    Checks,

    /// <summary>What was predicted.</summary>
    Predictions,

    /// <summary>The notes.</summary>
    Notes,

    /// <summary>What pins the report to its journal.</summary>
    Provenance,
}
