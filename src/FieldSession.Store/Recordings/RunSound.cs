using System.Collections.Immutable;
using System.Security.Cryptography;
using FieldSession.Acoustics;
using FieldSession.Aligning;
using FieldSession.Listening;
using FieldSession.Signals;
using FieldSession.Store.Disks;

namespace FieldSession.Store.Recordings;

/// <summary>
/// Reads the recording of a run: once for its time, once for its levels. The file is only read, and no sample of it is kept.
/// </summary>
public static class RunSound
{
    /// <summary>The first reading: length, knocks, the calibrator's tone, dead channels.</summary>
    /// <param name="path">The file.</param>
    /// <param name="channel">The channel, from 1.</param>
    /// <exception cref="RecordingRefusedException">No level can be taken from it.</exception>
    /// <exception cref="NotAFileException">It is a pipe or a device, which can be read once at most.</exception>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static Survey Survey(string path, int channel)
    {
        FileKind.RefuseSpecial(path);
        using SoundFile sound = SoundFile.Open(path);
        SoundFormat format = sound.Reader.Format;
        Knocks knocks = new(format.RateHz);
        ToneFinder tones = new(format.RateHz);
        SoundPass pass = SoundPass.Through(sound.Reader, ChannelIn(format, channel), knocks, tones);
        CalibratorTone? tone = tones.Find(CalibratorTone.UsualHz);
        return new(Sha256Of(path), format.RateHz, format.Bits, channel, (double)pass.Frames / format.RateHz)
        {
            WrittenAt = new DateTimeOffset(sound.WrittenUtc, TimeSpan.Zero),
            ToldBegin = sound.Reader.Clock?.BegunAt,
            Knocks = knocks.Thirds(),
            Tone = tone,
            HasPistonphone = tone is null && tones.Find(CalibratorTone.PistonphoneHz) is not null,
            IsDead = pass.DeadChannels.Contains(channel),
            LoudestChannel = pass.MeanSquares.IndexOf(pass.MeanSquares.Max()) + 1,
            HasGrown = sound.HasGrown,
        };
    }

    /// <summary>The second reading: the levels of windows.</summary>
    /// <param name="path">The file.</param>
    /// <param name="channel">The channel, from 1.</param>
    /// <param name="windows">The windows.</param>
    /// <param name="impacts">Those of them whose ring is followed after an impact.</param>
    /// <param name="ring">The ring band.</param>
    /// <exception cref="RecordingRefusedException">No level can be taken from it, or it grew.</exception>
    /// <exception cref="IOException">It can't be read.</exception>
    public static RecordingLevels Levels(
        string path,
        int channel,
        ImmutableArray<TimeWindow> windows,
        ImmutableArray<TimeWindow> impacts,
        FrequencyBand ring
    )
    {
        using SoundFile sound = SoundFile.Open(path);
        SoundFormat format = sound.Reader.Format;
        RecordingMeter meter = new(format.RateHz, format.LargestSample, windows, impacts, ring);
        SoundPass.Through(sound.Reader, ChannelIn(format, channel), meter);
        return sound.HasGrown ? throw new RecordingRefusedException(RecordingWords.Grew) : meter.Finish();
    }

    private static int ChannelIn(SoundFormat format, int channel) =>
        channel <= format.Channels ? channel : throw new RecordingRefusedException(RecordingWords.NoSuchChannel(channel, format.Channels));

    /// <summary>SHA-256 of a file, 64 hex digits.</summary>
    internal static string Sha256Of(string path)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }
}
