namespace FieldSession.Comparing;

/// <summary>The three views on one pair: all segments, steady ones, impacts. A class is null if the route has no such segment.</summary>
/// <param name="All">Over all segments (overall value only).</param>
/// <param name="Steady">Over the steady segments.</param>
/// <param name="Impact">Over the impact segments.</param>
public sealed record ClassComparisons(ClassComparison? All, ClassComparison? Steady, ClassComparison? Impact)
{
    /// <summary>The view of a class; null asks for all segments.</summary>
    public ClassComparison? Of(MeasureClass? measureClass) => measureClass switch
    {
        null => All,
        MeasureClass.Steady => Steady,
        _ => Impact,
    };
}

/// <summary>One code against the reference.</summary>
/// <param name="Code">The code.</param>
/// <param name="Reference">The reference code.</param>
/// <param name="Classes">From the readings that count.</param>
/// <param name="WithSpoilt">The same from all readings, spoilt ones put back.</param>
public sealed record CodeComparison(string Code, string Reference, ClassComparisons Classes, ClassComparisons WithSpoilt);
