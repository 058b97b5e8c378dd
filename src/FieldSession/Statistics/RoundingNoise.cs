namespace FieldSession.Statistics;

/// <summary>
/// Tells a sum of squares that is truly something from one that only rounding left behind: n values of size up to M are known to about
/// 1e-15 M each (IEEE 754 binary64), so that residuals below 1e-12 M mean 0. Worked example: 1e-28 over 30 values of 60: 0.
/// </summary>
public static class RoundingNoise
{
    private const double Relative = 1e-12;

    /// <summary>The sum of squares, or 0 if rounding alone explains it.</summary>
    /// <param name="sumOfSquares">0 or more.</param>
    /// <param name="count">How many residuals it is over.</param>
    /// <param name="largest">Largest size among the values, 0 or more.</param>
    public static double Cleared(double sumOfSquares, int count, double largest)
    {
        double noise = Relative * Math.Max(1, largest);
        return sumOfSquares <= count * noise * noise ? 0 : sumOfSquares;
    }
}
