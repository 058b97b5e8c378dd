using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace FieldSession.Statistics;

/// <summary>
/// Limits for looking several times at growing data, so that the chance to have crossed one by each look is what was to be spent by then
/// (E. Slud and L. J. Wei, Journal of the American Statistical Association 77, 1982; K. K. G. Lan and D. L. DeMets, Biometrika 70, 1983),
/// by the recursion of P. Armitage, C. K. McPherson and B. C. Rowe (J. Royal Stat. Soc. A 132, 1969) for the sum of independent normal
/// increments. Worked example: five equal looks, 5 % two-sided spent as 2 - 2 Phi(2.2414 / sqrt(t)) on each side: 4.8769, 3.3569, 2.6803,
/// 2.2898, 2.0310.
/// </summary>
public static class SpendingBoundary
{
    private const double Farthest = 8;
    private const int Panels = 12;
    private const int Points = 8;

    /// <summary>The limit of each look in standard errors.</summary>
    /// <param name="information">Information at each look, above 0 and growing; only ratios count.</param>
    /// <param name="spent">What is spent by each look, growing, below 1: of both sides together where
    /// <paramref name="isTwoSided"/>.</param>
    /// <param name="isTwoSided">Whether both ends are limits.</param>
    public static double[] Limits(IReadOnlyList<double> information, IReadOnlyList<double> spent, bool isTwoSided)
    {
        ArgumentNullException.ThrowIfNull(information);
        ArgumentNullException.ThrowIfNull(spent);
        double[] limits = new double[information.Count];
        Inside? inside = null;
        for (int look = 0; look < limits.Length; look++)
        {
            double step = spent[look] - (look == 0 ? 0 : spent[look - 1]);
            double limit = Limit(inside, information[look], step, isTwoSided);
            inside = Next(inside, information[look], limit, isTwoSided);
            limits[look] = limit;
        }

        return limits;
    }

    /// <summary>The chance to cross at each look for the first time.</summary>
    public static double[] Crossed(IReadOnlyList<double> information, IReadOnlyList<double> limits, bool isTwoSided)
    {
        ArgumentNullException.ThrowIfNull(information);
        ArgumentNullException.ThrowIfNull(limits);
        double[] crossed = new double[limits.Count];
        Inside? inside = null;
        for (int look = 0; look < crossed.Length; look++)
        {
            crossed[look] = Crossing(inside, information[look], limits[look], isTwoSided);
            inside = Next(inside, information[look], limits[look], isTwoSided);
        }

        return crossed;
    }

    private static double Limit(Inside? before, double information, double step, bool isTwoSided)
    {
        (double low, double high) = (0, Farthest);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Crossing(before, information, middle, isTwoSided) > step ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double Crossing(Inside? before, double information, double limit, bool isTwoSided)
    {
        double end = limit * Math.Sqrt(information);
        if (before is null)
        {
            return (isTwoSided ? 2 : 1) * Above(limit);
        }

        double step = Math.Sqrt(information - before.Information);
        double sum = 0;
        for (int i = 0; i < before.At.Length; i++)
        {
            double beyond = Above((end - before.At[i]) / step) + (isTwoSided ? Above((end + before.At[i]) / step) : 0);
            sum += before.Mass[i] * beyond;
        }

        return sum;
    }

    /// <summary>Where the sum lies after a look that crossed nothing.</summary>
    private static Inside Next(Inside? before, double information, double limit, bool isTwoSided)
    {
        double scale = Math.Sqrt(information);
        (double low, double high) = (isTwoSided ? -limit * scale : -Farthest * scale, limit * scale);
        GaussLegendreRule rule = new(-1, 1, Points);
        double half = (high - low) / (2 * Panels);
        double[] at =
        [
            .. Enumerable.Range(0, Panels * Points).Select(i => low + half * (2 * (i / Points) + 1 + rule.GetAbscissa(i % Points))),
        ];
        double[] mass = [.. at.Select((s, i) => half * rule.GetWeight(i % Points) * Density(before, information, s))];
        return new Inside(information, at, mass);
    }

    private static double Density(Inside? before, double information, double s)
    {
        if (before is null)
        {
            return Normal(s, Math.Sqrt(information));
        }

        double step = Math.Sqrt(information - before.Information);
        double sum = 0;
        for (int i = 0; i < before.At.Length; i++)
        {
            sum += before.Mass[i] * Normal(s - before.At[i], step);
        }

        return sum;
    }

    private static double Normal(double x, double sd) => Math.Exp(-x * x / (2 * sd * sd)) / (sd * Constants.Sqrt2Pi);

    private static double Above(double z) => SpecialFunctions.Erfc(z / Constants.Sqrt2) / 2;

    /// <summary>The sum after a look, as far as no limit was crossed: points and the probability at each.</summary>
    private sealed record Inside(double Information, double[] At, double[] Mass);
}
