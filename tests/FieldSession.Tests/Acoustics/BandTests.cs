using System.Globalization;
using FieldSession.Acoustics;
using FieldSession.Signals;
using FieldSession.Store.Recordings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Acoustics;

/// <summary>Third-octave bands against IEC 61260-1:2014 (cases R02-bands-mask and R06-band-levels, which name their sources).</summary>
public class BandTests
{
    private static readonly RecordingCase Mask = RecordingCase.Open("R02-bands-mask");
    private static readonly RecordingCase Levels = RecordingCase.Open("R06-band-levels");

    /// <summary>Source: exact mid-bands and edges, IEC 61260-1:2014, base ten.</summary>
    [Fact]
    public void Middles_and_edges_are_exact() =>
        Assert.All(
            Enumerable.Range(-9, 6),
            n =>
            {
                Mask.Holds($"mid.{n}", ThirdOctave.MiddleHz(n));
                Mask.Holds($"lower.{n}", ThirdOctave.Band(n).LowerHz);
                Mask.Holds($"upper.{n}", ThirdOctave.Band(n).UpperHz);
            }
        );

    /// <summary>
    /// Source: class 1 limits of IEC 61260-1:2014, Table 1, as two public transcriptions give them; steady tones at every breakpoint.
    /// </summary>
    [Fact]
    public void Every_band_from_25_Hz_to_400_Hz_meets_the_mask_of_class_1()
    {
        string[] omegas = [.. Mask.Quantities("omega.")];
        Assert.Equal(10, omegas.Length);
        for (int n = -16; n <= -4; n++)
        {
            double steady = LevelDb(ThirdOctave.MiddleHz(n), n);
            foreach (string omega in omegas)
            {
                string place = omega["omega.".Length..];
                double least = Mask.Number($"min.{place}");
                double most = Mask.Text($"max.{place}") == "none" ? double.PositiveInfinity : Mask.Number($"max.{place}");
                foreach (double ratio in Sides(Mask.Number(omega), place))
                {
                    double hz = ThirdOctave.MiddleHz(n) * ratio;
                    Assert.True(
                        hz >= 780 || IsIn(steady - LevelDb(hz, n), least, most),
                        $"band {n} at {ratio}: {steady - LevelDb(hz, n):0.00} dB, not {least}..{most}"
                    );
                }
            }
        }
    }

    /// <summary>Source: the same synthesis by scipy.signal.welch, mean over three phases.</summary>
    [Fact]
    public void Tones_beside_a_band_are_kept_out_as_scipy_keeps_them_out()
    {
        string[] quantities = [.. Mask.Quantities("fft.")];
        Assert.NotEmpty(quantities);
        Assert.All(
            quantities,
            quantity =>
            {
                string[] parts = quantity.Split('.', 3);
                int n = int.Parse(parts[1], CultureInfo.InvariantCulture);
                double exponent = double.Parse(parts[2], CultureInfo.InvariantCulture);
                double g = Math.Pow(10, 0.3);
                double ratio = 1 + ((Math.Pow(g, 1 / 6.0) - 1) / (Math.Pow(g, 0.5) - 1) * (Math.Pow(g, Math.Abs(exponent)) - 1));
                double hz = ThirdOctave.MiddleHz(n) * (exponent < 0 ? 1 / ratio : ratio);
                double found = LevelDb(ThirdOctave.MiddleHz(n), n) - LevelDb(hz, n);

                // far down what is left is rounding: it only has to be as far down
                if (Mask.Number(quantity) > 85)
                {
                    Assert.True(found > 85, $"{quantity}: {found}");
                }
                else
                {
                    Mask.Holds(quantity, found);
                }
            }
        );
    }

    /// <summary>
    /// Source: scipy, low branch and Welch; `butter` rows: 6th-order Butterworth at the full rate, 0.19 dB wider on flat noise.
    /// </summary>
    [Theory]
    [InlineData("one")]
    [InlineData("two")]
    public void Bands_and_ring_of_cabin_like_noise_are_scipy_s(string name)
    {
        WindowLevels heard = Heard(name, RingBand.Planned);

        foreach (string quantity in Levels.Quantities($"{name}.LZeq."))
        {
            int middle = int.Parse(quantity[(quantity.LastIndexOf('.') + 1)..], CultureInfo.InvariantCulture);
            Levels.Holds(quantity, heard.Bands.Single(band => Math.Round(band.MiddleHz) == middle).LevelDb);
        }

        Levels.Holds($"{name}.band.178-282", heard.RingDb);
        Levels.Holds($"{name}.band.190-216", Heard(name, new(190, 216)).RingDb);
        Assert.Null(heard.LAeqDb);
    }

    private static WindowLevels Heard(string name, FrequencyBand ring)
    {
        using SoundFile file = SoundFile.Open(Levels.PathOf($"{name}.flac"));
        RecordingMeter meter = new(file.Reader.Format.RateHz, file.Reader.Format.LargestSample, InventedSound.Whole, ring: ring);
        SoundPass.Through(file.Reader, 1, meter);
        return meter.Finish().Windows[0].Raised(110);
    }

    // the breakpoint at the edge belongs to both sides of it
    private static double[] Sides(double omega, string place)
    {
        double inside =
            place == "0.5.in" ? omega * (1 - 1e-6)
            : place == "0.5.out" ? omega * (1 + 1e-6)
            : omega;
        return [inside, 1 / inside];
    }

    private static bool IsIn(double found, double least, double most) => found >= least && found <= most;

    private static double LevelDb(double hz, int n)
    {
        WelchTransform transform = new(2048, 1600);
        double sum = 0;
        foreach (double phase in new[] { Math.PI / 2, 1 + (Math.PI / 2), 2 + (Math.PI / 2) })
        {
            WelchMean mean = new(transform);
            mean.Take(InventedSound.Sine(hz, 1600, 2048 * 9 / 1600.0, 1, phase));
            sum += mean.Spectrum!.MeanSquare(ThirdOctave.Band(n));
        }

        return 10 * Math.Log10((sum / 3) + 1e-30);
    }
}
