using System.Collections.Immutable;

namespace FieldSession.Signals;

/// <summary>A power density spectrum from 0 Hz to half the rate.</summary>
/// <param name="BinHz">Distance of neighbouring bins, Hz; bin k lies at k times this.</param>
/// <param name="Density">Mean square per Hz of every bin.</param>
public sealed record PowerSpectrum(double BinHz, ImmutableArray<double> Density)
{
    /// <summary>Mean square in a band: bins between its edges, the two at the edges by their share.</summary>
    public double MeanSquare(FrequencyBand band)
    {
        int first = Math.Max(0, (int)Math.Floor(band.LowerHz / BinHz - 0.5));
        int last = Math.Min(Density.Length - 1, (int)Math.Ceiling(band.UpperHz / BinHz + 0.5));
        double sum = 0;
        for (int k = first; k <= last; k++)
        {
            double width = Math.Min(band.UpperHz, (k + 0.5) * BinHz) - Math.Max(band.LowerHz, (k - 0.5) * BinHz);
            sum += Density[k] * Math.Max(0, width);
        }

        return sum;
    }

    /// <summary>The level in a band, dB; null for silence.</summary>
    public double? LevelDb(FrequencyBand band) => Level.OfMeanSquare(MeanSquare(band));
}
