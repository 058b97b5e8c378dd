using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>Takes over what is kept of a window, to a thousandth of a dB.</summary>
internal static class KeptLevels
{
    private const int HighestBand = -2;
    private const int Digits = 3;

    /// <summary>What is kept.</summary>
    public static HeardSegment Of(HeardWindow asked, WindowLevels heard, RingDecayTime? decay) => new(asked.Reading.Mark.Number, Kept(heard.Window.FromS), Kept(heard.HeardS))
    {
        LAeqDb = Kept(heard.LAeqDb),
        LCeqDb = Kept(heard.LCeqDb),
        LAFmaxDb = Kept(heard.LAFmaxDb),
        LAFminDb = Kept(heard.LAFminDb),
        L10Db = Kept(heard.L10Db),
        L50Db = Kept(heard.L50Db),
        L90Db = Kept(heard.L90Db),
        BandsDb = heard.Bands.IsEmpty ? null : [.. Enumerable.Range(HeardSegment.LowestBand, HighestBand - HeardSegment.LowestBand + 1).Select(n => BandOf(heard, n))],
        RingDb = Kept(heard.RingDb),
        RingMedianDb = Kept(heard.RingMedianDb),
        ProminenceDb = Kept(heard.ProminenceDb),
        SpectrumDb = heard.Spectrum is { } spectrum ? Spectrum(spectrum) : null,
        RingLastsS = decay is null ? null : Math.Round(decay.T60S, 5),
        Clips = heard.ClipEvents,
        HasSpeech = heard.IsLikeSpeech,
    };

    private static double? BandOf(WindowLevels heard, int n) => Kept(heard.Bands.Where(band => band.N == n).Select(band => band.LevelDb).FirstOrDefault());

    // means over a step each: finer than the ear needs, coarser than any word that was spoken
    private static ImmutableList<double>? Spectrum(PowerSpectrum spectrum)
    {
        double?[] levels =
        [
            .. Enumerable.Range(0, HeardSegment.SpectrumLength)
                .Select(i => HeardSegment.SpectrumFromHz + (i * HeardSegment.SpectrumStepHz))
                .Select(hz => Level.OfMeanSquare(
                    spectrum.MeanSquare(new(hz - (HeardSegment.SpectrumStepHz / 2), hz + (HeardSegment.SpectrumStepHz / 2))) / HeardSegment.SpectrumStepHz)),
        ];
        return levels.Any(level => level is null) ? null : [.. levels.Select(level => Math.Round(level!.Value, 2))];
    }

    private static double? Kept(double? level) => level is { } known ? Kept(known) : null;

    private static double Kept(double number) => Math.Round(number, Digits);
}
