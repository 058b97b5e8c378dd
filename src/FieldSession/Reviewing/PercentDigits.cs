using FieldSession.Comparing;
using FieldSession.Measures;

namespace FieldSession.Reviewing;

/// <summary>
/// Decimals of a percentage of energy, as many as its 95 % interval carries: none where the interval is 5 % wide and more, two where it is narrower than
/// 0.5 %, one between (own rule, the same as for dB); more where a rounded limit would contradict the verdict's word.
/// </summary>
public static class PercentDigits
{
    /// <summary>Decimals of a percentage that has no interval.</summary>
    public const int WithoutInterval = 1;

    private const double WidePercent = 5;
    private const double NarrowPercent = 0.5;

    /// <summary>Decimals for all that is told of an estimate.</summary>
    public static int Of(EnergyEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        double[] limits = [.. new[] { estimate.Lo95Percent, estimate.Hi95Percent, estimate.Lo90Percent, estimate.Hi90Percent }.OfType<double>()];
        double[] bounds = estimate.MarginPercent is { } margin ? [0, margin, -margin] : [0];
        return EnoughDigits.For(Least(estimate.Hi95Percent - estimate.Lo95Percent), limits, bounds);
    }

    /// <summary>Decimals of the difference of two ranges.</summary>
    internal static int Digits(this EnergyRange range) =>
        Least(range is { Lo95Km: { } low, Hi95Km: { } high } ? 100 * (high - low) / range.ReferenceKm : null);

    private static int Least(double? width) => width switch
    {
        null => WithoutInterval,
        >= WidePercent => 0,
        >= NarrowPercent => 1,
        _ => 2,
    };
}
