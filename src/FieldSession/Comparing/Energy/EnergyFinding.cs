using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>What the energy days say about one code against the reference.</summary>
/// <param name="Code">The code.</param>
/// <param name="Reference">The reference code.</param>
/// <param name="Estimate">From the legs that count; null: not to be told.</param>
/// <param name="WithSpoilt">The same from all legs, spoilt ones put back.</param>
/// <param name="Verdict">The verdict in fixed words.</param>
public sealed record EnergyFinding(string Code, string Reference, EnergyEstimate? Estimate, EnergyEstimate? WithSpoilt, string Verdict)
{
    /// <summary>
    /// More paired days that would settle it with the scatter as seen, 1..30; null: it is settled, not within 30, or not known.
    /// </summary>
    public int? MoreDaysAsSeen { get; init; }

    /// <summary>The same with the scatter at its upper 80 % limit.</summary>
    public int? MoreDaysCautious { get; init; }

    /// <summary>p of a difference, allowing for all codes that are asked at once; null: there is one only, or no p is known.</summary>
    public double? PAmongAll { get; init; }

    /// <summary>Whether the words are settled, so that no more days are asked for.</summary>
    public bool IsSettled { get; init; }

    /// <summary>Whether planned energy days are still to be driven: intervals are unfinished then, and no p is known.</summary>
    public bool IsUnfinished { get; init; }

    /// <summary>What it means for the range; null: no usable capacity was told, or nothing can be said.</summary>
    public EnergyRange? Range { get; init; }

    /// <summary>What a reader has to know beside the numbers.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The findings of all codes from two models, without and with the spoilt legs.</summary>
    internal static IReadOnlyList<EnergyFinding> Of(
        IReadOnlyList<string> codes,
        string reference,
        EnergyModel clean,
        EnergyModel all,
        EnergyTerms terms,
        double? referencePerHundredKm
    )
    {
        EnergyLine[] lines = [.. codes.Select(code => clean.Line(code, reference))];
        EnergyEstimate?[] estimates = [.. lines.Select(line => EnergyEstimate.Of(line, terms.MarginPercent))];
        IReadOnlyList<EnergyShare?> shares = EnergyShare.Of(estimates);
        return
        [
            .. codes.Select(
                (code, i) =>
                    Of((code, reference), (lines[i], estimates[i], shares[i]), clean, all, terms) with
                    {
                        Range = EnergyRange.Of(estimates[i], terms.Usable, referencePerHundredKm),
                    }
            ),
        ];
    }

    private static EnergyFinding Of(
        (string Code, string Reference) pair,
        (EnergyLine Line, EnergyEstimate? Estimate, EnergyShare? Share) own,
        EnergyModel clean,
        EnergyModel all,
        EnergyTerms terms
    )
    {
        EnergyShare? known = terms.PlanComplete ? own.Share : null;
        EnergyShare? counted = clean.IsPaired ? known : null;
        int? More(bool cautious) => counted is null ? null : MoreDays.Of(own.Line, terms.MarginPercent, counted, cautious);
        return new EnergyFinding(
            pair.Code,
            pair.Reference,
            AsFarAsKnown(own.Estimate, terms),
            AsFarAsKnown(EnergyEstimate.Of(all.Line(pair.Code, pair.Reference), terms.MarginPercent), terms),
            EnergyVerdict.Of(own.Line, own.Estimate, own.Share, clean, terms)
        )
        {
            MoreDaysAsSeen = More(cautious: false),
            MoreDaysCautious = More(cautious: true),
            PAmongAll = known?.PAmongAll,
            IsSettled = counted is { IsSettled: true },
            IsUnfinished = !terms.PlanComplete,
            Remarks = EnergyRemarks.OfPair(own.Line),
        };
    }

    // before the last planned day no p is known to anybody
    private static EnergyEstimate? AsFarAsKnown(EnergyEstimate? estimate, EnergyTerms terms) =>
        terms.PlanComplete || estimate is null ? estimate : estimate with { P = null, PTost = null };
}

/// <summary>
/// How far the usable energy carries: usable / consumption, in the conditions of these days. The reference's range is from its total energy
/// over its total distance; the code's is that range divided by the ratio of consumption.
/// </summary>
/// <param name="Usable">Usable capacity, kWh or litres.</param>
/// <param name="ReferenceKm">Range on the reference, km.</param>
/// <param name="Km">Range on the code, km.</param>
/// <param name="Lo95Km">Lower end of its 95 % interval, the reference's range taken as it is; null: no interval.</param>
/// <param name="Hi95Km">Upper end.</param>
public sealed record EnergyRange(double Usable, double ReferenceKm, double Km, double? Lo95Km, double? Hi95Km)
{
    /// <summary>Difference of the ranges, percent; positive means further.</summary>
    public double Percent => 100 * ((Km / ReferenceKm) - 1);

    /// <summary>The range of an estimate; null: no estimate or no capacity.</summary>
    internal static EnergyRange? Of(EnergyEstimate? estimate, double? usable, double? referencePerHundredKm)
    {
        if (estimate is null || usable is not { } capacity || referencePerHundredKm is not { } per)
        {
            return null;
        }

        double referenceKm = 100 * capacity / per;
        double? At(double? percent) => percent is { } more ? referenceKm / (1 + (more / 100)) : null;
        return new EnergyRange(capacity, referenceKm, At(estimate.Percent)!.Value, At(estimate.Hi95Percent), At(estimate.Lo95Percent));
    }
}

/// <summary>
/// The verdict of the energy days in fixed words (docs/formulas.md, "Energy days"). "No difference" is never said; being within the noise
/// is a result.
/// </summary>
internal static class EnergyVerdict
{
    /// <summary>The words.</summary>
    public static string Of(EnergyLine line, EnergyEstimate? estimate, EnergyShare? share, EnergyModel model, EnergyTerms terms) =>
        WhyNone(line, estimate, model, terms) is { } reason ? $"no verdict: {reason}" : Words(estimate!, share!, terms.MarginPercent);

    private static string? WhyNone(EnergyLine line, EnergyEstimate? estimate, EnergyModel model, EnergyTerms terms) =>
        line switch
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
        return EnergyEstimate.PercentOf(estimate.LogRatio - half) > marginPercent
            || EnergyEstimate.PercentOf(estimate.LogRatio + half) < -marginPercent;
    }
}
