using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>
/// The weightings A and C as digital filters: the poles of IEC 61672-1, Annex E, by the bilinear transform, gain 1 at 1 kHz. A is C with
/// two more poles and two more zeros at 0 Hz, so both cost three sections. At 48 kHz the filter lies 0.5 dB below the formula at 8 kHz and
/// 2.7 dB at 12.5 kHz.
/// </summary>
public sealed class WeightingFilters
{
    /// <summary>The lowest rate that gives A and C levels, samples a second: below it the filters fall away too early.</summary>
    public const int LowestRateHz = 44_100;

    private readonly RunningSections _c;
    private readonly RunningSections _fromCToA;

    /// <summary>Filters for a rate, at rest.</summary>
    /// <param name="rateHz">Samples a second.</param>
    public WeightingFilters(int rateHz)
    {
        (SecondOrderSection[] c, SecondOrderSection fromCToA) = Sections(rateHz);
        _c = new(c);
        _fromCToA = new([fromCToA]);
    }

    /// <summary>Filters the next samples.</summary>
    /// <param name="samples">The samples.</param>
    /// <param name="a">The same, A-weighted; as long.</param>
    /// <param name="c">The same, C-weighted; as long.</param>
    public void Filter(ReadOnlySpan<double> samples, Span<double> a, Span<double> c)
    {
        _c.Filter(samples, c);
        _fromCToA.Filter(c[..samples.Length], a);
    }

    /// <summary>What the digital filters do to a frequency, dB.</summary>
    /// <param name="frequencyHz">The frequency, Hz.</param>
    /// <param name="rateHz">Samples a second.</param>
    public static (double ADb, double CDb) ResponseDb(double frequencyHz, int rateHz)
    {
        (SecondOrderSection[] c, SecondOrderSection fromCToA) = Sections(rateHz);
        double cDb = c.Sum(section => section.ResponseDb(frequencyHz, rateHz));
        return (cDb + fromCToA.ResponseDb(frequencyHz, rateHz), cDb);
    }

    private static (SecondOrderSection[] C, SecondOrderSection FromCToA) Sections(int rateHz) =>
        (
            [
                OneAtReference(SecondOrderSection.HighPass(FrequencyWeighting.F1Hz, FrequencyWeighting.F1Hz, rateHz), rateHz),
                OneAtReference(SecondOrderSection.LowPass(FrequencyWeighting.F4Hz, FrequencyWeighting.F4Hz, rateHz), rateHz),
            ],
            OneAtReference(SecondOrderSection.HighPass(FrequencyWeighting.F2Hz, FrequencyWeighting.F3Hz, rateHz), rateHz)
        );

    private static SecondOrderSection OneAtReference(SecondOrderSection section, int rateHz) =>
        section.Scaled(Math.Pow(10, -section.ResponseDb(1000, rateHz) / 20));
}

/// <summary>
/// Frequency weightings A and C as formulas (IEC 61672-1, Annex E: constants derived from 1000, 10^1.5, 10^3.9 and 10^2.45 Hz), 0 dB at 1
/// kHz.
/// </summary>
public static class FrequencyWeighting
{
    private const double ReferenceHz = 1000;

    /// <summary>Double pole at the low end of A and C, Hz; 20.599.</summary>
    public static double F1Hz => Math.Sqrt((-B - Math.Sqrt((B * B) - (4 * C0))) / 2);

    /// <summary>Pole of A, Hz; 107.65.</summary>
    public static double F2Hz => (3 - Math.Sqrt(5)) / 2 * Math.Pow(10, 2.45);

    /// <summary>Pole of A, Hz; 737.86.</summary>
    public static double F3Hz => (3 + Math.Sqrt(5)) / 2 * Math.Pow(10, 2.45);

    /// <summary>Double pole at the high end of A and C, Hz; 12194.</summary>
    public static double F4Hz => Math.Sqrt((-B + Math.Sqrt((B * B) - (4 * C0))) / 2);

    // Annex E: the two corner frequencies 10^1.5 and 10^3.9 Hz of C, where D^2 = 1/2 of the power is left
    private static double LowSquared => Math.Pow(10, 3);

    private static double HighSquared => Math.Pow(10, 7.8);

    private static double B =>
        (
            (ReferenceHz * ReferenceHz)
            + (LowSquared * HighSquared / (ReferenceHz * ReferenceHz))
            - (Math.Sqrt(0.5) * (LowSquared + HighSquared))
        ) / (1 - Math.Sqrt(0.5));

    private static double C0 => LowSquared * HighSquared;

    /// <summary>Weighting A at a frequency above 0 Hz, dB.</summary>
    public static double ADb(double frequencyHz) => 20 * Math.Log10(A(frequencyHz) / A(ReferenceHz));

    /// <summary>Weighting C at a frequency above 0 Hz, dB.</summary>
    public static double CDb(double frequencyHz) => 20 * Math.Log10(C(frequencyHz) / C(ReferenceHz));

    private static double A(double f) => C(f) * f * f / (Math.Sqrt((f * f) + (F2Hz * F2Hz)) * Math.Sqrt((f * f) + (F3Hz * F3Hz)));

    private static double C(double f) => f * f / (((f * f) + (F1Hz * F1Hz)) * ((f * f) + (F4Hz * F4Hz)));
}
