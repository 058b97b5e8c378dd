namespace FieldSession.Comparing;

/// <summary>What a comparison shows at the level that its verdict needs; the verdict's words and the report's lean on it alike.</summary>
/// <param name="ShowsDifference">p of "no difference" is below <paramref name="Alpha"/>.</param>
/// <param name="ShowsEquivalence">p of "beyond the margin" is below <paramref name="Alpha"/>.</param>
/// <param name="Alpha">The level (<see cref="ComparisonTerms.VerdictAlpha"/>), 0..1.</param>
public sealed record Conclusion(bool ShowsDifference, bool ShowsEquivalence, double Alpha)
{
    /// <summary>What an estimate shows; an unknown p shows nothing.</summary>
    internal static Conclusion Of(Estimate overall, double alpha) => new(overall.P < alpha, overall.PTost < alpha, alpha);
}
