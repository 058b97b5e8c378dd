namespace FieldSession.Comparing;

/// <summary>
/// How a segment is read: a low-high range while the display wanders, or the highest value of a single event.
/// The two are analysed apart because their scatter differs (docs/formulas.md). Where a class is asked for, null means all segments together.
/// </summary>
public enum MeasureClass
{
    /// <summary>A range read over a steady surface.</summary>
    Steady,

    /// <summary>A peak read at a joint, kerb or the like.</summary>
    Impact,
}
