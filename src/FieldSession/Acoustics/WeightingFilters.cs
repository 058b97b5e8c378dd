using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>
/// The weightings A and C as digital filters: the poles of IEC 61672-1, Annex E, by the bilinear transform, gain 1 at 1 kHz. A is C with two more poles
/// and two more zeros at 0 Hz, so both cost three sections. At 48 kHz the filter lies 0.5 dB below the formula at 8 kHz and 2.7 dB at 12.5 kHz.
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

    private static (SecondOrderSection[] C, SecondOrderSection FromCToA) Sections(int rateHz) => (
        [
            OneAtReference(SecondOrderSection.HighPass(FrequencyWeighting.F1Hz, FrequencyWeighting.F1Hz, rateHz), rateHz),
            OneAtReference(SecondOrderSection.LowPass(FrequencyWeighting.F4Hz, FrequencyWeighting.F4Hz, rateHz), rateHz),
        ],
        OneAtReference(SecondOrderSection.HighPass(FrequencyWeighting.F2Hz, FrequencyWeighting.F3Hz, rateHz), rateHz));

    private static SecondOrderSection OneAtReference(SecondOrderSection section, int rateHz) =>
        section.Scaled(Math.Pow(10, -section.ResponseDb(1000, rateHz) / 20));
}
