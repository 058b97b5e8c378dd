using System.Numerics;

namespace FieldSession.Signals;

/// <summary>
/// The numbers of one digital second-order section, H(z) = (b0 + b1/z + b2/z^2) / (1 + a1/z + a2/z^2). Analogue poles and zeros become
/// digital ones by the bilinear transform (any textbook of signal processing).
/// </summary>
/// <param name="B0">Numerator.</param>
/// <param name="B1">Numerator, one sample ago.</param>
/// <param name="B2">Numerator, two samples ago.</param>
/// <param name="A1">Denominator, one sample ago.</param>
/// <param name="A2">Denominator, two samples ago.</param>
public readonly record struct SecondOrderSection(double B0, double B1, double B2, double A1, double A2)
{
    /// <summary>Two real analogue poles, given as frequencies, with both zeros at 0 Hz.</summary>
    public static SecondOrderSection HighPass(double poleHz, double otherPoleHz, double rateHz) =>
        WithPoles(poleHz, otherPoleHz, rateHz, 1, -2, 1);

    /// <summary>
    /// Two real analogue poles, given as frequencies, with both zeros at infinity, which the transform puts at half the rate.
    /// </summary>
    public static SecondOrderSection LowPass(double poleHz, double otherPoleHz, double rateHz) =>
        WithPoles(poleHz, otherPoleHz, rateHz, 1, 2, 1);

    /// <summary>Butterworth high-pass, prewarped so that the corner lies where it is wanted.</summary>
    /// <param name="cornerHz">Where 3 dB are lost, Hz.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="order">Even order, 2 or more; half as many sections.</param>
    public static SecondOrderSection[] ButterworthHighPass(double cornerHz, double rateHz, int order)
    {
        double warped = 2 * rateHz * Math.Tan(Math.PI * cornerHz / rateHz);
        SecondOrderSection[] sections = new SecondOrderSection[order / 2];
        for (int k = 0; k < sections.Length; k++)
        {
            Complex pole = warped / Complex.FromPolarCoordinates(1, Math.PI * ((2 * k) + 1 + order) / (2 * order));
            sections[k] = OfPair(Digital(pole, rateHz), 1, -2, 1);
        }

        return WithGainOne(sections, -1);
    }

    /// <summary>Butterworth band-pass of a second-order prototype: two sections, prewarped, gain 1 in the middle of the band.</summary>
    /// <param name="band">Its edges, where 3 dB are lost.</param>
    /// <param name="rateHz">Samples a second.</param>
    public static SecondOrderSection[] ButterworthBandPass(FrequencyBand band, double rateHz)
    {
        double low = 2 * rateHz * Math.Tan(Math.PI * band.LowerHz / rateHz);
        double high = 2 * rateHz * Math.Tan(Math.PI * band.UpperHz / rateHz);
        Complex half = Complex.FromPolarCoordinates((high - low) / 2, 3 * Math.PI / 4);
        Complex root = Complex.Sqrt((half * half) - (low * high));
        SecondOrderSection[] sections = [OfPair(Digital(half + root, rateHz), 1, 0, -1), OfPair(Digital(half - root, rateHz), 1, 0, -1)];
        double middle = 2 * Math.Atan(Math.Sqrt(low * high) / (2 * rateHz));
        return WithGainOne(sections, Complex.FromPolarCoordinates(1, middle));
    }

    /// <summary>How strongly a frequency passes, dB.</summary>
    public double ResponseDb(double frequencyHz, double rateHz) =>
        20 * Math.Log10(Complex.Abs(At(Complex.FromPolarCoordinates(1, 2 * Math.PI * frequencyHz / rateHz))));

    /// <summary>The same section with another gain.</summary>
    public SecondOrderSection Scaled(double factor) => this with { B0 = B0 * factor, B1 = B1 * factor, B2 = B2 * factor };

    private static SecondOrderSection WithPoles(double poleHz, double otherPoleHz, double rateHz, double b0, double b1, double b2)
    {
        double p = Digital(-2 * Math.PI * poleHz, rateHz).Real;
        double q = Digital(-2 * Math.PI * otherPoleHz, rateHz).Real;
        return new(b0, b1, b2, -(p + q), p * q);
    }

    private static SecondOrderSection OfPair(Complex pole, double b0, double b1, double b2) =>
        new(b0, b1, b2, -2 * pole.Real, (pole.Real * pole.Real) + (pole.Imaginary * pole.Imaginary));

    private static Complex Digital(Complex pole, double rateHz) => ((2 * rateHz) + pole) / ((2 * rateHz) - pole);

    private static SecondOrderSection[] WithGainOne(SecondOrderSection[] sections, Complex z)
    {
        foreach (ref SecondOrderSection section in sections.AsSpan())
        {
            section = section.Scaled(1 / Complex.Abs(section.At(z)));
        }

        return sections;
    }

    private Complex At(Complex z) => ((((B0 * z) + B1) * z) + B2) / (((z + A1) * z) + A2);
}

/// <summary>Second-order sections one behind the other, with what they remember; samples go through in blocks of any length.</summary>
/// <param name="sections">The sections, in their order.</param>
public sealed class RunningSections(IReadOnlyList<SecondOrderSection> sections)
{
    private readonly SecondOrderSection[] _sections = [.. sections];
    private readonly double[] _first = new double[sections.Count];
    private readonly double[] _second = new double[sections.Count];

    /// <summary>Filters the next samples into a span of the same length, which may be the same one.</summary>
    public void Filter(ReadOnlySpan<double> samples, Span<double> filtered)
    {
        samples.CopyTo(filtered);
        filtered = filtered[..samples.Length];
        for (int s = 0; s < _sections.Length; s++)
        {
            (double b0, double b1, double b2, double a1, double a2) = _sections[s];
            double first = _first[s];
            double second = _second[s];
            for (int i = 0; i < filtered.Length; i++)
            {
                double x = filtered[i];
                double y = (b0 * x) + first;
                first = (b1 * x) - (a1 * y) + second;
                second = (b2 * x) - (a2 * y);
                filtered[i] = y;
            }

            // numbers too small to be levels would slow the processor down
            _first[s] = Math.Abs(first) < 1e-200 ? 0 : first;
            _second[s] = Math.Abs(second) < 1e-200 ? 0 : second;
        }
    }
}
