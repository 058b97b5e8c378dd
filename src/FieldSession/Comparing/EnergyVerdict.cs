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
        { Obstacle: EnergyObstacle.NotDriven } => ComparingWords.CodeNotDrivenBesideAnother,
        { Obstacle: EnergyObstacle.NeverTogether } => ComparingWords.NoDaysLeadBetweenCodes,
        { Obstacle: EnergyObstacle.Car } => ComparingWords.TyresAndCarNotSeparated,
        { Obstacle: EnergyObstacle.Driver } => ComparingWords.TyresAndDriverNotSeparated,
        _ when !model.IsPaired => ComparingWords.NoSecondCarBeside,
        { UnitVariance: null } => ComparingWords.TooFewDaysForAnyInterval,
        { Df: < EnergyModel.LeastDf } => ComparingWords.TooFewDaysToTrust,
        _ when estimate is { StandardError: 0 } => ComparingWords.NoScatterSeen,
        _ => terms.PlanComplete ? null : ComparingWords.EnergyDaysNotFinished,
    };

    private static string Words(EnergyEstimate estimate, double marginPercent)
    {
        bool different = estimate.P < Alpha;
        bool equivalent = estimate.PTost < Alpha;
        string margin = FormattableString.Invariant($"{marginPercent:0.####} %");
        return (different, equivalent) switch
        {
            (true, true) => ComparingWords.DifferenceShownButSmallerThan(margin),
            (true, false) when estimate.Lo95Percent > marginPercent || estimate.Hi95Percent < -marginPercent => ComparingWords.DifferenceShownAndLargerThan(margin),
            (true, false) => "difference shown",
            (false, true) => $"equivalent within ±{margin}",
            _ => ComparingWords.WithinNoiseOfMethod,
        };
    }
}
