namespace FieldSession.Signals;

/// <summary>
/// The spectrum of one block for Welch's method: Hann window, no mean removed, power density on one side (P. D. Welch, IEEE Transactions on Audio and
/// Electroacoustics 15, 1967). One object serves one caller at a time.
/// </summary>
/// <param name="length">Samples of a block, a power of two.</param>
/// <param name="rateHz">Samples a second.</param>
public sealed class WelchTransform(int length, double rateHz)
{
    private readonly FastFourier _fourier = new(length);
    private readonly double[] _window = Hann(length);
    private readonly double[] _windowed = new double[length];

    /// <summary>Samples of a block.</summary>
    public int Length => length;

    /// <summary>Distance of neighbouring bins, Hz.</summary>
    public double BinHz => rateHz / length;

    /// <summary>Mean square per Hz, from 0 Hz to half the rate.</summary>
    /// <param name="block">The samples of the block.</param>
    /// <param name="density">Half the length and one more.</param>
    public void Density(ReadOnlySpan<double> block, Span<double> density)
    {
        for (int i = 0; i < _windowed.Length; i++)
        {
            _windowed[i] = block[i] * _window[i];
        }

        _fourier.Power(_windowed, density);

        // the squares of a Hann window sum to 3/8 of its length; both sides of the spectrum count but at its two ends
        double scale = 2 / (rateHz * 0.375 * length);
        for (int k = 0; k < density.Length; k++)
        {
            density[k] *= scale;
        }

        density[0] /= 2;
        density[^1] /= 2;
    }

    private static double[] Hann(int length) =>
        [.. Enumerable.Range(0, length).Select(i => 0.5 - (0.5 * Math.Cos(2 * Math.PI * i / length)))];
}
