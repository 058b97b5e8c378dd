using System.Buffers.Binary;
using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Store.Recordings;

/// <summary>Finds recordings by their content and cuts clips out of them, as WAV in memory. The files are only read.</summary>
public static class ClipSound
{
    private const int HeaderBytes = 44;
    private const int SampleBytes = 3;
    private const double LargestSample = 8_388_607;
    private const double FadeS = 0.03;

    /// <summary>
    /// Which files hold recordings that are looked for: path by SHA-256. All are read, so that no access tells which one was wanted.
    /// </summary>
    /// <param name="paths">Files, and folders whose files are looked at, with the folders in them.</param>
    /// <param name="wanted">SHA-256 of the recordings, 64 hex digits.</param>
    /// <exception cref="IOException">A file or folder is not there, or can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static ImmutableDictionary<string, string> Find(IEnumerable<string> paths, IReadOnlyCollection<string> wanted)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(wanted);
        Dictionary<string, string> found = [];
        foreach (
            string file in paths.SelectMany(path =>
                Directory.Exists(path) ? Directory.EnumerateFiles(path, "*", SearchOption.AllDirectories).Where(IsSound) : [path]
            )
        )
        {
            string hash = RunSound.Sha256Of(file);
            if (wanted.Contains(hash))
            {
                found.TryAdd(hash, file);
            }
        }

        return found.ToImmutableDictionary();
    }

    /// <summary>Cuts clips: WAV, one channel, 24 bits, at the rate and the level of the recording, faded in and out over 0.03 s.</summary>
    /// <param name="path">The recording.</param>
    /// <param name="channel">The channel, from 1.</param>
    /// <param name="windows">The clips.</param>
    /// <exception cref="RecordingRefusedException">The recording is damaged.</exception>
    /// <exception cref="IOException">It can't be read.</exception>
    public static ImmutableArray<byte[]> Cut(string path, int channel, IReadOnlyList<TimeWindow> windows)
    {
        ArgumentNullException.ThrowIfNull(windows);
        using SoundFile sound = SoundFile.Open(path);
        int rateHz = sound.Reader.Format.RateHz;
        CutSamples[] cuts = [.. windows.Select(window => new CutSamples(window, rateHz))];
        SoundPass.Through(sound.Reader, channel, cuts);
        return [.. cuts.Select(cut => Wav(cut.Samples, rateHz))];
    }

    private static bool IsSound(string path)
    {
        try
        {
            using SoundFile sound = SoundFile.Open(path);
            return true;
        }
        catch (RecordingRefusedException)
        {
            return false;
        }
    }

    private static byte[] Wav(double[] samples, int rateHz)
    {
        byte[] wav = new byte[HeaderBytes + (SampleBytes * samples.Length)];
        Span<byte> head = wav;
        "RIFF"u8.CopyTo(head);
        BinaryPrimitives.WriteInt32LittleEndian(head[4..], wav.Length - 8);
        "WAVEfmt "u8.CopyTo(head[8..]);
        BinaryPrimitives.WriteInt32LittleEndian(head[16..], 16);
        BinaryPrimitives.WriteInt16LittleEndian(head[20..], 1);
        BinaryPrimitives.WriteInt16LittleEndian(head[22..], 1);
        BinaryPrimitives.WriteInt32LittleEndian(head[24..], rateHz);
        BinaryPrimitives.WriteInt32LittleEndian(head[28..], rateHz * SampleBytes);
        BinaryPrimitives.WriteInt16LittleEndian(head[32..], SampleBytes);
        BinaryPrimitives.WriteInt16LittleEndian(head[34..], 8 * SampleBytes);
        "data"u8.CopyTo(head[36..]);
        BinaryPrimitives.WriteInt32LittleEndian(head[40..], SampleBytes * samples.Length);
        for (int i = 0; i < samples.Length; i++)
        {
            int sample = (int)Math.Round(Math.Clamp(samples[i] * Fade(i, samples.Length, rateHz), -1, 1) * LargestSample);
            int at = HeaderBytes + (SampleBytes * i);
            (wav[at], wav[at + 1], wav[at + 2]) = ((byte)sample, (byte)(sample >> 8), (byte)(sample >> 16));
        }

        return wav;
    }

    // a cut in the middle of a sound clicks, each in its own way
    private static double Fade(int at, int length, int rateHz)
    {
        double share = Math.Min(1, Math.Min(at + 1, length - at) / (FadeS * rateHz));
        return 0.5 * (1 - Math.Cos(Math.PI * share));
    }

    /// <summary>Keeps the samples of one window.</summary>
    private sealed class CutSamples(TimeWindow window, int rateHz) : ISampleTaker
    {
        private readonly long _from = (long)Math.Round(window.FromS * rateHz);
        private long _at;

        /// <summary>The samples, as numbers of full scale; silence where the recording has ended.</summary>
        public double[] Samples { get; } = new double[(int)Math.Round(window.Seconds * rateHz)];

        /// <inheritdoc/>
        public void Take(ReadOnlySpan<double> samples)
        {
            int first = (int)Math.Clamp(_from - _at, 0, samples.Length);
            int end = (int)Math.Clamp(_from + Samples.Length - _at, 0, samples.Length);
            if (first < end)
            {
                samples[first..end].CopyTo(Samples.AsSpan((int)(_at + first - _from)));
            }

            _at += samples.Length;
        }
    }
}
