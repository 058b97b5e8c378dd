using System.Buffers.Binary;
using System.Diagnostics;
using FieldSession.Store.Recordings;

namespace FieldSession.Tests.Recordings;

/// <summary>
/// FLAC against files made by the reference encoder, `flac` of the distribution (Debian: package flac): every sample that went in comes
/// out. Where the encoder is not installed the tests fail and say so; `.ci/run` installs it.
/// </summary>
public sealed class FlacReferenceEncoderTests : IDisposable
{
    private const int RateHz = 48_000;
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-flac").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(16)]
    [InlineData(192)]
    [InlineData(576)]
    [InlineData(1000)]
    [InlineData(1152)]
    [InlineData(2304)]
    [InlineData(4096)]
    [InlineData(4608)]
    [InlineData(16_384)]
    [InlineData(65_535)]
    public void Every_block_size_comes_out_as_it_went_in(int blockSize) =>
        ComesOut(Music(16, 1, 70_001, 3), 16, 1, ["--lax", $"--blocksize={blockSize}"]);

    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(16)]
    [InlineData(20)]
    [InlineData(24)]
    [InlineData(32)]
    public void Every_depth_comes_out_as_it_went_in(int bits) => ComesOut(Music(bits, 2, 20_000, 5), bits, 2, ["-8", "--lax"]);

    // -0 without mid and side, -1 adaptive, -2 exhaustive choice of left, right, mid and side
    [Theory]
    [InlineData("-0")]
    [InlineData("-1")]
    [InlineData("-2")]
    [InlineData("-5")]
    [InlineData("-8")]
    public void Every_stereo_mode_and_level_comes_out_as_it_went_in(string level)
    {
        ComesOut(Stereo(1, 0.02), 16, 2, [level, "--blocksize=1024"]);
        ComesOut(Stereo(-1, 0.02), 16, 2, [level, "--blocksize=1024"]);
        ComesOut(Stereo(0.3, 0.9), 16, 2, [level, "--blocksize=1024"]);
    }

    [Theory]
    [InlineData("-l", "32", "-e")]
    [InlineData("-l", "1", "-q", "5")]
    [InlineData("-l", "0")]
    [InlineData("-r", "0,8")]
    [InlineData("-A", "rectangle", "-p")]
    public void Every_kind_of_prediction_comes_out_as_it_went_in(params string[] words) =>
        ComesOut(Music(24, 1, 30_000, 7), 24, 1, ["--lax", .. words]);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(8)]
    public void Every_number_of_channels_comes_out_as_it_went_in(int channels) =>
        ComesOut(Music(16, channels, 9000, 11), 16, channels, ["--channel-map=none"]);

    [Fact]
    public void Silence_full_scale_wasted_bits_and_white_noise_come_out_as_they_went_in()
    {
        ComesOut(new int[10_000], 24, 1, []);
        ComesOut([.. Enumerable.Range(0, 10_000).Select(i => i / 50 % 2 == 0 ? int.MaxValue : int.MinValue)], 32, 1, []);
        ComesOut([.. Music(16, 1, 10_000, 13).Select(sample => sample << 8)], 24, 1, []);
        Random lot = new(17);
        ComesOut([.. Enumerable.Range(0, 20_000).Select(_ => lot.Next(-8_388_608, 8_388_608))], 24, 1, ["-0"]);
    }

    [Fact]
    public void A_file_cut_off_is_read_to_its_last_whole_frame_and_a_changed_byte_is_refused()
    {
        int[] samples = Music(16, 1, 40_000, 19);
        byte[] encoded = File.ReadAllBytes(Encoded(samples, 16, 1, ["--blocksize=1000"]));

        FlacRead cut = ReadBack(encoded[..(encoded.Length * 2 / 3)], 16);
        Assert.Equal(samples[..cut.Samples.Length], cut.Samples);
        Assert.InRange(cut.Samples.Length, 20_000, 39_000);
        Assert.Equal(0, cut.Samples.Length % 1000);
        Assert.Contains("shorter than its header says", Assert.Single(cut.Remarks), StringComparison.Ordinal);

        // behind the header and its padding every byte of a frame is under a check sum
        Random lot = new(23);
        for (int i = 0; i < 40; i++)
        {
            byte[] damaged = [.. encoded];
            damaged[lot.Next(9000, encoded.Length)] ^= (byte)(1 << lot.Next(8));
            Assert.Throws<RecordingRefusedException>(() => ReadBack(damaged, 16));
        }
    }

    private void ComesOut(int[] samples, int bits, int channels, string[] words)
    {
        FlacRead read = ReadBack(File.ReadAllBytes(Encoded(samples, bits, channels, words)), bits);
        Assert.Equal(bits, read.Format.Bits);
        Assert.Equal(channels, read.Format.Channels);
        Assert.Equal(RateHz, read.Format.RateHz);
        Assert.Equal(samples, read.Samples);
        Assert.Empty(read.Remarks);
    }

    // as WAV with the depth in its header: of raw samples the encoder takes whole bytes only
    private string Encoded(int[] samples, int bits, int channels, string[] words)
    {
        string wav = Path.Combine(_folder, "in.wav");
        string flac = Path.Combine(_folder, "out.flac");
        int width = (bits + 7) / 8;
        using (BinaryWriter file = new(File.Create(wav)))
        {
            file.Write("RIFF"u8);
            file.Write(60 + (samples.Length * width));
            file.Write("WAVEfmt "u8);
            file.Write(40);
            foreach (
                int word in new[]
                {
                    0xFFFE,
                    channels,
                    RateHz & 0xFFFF,
                    RateHz >> 16,
                    RateHz * width * channels & 0xFFFF,
                    RateHz * width * channels >> 16,
                    width * channels,
                    8 * width,
                    22,
                    bits,
                }
            )
            {
                file.Write((ushort)word);
            }

            file.Write((1 << channels) - 1);
            file.Write(Convert.FromHexString("0100000000001000800000AA00389B71"));
            file.Write("data"u8);
            file.Write(samples.Length * width);
            file.Write(Bytes(samples, bits, width));
        }

        Run(["-s", "-f", .. words, "-o", flac, wav]);
        return flac;
    }

    // high-aligned; one byte a sample counts from 128
    private static byte[] Bytes(int[] samples, int bits, int width)
    {
        byte[] bytes = new byte[samples.Length * width];
        Span<byte> four = stackalloc byte[4];
        for (int i = 0; i < samples.Length; i++)
        {
            BinaryPrimitives.WriteInt32LittleEndian(four, (samples[i] << ((8 * width) - bits)) + (width == 1 ? 128 : 0));
            four[..width].CopyTo(bytes.AsSpan(i * width));
        }

        return bytes;
    }

    private static void Run(string[] words)
    {
        try
        {
            using Process flac = Process.Start(new ProcessStartInfo("flac", words) { RedirectStandardError = true })!;
            string said = flac.StandardError.ReadToEnd();
            flac.WaitForExit();
            Assert.True(flac.ExitCode == 0, said);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Fail("the reference encoder is missing: install the package 'flac' (.ci/run does)");
        }
    }

    private static FlacRead ReadBack(byte[] bytes, int bits)
    {
        using MemoryStream stream = new(bytes);
        ISoundReader reader = SoundFile.ReaderOf(new(stream));
        double[] frames = new double[1001 * reader.Format.Channels];
        List<int> samples = [];
        for (int read = reader.Read(frames); read > 0; read = reader.Read(frames))
        {
            samples.AddRange(frames.Take(read * reader.Format.Channels).Select(sample => (int)Math.ScaleB(sample, bits - 1)));
        }

        return new(reader.Format, [.. samples], reader.Remarks);
    }

    // a slow swing, a tone and some noise, within the depth
    private static int[] Music(int bits, int channels, int frames, int seed)
    {
        Random lot = new(seed);
        double most = Math.ScaleB(1, bits - 1) - 1;
        return
        [
            .. Enumerable
                .Range(0, frames * channels)
                .Select(i =>
                {
                    double t = i / channels / (double)RateHz;
                    double sound =
                        (0.5 * Math.Sin(40 * t)) + (0.3 * Math.Sin(2800 * (t + (i % channels)))) + (0.15 * ((2 * lot.NextDouble()) - 1));
                    return (int)Math.Round(most * sound);
                }),
        ];
    }

    // right = share of left, and some of its own
    private static int[] Stereo(double share, double own)
    {
        int[] left = Music(16, 1, 8000, 29);
        int[] noise = Music(16, 1, 8000, 31);
        return
        [
            .. left.Zip(noise, (l, n) => new[] { l, (int)Math.Clamp((share * l) + (own * n), short.MinValue, short.MaxValue) })
                .SelectMany(frame => frame),
        ];
    }

    private sealed record FlacRead(SoundFormat Format, int[] Samples, IReadOnlyList<string> Remarks);
}
