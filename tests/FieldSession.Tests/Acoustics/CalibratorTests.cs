using FieldSession.Acoustics;
using FieldSession.Store.Recordings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Acoustics;

/// <summary>The calibrator's tone and clipping (case R04-calibrator: numbers that the signals were made with, and numpy's).</summary>
public class CalibratorTests
{
    private static readonly RecordingCase Case = RecordingCase.Open("R04-calibrator");

    [Fact]
    public void Gain_and_drift_are_found_among_speech_and_bumps()
    {
        CalibratorTone before = Tone("before.flac", CalibratorTone.UsualHz)!;
        CalibratorTone after = Tone("after.flac", CalibratorTone.UsualHz)!;

        Case.Holds("gain_db", before.GainDb(94));
        Case.Holds("reference.gain_db", before.GainDb(94));
        Case.Holds("drift_db", after.LevelDb - before.LevelDb);
        Case.Holds("reference.drift_db", after.LevelDb - before.LevelDb);
        Case.Holds("tone.start_s", before.FromS);
        Case.Holds("tone.end_s", before.ToS);
    }

    [Fact]
    public void What_is_no_tone_is_not_taken_for_one()
    {
        Case.Holds("clip.tone", Tone("clip.flac", CalibratorTone.UsualHz)?.LevelDb);
        Assert.Null(Tone("before.flac", CalibratorTone.PistonphoneHz));
    }

    [Fact]
    public void Clipping_is_counted()
    {
        using SoundFile file = SoundFile.Open(Case.PathOf("clip.flac"));
        ClippedSamples clipped = new(file.Reader.Format.LargestSample);
        SoundPass.Through(file.Reader, 1, clipped);
        Case.Holds("clip.events", clipped.Events);
    }

    [Theory]
    [InlineData(44_100, 1000, 1000)]
    [InlineData(48_000, 1015, 1000)]
    [InlineData(96_000, 252, 250)]
    [InlineData(8000, 990, 1000)]
    public void A_tone_within_2_percent_is_found_at_every_rate_with_its_level(int rateHz, double hz, double usualHz)
    {
        double[] quiet = InventedSound.Noise(3, rateHz, 3, 0.001);
        double[] tone = InventedSound.Sine(hz, rateHz, 7, 0.1);
        ToneFinder finder = new(rateHz);
        InventedSound.InBlocks([.. quiet, .. tone, .. quiet], finder);

        CalibratorTone found = finder.Find(usualHz)!;

        // formula: a sine of amplitude a has mean square a^2/2
        Assert.Equal(10 * Math.Log10(0.1 * 0.1 / 2), found.LevelDb, 0.002);
        Assert.InRange(found.FromS, 2.4, 3.6);
        Assert.InRange(found.ToS, 9.4, 10.6);
    }

    [Theory]
    [InlineData(3.0, 0)]
    [InlineData(8.0, 0.02)]
    public void A_tone_too_short_or_amid_noise_is_none(double seconds, double noise)
    {
        double[] tone = InventedSound.Sine(1000, 48_000, seconds, 0.05);
        double[] with = [.. tone.Zip(InventedSound.Noise(5, 48_000, seconds, noise), (a, b) => a + b)];
        ToneFinder finder = new(48_000);
        InventedSound.InBlocks([.. InventedSound.Noise(6, 48_000, 2, 0.01), .. with, .. InventedSound.Noise(7, 48_000, 2, 0.01)], finder);
        Assert.Null(finder.Find(CalibratorTone.UsualHz));
    }

    private static CalibratorTone? Tone(string name, double hz)
    {
        using SoundFile file = SoundFile.Open(Case.PathOf(name));
        ToneFinder finder = new(file.Reader.Format.RateHz);
        SoundPass.Through(file.Reader, 1, finder);
        return finder.Find(hz);
    }
}
