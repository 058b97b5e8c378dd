namespace FieldSession.Comparing;

/// <summary>The verdict of the energy days in fixed words (docs/method.md, "Energy days"). "No difference" is never said; being within the noise is a result.</summary>
internal static class EnergyVerdict
{
    private const double Alpha = 0.05;

    /// <summary>The words.</summary>
    public static string Of(EnergyLine line, EnergyEstimate? estimate, EnergyModel model, EnergyTerms terms) =>
        WhyNone(line, estimate, model, terms) is { } reason ? $"no verdict: {reason}" : Words(estimate!, terms.MarginPercent);

    private static string? WhyNone(EnergyLine line, EnergyEstimate? estimate, EnergyModel model, EnergyTerms terms) => line switch
    {
        { Obstacle: EnergyObstacle.NotDriven } => "not comparable: a code was not driven beside another car",
        { Obstacle: EnergyObstacle.NeverTogether } => "not comparable: no days lead from one code to the other",
        { Obstacle: EnergyObstacle.Car } => "not comparable: tyres and car cannot be told apart, the tyres were not swapped between the cars",
        { Obstacle: EnergyObstacle.Driver } => "not comparable: tyres and driver cannot be told apart",
        _ when !model.IsPaired => "days are not comparable: no second car drove beside",
        { UnitVariance: null } => "too few days for any interval",
        { Df: < EnergyModel.LeastDf } => "too few days: one comparison of like with like gives no interval that can be trusted",
        _ when estimate is { StandardError: 0 } => "no scatter seen at this display resolution",
        _ => terms.PlanComplete ? null : "the planned energy days are not driven to their end",
    };

    private static string Words(EnergyEstimate estimate, double marginPercent)
    {
        bool different = estimate.P < Alpha;
        bool equivalent = estimate.PTost < Alpha;
        string margin = FormattableString.Invariant($"{marginPercent:0.##} %");
        return (different, equivalent) switch
        {
            (true, true) => $"difference shown, but smaller than {margin}",
            (true, false) when estimate.Lo95Percent > marginPercent || estimate.Hi95Percent < -marginPercent => $"difference shown and larger than {margin}",
            (true, false) => "difference shown",
            (false, true) => $"equivalent within ±{margin}",
            _ => "within the noise of the method: these days can neither show a difference nor rule one out",
        };
    }
}
