namespace FieldSession.Signals;

/// <summary>A band between two frequencies.</summary>
/// <param name="LowerHz">Lower edge, Hz.</param>
/// <param name="UpperHz">Upper edge, Hz, above the lower.</param>
public readonly record struct FrequencyBand(double LowerHz, double UpperHz)
{
    /// <summary>Width, Hz.</summary>
    public double WidthHz => UpperHz - LowerHz;
}

/// <summary>A stretch of a recording.</summary>
/// <param name="FromS">Where it begins, s from the first sample.</param>
/// <param name="ToS">Where it ends, s; what lies there is no longer in it.</param>
public readonly record struct TimeWindow(double FromS, double ToS)
{
    /// <summary>Its length, s.</summary>
    public double Seconds => ToS - FromS;
}
