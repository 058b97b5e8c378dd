using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>What one reading of a recording brought, before it is calibrated.</summary>
/// <param name="Format">How its samples are written.</param>
/// <param name="Levels">Its levels, dB re mean square 1.</param>
/// <param name="Tone">The calibrator's tone in it; null: none, or not looked for.</param>
/// <param name="HasPistonphone">Whether a tone of 250 Hz was found instead.</param>
/// <param name="Decays">Decay of the ring by segment.</param>
/// <param name="Remarks">What is odd about the file.</param>
internal sealed record MeteredPass(
    SoundFormat Format,
    RecordingLevels Levels,
    CalibratorTone? Tone,
    bool HasPistonphone,
    ImmutableArray<(string Segment, RingDecayTime? Decay)> Decays,
    ImmutableArray<string> Remarks
)
{
    /// <summary>Reads a recording once.</summary>
    /// <param name="asked">What is asked for.</param>
    /// <param name="impacts">Impacts in it.</param>
    /// <param name="piped">Bytes piped in.</param>
    /// <exception cref="RecordingRefusedException">No level can be taken from it.</exception>
    public static MeteredPass Of(AskedLevels asked, IReadOnlyList<ListedImpact> impacts, Func<Stream> piped)
    {
        if (asked.File == AskedLevels.Piped)
        {
            ByteSource bytes = new(piped());
            return Of(asked, impacts, asked.Raw is { } format ? new RawReader(bytes, format) : SoundFile.ReaderOf(bytes));
        }

        if (asked.Raw is { } raw)
        {
            using FileStream file = new(asked.File, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return Of(asked, impacts, new RawReader(new(file, file.CanSeek ? file.Length : null), raw));
        }

        using SoundFile sound = SoundFile.Open(asked.File);
        MeteredPass pass = Of(asked, impacts, sound.Reader);
        return pass with { Remarks = [.. sound.Remarks, .. pass.Remarks.Except(sound.Reader.Remarks)] };
    }

    /// <summary>The calibrator's tone in a file; null: there is none.</summary>
    /// <exception cref="RecordingRefusedException">No level can be taken from it.</exception>
    public static CalibratorTone? ToneIn(string path, int channel)
    {
        using SoundFile sound = SoundFile.Open(path);
        ToneFinder finder = new(sound.Reader.Format.RateHz);
        SoundPass.Through(sound.Reader, ChannelIn(sound.Reader.Format, channel), finder);
        return finder.Find(CalibratorTone.UsualHz);
    }

    /// <summary>The recording with its calibration, and all that has to be said about it.</summary>
    /// <param name="asked">What is asked for.</param>
    /// <param name="after">The tone in a later recording.</param>
    public MeteredRecording Calibrated(AskedLevels asked, CalibratorTone? after)
    {
        RecordingCalibration? calibration = (asked.GainDb, Tone) switch
        {
            ({ } gain, _) => new(gain, null, null),
            (null, { } tone) => new(tone.GainDb(asked.ToneDb!.Value), tone, after?.LevelDb - tone.LevelDb),
            _ => null,
        };
        RecordingLevels levels = calibration is null
            ? Levels
            : Levels with
            {
                Windows = [.. Levels.Windows.Select(window => window.Raised(calibration.GainDb))],
            };
        MeteredRecording recording = new(Format, levels, calibration, Decays, Remarks);
        return recording with { Remarks = [.. Remarks, .. LevelsRemarks.Of(recording, asked, HasPistonphone, after)] };
    }

    private static MeteredPass Of(AskedLevels asked, IReadOnlyList<ListedImpact> impacts, ISoundReader reader)
    {
        RecordingMeter meter = new(
            reader.Format.RateHz,
            reader.Format.LargestSample,
            asked.Windows,
            [.. impacts.Select(impact => impact.Window)]
        );
        ToneFinder? finder = asked.ToneDb is null ? null : new(reader.Format.RateHz);
        SoundPass pass = SoundPass.Through(reader, ChannelIn(reader.Format, asked.Channel), finder is null ? [meter] : [meter, finder]);
        RecordingLevels levels = meter.Finish();
        CalibratorTone? tone = finder?.Find(CalibratorTone.UsualHz);
        return new(
            reader.Format,
            levels,
            tone,
            tone is null && finder?.Find(CalibratorTone.PistonphoneHz) is not null,
            [
                .. impacts
                    .Index()
                    .GroupBy(impact => impact.Item.Segment)
                    .Select(group =>
                        (
                            group.Key,
                            RingDecay.Of(
                                group.Select(impact => (IReadOnlyList<double>)levels.Impacts[impact.Index]),
                                levels.LowRateHz,
                                RingBand.Decay
                            )
                        )
                    ),
            ],
            [.. reader.Remarks, .. pass.DeadChannels.Select(dead => LevelsWords.DeadChannel(dead, reader.Format.Channels))]
        );
    }

    private static int ChannelIn(SoundFormat format, int channel) =>
        channel <= format.Channels ? channel : throw new RecordingRefusedException(LevelsWords.NoSuchChannel(channel, format.Channels));
}

/// <summary>What has to be said about the levels of a recording.</summary>
internal static class LevelsRemarks
{
    private const double ShortS = 1.28;
    private const double DriftWarnsDb = 0.3;
    private const double DriftVoidsDb = 0.5;

    /// <summary>The remarks, most important first.</summary>
    public static IEnumerable<string> Of(MeteredRecording recording, AskedLevels asked, bool hasPistonphone, CalibratorTone? after) =>
        [
            .. Calibration(recording.Calibration, asked, hasPistonphone, after),
            .. recording.Format.RateHz < WeightingFilters.LowestRateHz
                ? [LevelsWords.NoWeightings(recording.Format.RateHz)]
                : Array.Empty<string>(),
            .. recording.Levels.Windows.SelectMany(window => InWindow(window, recording.Levels.Seconds)),
        ];

    private static IEnumerable<string> Calibration(
        RecordingCalibration? calibration,
        AskedLevels asked,
        bool hasPistonphone,
        CalibratorTone? after
    )
    {
        if (asked.ToneDb is not null && calibration is null)
        {
            yield return hasPistonphone ? LevelsWords.Pistonphone : LevelsWords.NoTone;
        }

        if (calibration is null)
        {
            yield return LevelsWords.DifferencesOnly;
        }

        if (asked.After is { } path && after is null)
        {
            yield return LevelsWords.NoToneAfter(path);
        }

        if (Math.Abs(calibration?.DriftDb ?? 0) > DriftWarnsDb)
        {
            yield return LevelsWords.Drifted(calibration!.DriftDb!.Value, Math.Abs(calibration.DriftDb.Value) > DriftVoidsDb);
        }
    }

    private static IEnumerable<string> InWindow(WindowLevels window, double seconds)
    {
        if (window.HeardS < window.Window.Seconds - 0.001)
        {
            yield return LevelsWords.BeyondTheEnd(window.Window, seconds);
        }

        if (window is { LZeqDb: null, HeardS: > 0 })
        {
            yield return LevelsWords.Silence(window.Window);
        }

        if (window.HeardS < ShortS)
        {
            yield return LevelsWords.TooShortForBands(window.Window);
        }

        if (window.IsOverloaded)
        {
            yield return LevelsWords.Clipped(window.Window, window.ClipEvents);
        }

        if (window.IsLikeSpeech)
        {
            yield return LevelsWords.LikeSpeech(window.Window);
        }
    }
}
