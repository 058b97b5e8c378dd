using FieldSession.Store.Recordings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Recordings;

/// <summary>Tiny files made byte by byte (case R03-files): values from the integers that went in.</summary>
public class SoundFileTests
{
    private static readonly RecordingCase Case = RecordingCase.Open("R03-files");

    public static TheoryData<string> GoodFiles =>
        [.. Case.Quantities().Where(name => name.EndsWith(".frames", StringComparison.Ordinal)).Select(name => name[..^".frames".Length])];

    [Theory]
    [MemberData(nameof(GoodFiles))]
    public void Every_form_is_read_to_its_last_whole_frame(string name)
    {
        using SoundFile file = SoundFile.Open(Case.PathOf(name));
        (int frames, double squares) = Sum(file.Reader);

        Case.Holds($"{name}.frames", frames);
        Case.Holds($"{name}.rate", file.Reader.Format.RateHz);
        Case.Holds($"{name}.bits", file.Reader.Format.Bits);
        Case.Holds($"{name}.channels", file.Reader.Format.Channels);
        Case.Holds($"{name}.sumsq", squares);
        if (Case.Quantities().Contains($"{name}.time_reference"))
        {
            Case.Holds($"{name}.time_reference", file.Reader.Clock?.SamplesSinceMidnight);
        }
    }

    [Fact]
    public void The_list_of_good_files_is_whole() => Assert.Equal(9, GoodFiles.Count);

    [Theory]
    [InlineData("bad.wav", "ADPCM is lossy")]
    [InlineData("bad-crc.flac", "damaged near")]
    public void A_lossy_or_damaged_file_is_refused_by_name(string name, string why)
    {
        RecordingRefusedException refused = Assert.Throws<RecordingRefusedException>(() =>
        {
            using SoundFile file = SoundFile.Open(Case.PathOf(name));
            Sum(file.Reader);
        });
        Assert.Equal("refused", Case.Text(name));
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unclosed.wav", "not closed by the recorder")]
    [InlineData("cut.wav", "shorter than its header says")]
    public void What_a_dead_battery_left_is_read_with_a_remark(string name, string remark)
    {
        using SoundFile file = SoundFile.Open(Case.PathOf(name));
        Sum(file.Reader);
        Assert.Contains(remark, Assert.Single(file.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void The_recorder_s_own_date_and_time_are_read()
    {
        using SoundFile file = SoundFile.Open(Case.PathOf("pcm24-bext-junk.wav"));
        Assert.Equal(new DateTime(2026, 2, 3, 9, 15, 0), file.Reader.Clock!.BegunAt);
    }

    [Theory]
    [InlineData("ID3\u0004 and music", "MPEG is lossy")]
    [InlineData("\0\0\0\u0018ftypM4A ", "MP4 is lossy")]
    [InlineData("OggS\0\0\0\0\0\0", "Ogg is not read here")]
    [InlineData("hello, world", "not a recording that is known here")]
    [InlineData("", "no sample")]
    [InlineData("RIFF\0\0\0\0WAVE", "without sound")]
    [InlineData("RIFF\0\0\0\0WAVEdata\0\0\0\0", "without a format")]
    [InlineData("RIFF\0\0\0\0WAVEfmt \u0010\0\0\0\u0001\0\u0001\0", "ends within its header")]
    [InlineData("RIFF\0\0\0\0WAVEfmt \u0010\0\0\0\u0001\0\u0001\0\u0040\u001f\0\0\0\0\0\0\u0001\0\b\0data", "8 bits a sample")]
    [InlineData(
        "RIFF\0\0\0\0WAVEfmt \u0010\0\0\0\u0001\0\u0001\0\u0040\u0006\0\0\0\0\0\0\u0002\0\u0010\0data",
        "1600 samples a second; levels need 8000"
    )]
    [InlineData("fLaC\u0080\0\0\u0022short", "FLAC header is wrong")]
    public void What_is_no_recording_for_levels_says_why(string bytes, string why)
    {
        using MemoryStream stream = new([.. bytes.Select(c => (byte)c)]);
        RecordingRefusedException refused = Assert.Throws<RecordingRefusedException>(() => SoundFile.ReaderOf(new(stream)));
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recording_comes_through_a_pipe_without_a_header()
    {
        using MemoryStream stream = new([0, 0x40, 0, 0xC0, 0x55]);
        RawReader reader = new(new(stream), new(48_000, 16, 1, IsFloat: false));
        double[] samples = new double[10];

        Assert.Equal(2, reader.Read(samples));
        Assert.Equal([0.5, -0.5], samples[..2]);
        Assert.Equal(0, reader.Read(samples));
    }

    [Fact]
    public void A_sample_that_is_no_number_is_damage()
    {
        using MemoryStream stream = new([0, 0, 0xC0, 0x7F]);
        RawReader reader = new(new(stream), new(48_000, 32, 1, IsFloat: true));
        Assert.Throws<RecordingRefusedException>(() => reader.Read(new double[1]));
    }

    [Fact]
    public void A_file_that_grows_is_read_as_far_as_it_went_and_that_is_said()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("fieldsession-grows").FullName, "growing.wav");
        byte[] whole = File.ReadAllBytes(Case.PathOf("unclosed.wav"));
        File.WriteAllBytes(path, whole[..^400]);
        using (SoundFile file = SoundFile.Open(path))
        {
            File.AppendAllBytes(path, whole[^400..]);
            (int frames, _) = Sum(file.Reader);
            Assert.Equal(300, frames);
            Assert.Contains(file.Remarks, remark => remark.Contains("grew", StringComparison.Ordinal));
        }

        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    private static (int Frames, double Squares) Sum(ISoundReader reader)
    {
        double[] frames = new double[37 * reader.Format.Channels];
        int count = 0;
        double squares = 0;
        for (int read = reader.Read(frames); read > 0; read = reader.Read(frames))
        {
            count += read;
            for (int i = 0; i < read; i++)
            {
                squares += frames[i * reader.Format.Channels] * frames[i * reader.Format.Channels];
            }
        }

        return (count, squares);
    }
}
