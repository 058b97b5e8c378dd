namespace FieldSession.Signals;

/// <summary>A band between two frequencies.</summary>
/// <param name="LowerHz">Lower edge, Hz.</param>
/// <param name="UpperHz">Upper edge, Hz, above the lower.</param>
public readonly record struct FrequencyBand(double LowerHz, double UpperHz)
{
    /// <summary>Width, Hz.</summary>
    public double WidthHz => UpperHz - LowerHz;
}
