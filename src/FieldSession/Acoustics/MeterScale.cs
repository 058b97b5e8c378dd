using System.Numerics;
using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>What all windows of one recording share: rate, grid of levels, transforms, bands.</summary>
/// <param name="rateHz">Samples a second.</param>
/// <param name="lowRateHz">Samples a second of the low branch, about 1600.</param>
/// <param name="fullScale">The largest positive sample that the format knows, as a number of full scale.</param>
/// <param name="ring">The ring band.</param>
internal sealed class MeterScale(int rateHz, double lowRateHz, double fullScale, FrequencyBand ring)
{
    /// <summary>About how many samples a second the low branch has.</summary>
    public const int LowBranchHz = 1600;

    /// <summary>The lowest third-octave band, 25 Hz: below it the bins of the low branch are too wide for the mask of class 1.</summary>
    public const int LowestBand = -16;

    /// <summary>The highest third-octave band taken from the low branch, 400 Hz.</summary>
    public const int HighestLowBand = -4;

    // 20 kHz, the last band of the standard's usual range
    private const int HighestBandOfAll = 13;
    private const int LowBlock = 2048;
    private const double LeastFullBlockS = 0.3;

    /// <summary>Samples a second.</summary>
    public int RateHz => rateHz;

    /// <summary>Samples a second of the low branch.</summary>
    public double LowRateHz => lowRateHz;

    /// <summary>The largest positive sample that the format knows.</summary>
    public double FullScale => fullScale;

    /// <summary>The ring band.</summary>
    public FrequencyBand Ring => ring;

    /// <summary>Whether the rate gives A and C levels.</summary>
    public bool HasWeightings => rateHz >= WeightingFilters.LowestRateHz;

    /// <summary>Samples from one level on the grid of 0.125 s to the next.</summary>
    public int GridStep => rateHz / 8;

    /// <summary>The highest third-octave band below half the rate.</summary>
    public int HighestBand { get; } =
        Enumerable.Range(LowestBand, HighestBandOfAll - LowestBand + 1).Last(n => ThirdOctave.Band(n).UpperHz <= rateHz / 2.0);

    /// <summary>Spectrum of the low branch: blocks of 1.28 s.</summary>
    public WelchTransform Low { get; } = new(LowBlock, lowRateHz);

    /// <summary>Spectrum at the full rate, above 447 Hz: blocks of 0.3 s and more.</summary>
    public WelchTransform Full { get; } = new((int)BitOperations.RoundUpToPowerOf2((uint)(LeastFullBlockS * rateHz)), rateHz);

    /// <summary>The sample at a time, s from the first.</summary>
    public long SampleAt(double seconds) => (long)Math.Round(seconds * rateHz);

    /// <summary>The first sample of the low branch that does not lie before a time.</summary>
    public long LowSampleAt(double seconds) => (long)Math.Ceiling((SampleAt(seconds) * (lowRateHz / rateHz)) - 1e-9);
}

/// <summary>Third-octave bands (IEC 61260-1:2014, base ten), counted from 1 kHz: -7 is 200 Hz, -6 is 250 Hz.</summary>
public static class ThirdOctave
{
    /// <summary>The exact middle of a band, Hz: 1000 x 10^(n/10).</summary>
    public static double MiddleHz(int n) => 1000 * Math.Pow(10, n / 10.0);

    /// <summary>A band between its exact edges, 1000 x 10^((n -+ 0.5)/10).</summary>
    public static FrequencyBand Band(int n) => new(1000 * Math.Pow(10, (n - 0.5) / 10), 1000 * Math.Pow(10, (n + 0.5) / 10));
}
