namespace FieldSession.Tests.Statistics;

/// <summary>
/// A value read as a range low-high on a display of finite resolution: level (low + high) / 2, width high - low, and the uncertainty that
/// the resolution r alone brings: r / sqrt(12) for one rounded value (rectangular distribution, JCGM 100:2008 F.2.2.1), r / sqrt(24) for
/// the mean of two ends rounded apart. Worked example: 58-60 on a 1 dB display: 59, width 2, 0.204.
/// </summary>
public static class Midrange
{
    /// <summary>Middle of the range.</summary>
    public static double Level(double low, double high) => (low + high) / 2;

    /// <summary>Width of the range.</summary>
    public static double Width(double low, double high) => high - low;

    /// <summary>Standard uncertainty from the resolution of the display.</summary>
    public static double ResolutionUncertainty(double low, double high, double resolution) => resolution / Math.Sqrt(low == high ? 12 : 24);
}
