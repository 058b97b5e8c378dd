using FieldSession.Measures;

namespace FieldSession.Planning;

/// <summary>
/// What a speed error costs in level. Rolling noise rises by about 30 to 40 lg v (from memory; the rolling coefficients of light
/// vehicles in the Harmonoise source model give 32 lg v, A-weighted, over 50..110 km/h).
/// </summary>
public static class SpeedCost
{
    /// <summary>Factor of lg v at the lower end.</summary>
    public const double LeastFactor = 30;

    /// <summary>Factor of lg v at the upper end.</summary>
    public const double MostFactor = 40;

    /// <summary>Rise of the level, dB, where a segment is driven too fast by so much.</summary>
    /// <param name="planned">The plan's speed.</param>
    /// <param name="tooFastKmh">How much too fast, km/h.</param>
    /// <param name="factor">Factor of lg v.</param>
    public static double Db(Speed planned, double tooFastKmh, double factor) => factor * Math.Log10((planned.Kmh + tooFastKmh) / planned.Kmh);
}
