namespace FieldSession.Comparing;

/// <summary>What a comparison shows at the level that its verdict needs; the verdict's words and the report's lean on it alike.</summary>
/// <param name="ShowsDifference">p of "no difference", allowing for all that is asked at once, is below its level.</param>
/// <param name="ShowsEquivalence">p of "beyond the margin", allowing for all that is asked at once, is below its level.</param>
/// <param name="Alpha">The level of a difference (<see cref="ComparisonTerms.Levels"/>), 0..1.</param>
public sealed record Conclusion(bool ShowsDifference, bool ShowsEquivalence, double Alpha)
{
    /// <summary>What a pair shows among all that are asked at once; an unknown p shows nothing.</summary>
    internal static Conclusion Of(PairLine pair, CandidateFamily family, ComparisonTerms terms) =>
        new(family.ShowsDifference(pair), family.ShowsEquivalence(pair), terms.Levels.Difference);
}
