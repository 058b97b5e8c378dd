namespace FieldSession.Acoustics;

/// <summary>
/// Exponential time weighting of a squared signal (IEC 61672-1): F has a time constant of 0.125 s, S of 1 s. A burst of T seconds stays
/// 10 lg(1 - exp(-T / time constant)) below the steady level.
/// </summary>
/// <param name="rateHz">Samples a second.</param>
/// <param name="timeConstantS">Time constant, s.</param>
public sealed class TimeWeighting(int rateHz, double timeConstantS)
{
    /// <summary>Time constant of F, s.</summary>
    public const double FastS = 0.125;

    /// <summary>Time constant of S, s.</summary>
    public const double SlowS = 1;

    private readonly double _share = 1 - Math.Exp(-1 / (rateHz * timeConstantS));
    private double _now;

    /// <summary>Weights the squares of the next samples.</summary>
    /// <param name="samples">The samples, frequency-weighted.</param>
    /// <param name="weighted">Mean squares, as many.</param>
    public void Weight(ReadOnlySpan<double> samples, Span<double> weighted)
    {
        double now = _now;
        double share = _share;
        double rest = 1 - share;
        for (int i = 0; i < samples.Length; i++)
        {
            now = (rest * now) + (share * samples[i] * samples[i]);
            weighted[i] = now;
        }

        _now = now < 1e-200 ? 0 : now;
    }
}
