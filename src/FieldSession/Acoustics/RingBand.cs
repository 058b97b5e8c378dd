using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Where the air inside the tyre rings, and how far it rises out of the noise beside it.</summary>
public static class RingBand
{
    /// <summary>
    /// The planned measure: the third-octave bands 200 and 250 Hz together. One band, because 10 degrees move the ring by 1.7 %, from one of the two into
    /// the other; together they keep its energy. Own choice, no source.
    /// </summary>
    public static FrequencyBand Planned => new(178, 282);

    /// <summary>Where the decay after an impact is looked for: wider, so that the filter does not ring longer than the tyre.</summary>
    public static FrequencyBand Decay => new(140, 290);

    /// <summary>The flank below the ring.</summary>
    public static FrequencyBand LowerFlank => new(120, 145);

    /// <summary>The flank above the ring.</summary>
    public static FrequencyBand UpperFlank => new(295, 340);

    /// <summary>
    /// Prominence, dB: density in the ring band over the mean of the levels of its two flanks. Gain and, nearly, speed drop out of it. Null for silence. Own
    /// measure, no source; explored, never a verdict.
    /// </summary>
    public static double? ProminenceDb(PowerSpectrum spectrum, FrequencyBand ring)
    {
        ArgumentNullException.ThrowIfNull(spectrum);
        return PerHzDb(spectrum, ring) - ((PerHzDb(spectrum, LowerFlank) + PerHzDb(spectrum, UpperFlank)) / 2);
    }

    private static double? PerHzDb(PowerSpectrum spectrum, FrequencyBand band) => Level.OfMeanSquare(spectrum.MeanSquare(band) / band.WidthHz);
}
