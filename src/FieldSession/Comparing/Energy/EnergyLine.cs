using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>Why two codes cannot be held against each other, or not for certain.</summary>
internal enum EnergyObstacle
{
    /// <summary>Nothing rules it out.</summary>
    None,

    /// <summary>One of the codes has no stretch that counts.</summary>
    NotDriven,

    /// <summary>No chain of days leads from one code to the other.</summary>
    NeverTogether,

    /// <summary>Each code stayed on its car: tyres and car cannot be told apart.</summary>
    Car,

    /// <summary>Each code had its driver: tyres and driver cannot be told apart.</summary>
    Driver,
}

/// <summary>The difference of two codes in ln(consumption), with what its error is made of.</summary>
/// <param name="LogRatio">ln of the ratio code over reference; null: not to be told.</param>
/// <param name="Df">Degrees of freedom of the scatter.</param>
internal sealed record EnergyLine(double? LogRatio, int Df)
{
    /// <summary>What rules out the line.</summary>
    public EnergyObstacle Obstacle { get; init; }

    /// <summary>Variance of a stretch about the model; null without degrees of freedom.</summary>
    public double? UnitVariance { get; init; }

    /// <summary>Variance of the difference in units of the variance of a stretch.</summary>
    public double Leverage { get; init; }

    /// <summary>Variance of the difference that the steps of the displays alone make.</summary>
    public double ResolutionVariance { get; init; }

    /// <summary>Whether the stretches agree better than their displays can show, so that the display's step carries the error.</summary>
    public bool ResolutionApplied => UnitVariance is { } variance && variance * Leverage < ResolutionVariance;

    /// <summary>
    /// Standard error of the difference: from the scatter, which holds the displays' steps as well, but never less than those alone; null:
    /// unknown.
    /// </summary>
    public double? StandardError => UnitVariance is { } variance ? Math.Sqrt(Math.Max(variance * Leverage, ResolutionVariance)) : null;

    /// <summary>No line.</summary>
    public static EnergyLine None(EnergyObstacle obstacle) => new(null, 0) { Obstacle = obstacle };
}

/// <summary>
/// How much more the code takes than the reference, percent: 100 (exp(d) - 1) of the difference d of logarithms, limits likewise. Null:
/// these days do not give it. Positive means more energy.
/// </summary>
/// <param name="LogRatio">ln of the ratio code over reference.</param>
/// <param name="Percent">The difference, percent.</param>
public sealed record EnergyEstimate(double LogRatio, double Percent)
{
    private const double Power = 0.80;
    private const double Alpha = 0.05;

    /// <summary>Standard error of <see cref="LogRatio"/>.</summary>
    public double? StandardError { get; init; }

    /// <summary>Degrees of freedom; an interval needs 2.</summary>
    public required int Df { get; init; }

    /// <summary>Lower end of the 95 % interval, percent.</summary>
    public double? Lo95Percent { get; init; }

    /// <summary>Upper end of the 95 % interval, percent.</summary>
    public double? Hi95Percent { get; init; }

    /// <summary>Two-sided p: how often such days part at least this far where the codes take the same.</summary>
    public double? P { get; init; }

    /// <summary>Lower end of the 90 % interval, percent: the one to hold against the margin.</summary>
    public double? Lo90Percent { get; init; }

    /// <summary>Upper end of the 90 % interval, percent.</summary>
    public double? Hi90Percent { get; init; }

    /// <summary>p of the two one-sided tests against ln(1 - margin) and ln(1 + margin); small means "within the margin".</summary>
    public double? PTost { get; init; }

    /// <summary>The margin that <see cref="PTost"/> asks about, percent; null with it.</summary>
    public double? MarginPercent { get; init; }

    /// <summary>Scatter of a stretch, percent: 100 sqrt(exp(s^2) - 1), the coefficient of variation of a log-normal value.</summary>
    public double? StretchScatterPercent { get; init; }

    /// <summary>Smallest difference that such days show with a chance of 80 %, percent.</summary>
    public double? Mdd80Percent { get; init; }

    /// <summary>Whether the step of the displays carries the error.</summary>
    public bool ResolutionApplied { get; init; }

    /// <summary>100 (exp(d) - 1).</summary>
    public static double PercentOf(double logRatio) => 100 * (Math.Exp(logRatio) - 1);

    /// <summary>The estimate of a line; null where the line has no value.</summary>
    internal static EnergyEstimate? Of(EnergyLine line, double marginPercent)
    {
        if (line.LogRatio is not { } d)
        {
            return null;
        }

        EnergyEstimate estimate = new(d, PercentOf(d))
        {
            Df = line.Df,
            StandardError = line.StandardError,
            StretchScatterPercent = line.UnitVariance is { } variance ? 100 * Math.Sqrt(Math.Exp(variance) - 1) : null,
            ResolutionApplied = line.ResolutionApplied,
        };
        return line is { Df: >= EnergyModel.LeastDf, StandardError: > 0 }
            ? estimate.WithInterval(line.StandardError.Value, marginPercent)
            : estimate;
    }

    /// <summary>p of equivalence at a standard error and degrees of freedom.</summary>
    internal static double PTostOf(double logRatio, double standardError, double df, double marginPercent) =>
        Math.Max(
            StudentT.UpperTail((logRatio - Math.Log(1 - (marginPercent / 100))) / standardError, df),
            StudentT.UpperTail((Math.Log(1 + (marginPercent / 100)) - logRatio) / standardError, df)
        );

    private EnergyEstimate WithInterval(double standardError, double marginPercent)
    {
        double half95 = StudentT.Quantile(0.975, Df) * standardError;
        double half90 = StudentT.Quantile(0.95, Df) * standardError;
        return this with
        {
            Lo95Percent = PercentOf(LogRatio - half95),
            Hi95Percent = PercentOf(LogRatio + half95),
            Lo90Percent = PercentOf(LogRatio - half90),
            Hi90Percent = PercentOf(LogRatio + half90),
            P = StudentT.TwoSidedP(LogRatio / standardError, Df),
            PTost = PTostOf(LogRatio, standardError, Df, marginPercent),
            MarginPercent = marginPercent,
            Mdd80Percent = NoncentralT.NoncentralityForPower(Power, Df, Alpha) * standardError is { } mdd ? PercentOf(mdd) : null,
        };
    }
}
