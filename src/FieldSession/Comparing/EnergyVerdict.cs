using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>The verdict of the energy days in fixed words (docs/formulas.md, "Energy days"). "No difference" is never said; being within the noise is a result.</summary>
internal static class EnergyVerdict
{
    /// <summary>The words.</summary>
    public static string Of(EnergyLine line, EnergyEstimate? estimate, EnergyShare? share, EnergyModel model, EnergyTerms terms) =>
        WhyNone(line, estimate, model, terms) is { } reason ? $"no verdict: {reason}" : Words(estimate!, share!, terms.MarginPercent);

    private static string? WhyNone(EnergyLine line, EnergyEstimate? estimate, EnergyModel model, EnergyTerms terms) => line switch
    {
        { Obstacle: EnergyObstacle.NotDriven } => EnergyRemarkWords.CodeNotDrivenBesideAnother,
        { Obstacle: EnergyObstacle.NeverTogether } => EnergyRemarkWords.NoDaysLeadBetweenCodes,
        { Obstacle: EnergyObstacle.Car } => EnergyRemarkWords.TyresAndCarNotSeparated,
        { Obstacle: EnergyObstacle.Driver } => EnergyRemarkWords.TyresAndDriverNotSeparated,
        _ when !model.IsPaired => EnergyRemarkWords.NoSecondCarBeside,
        { UnitVariance: null } => EnergyRemarkWords.TooFewDaysForAnyInterval,
        { Df: < EnergyModel.LeastDf } => EnergyRemarkWords.TooFewDaysToTrust,
        _ when estimate is { StandardError: 0 } => ConclusionWords.NoScatterSeen,
        _ => terms.PlanComplete ? null : EnergyRemarkWords.EnergyDaysNotFinished,
    };

    private static string Words(EnergyEstimate estimate, EnergyShare share, double marginPercent)
    {
        string margin = FormattableString.Invariant($"{marginPercent:0.####} %");
        return (share.ShowsDifference, share.ShowsEquivalence) switch
        {
            (true, true) => ConclusionWords.DifferenceShownButSmallerThan(margin),
            (true, false) when LiesBeyond(estimate, share, marginPercent) => ConclusionWords.DifferenceShownAndLargerThan(margin),
            (true, false) => "difference shown",
            (false, true) => $"equivalent within ±{margin}",
            _ => EnergyRemarkWords.WithinNoiseOfMethod,
        };
    }

    // the interval at the level that the word of a difference needs
    private static bool LiesBeyond(EnergyEstimate estimate, EnergyShare share, double marginPercent)
    {
        double half = StudentT.Quantile(1 - share.DifferenceLevel / 2, estimate.Df) * estimate.StandardError!.Value;
        return EnergyEstimate.PercentOf(estimate.LogRatio - half) > marginPercent || EnergyEstimate.PercentOf(estimate.LogRatio + half) < -marginPercent;
    }
}
