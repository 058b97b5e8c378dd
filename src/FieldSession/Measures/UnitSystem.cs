namespace FieldSession.Measures;

/// <summary>The units a crew types and reads in. Values are held in metric units either way.</summary>
public enum UnitSystem
{
    /// <summary>km/h, m, degC, m/s.</summary>
    Metric,

    /// <summary>mph, mi, degF, mph of wind.</summary>
    Imperial,
}
