namespace FieldSession.State;

/// <summary>Which segments the day's one main question is answered on; everything else is explored.</summary>
public enum MainMeasure
{
    /// <summary>The steady segments.</summary>
    Steady,

    /// <summary>The impacts.</summary>
    Impact,

    /// <summary>All segments together.</summary>
    All,
}
