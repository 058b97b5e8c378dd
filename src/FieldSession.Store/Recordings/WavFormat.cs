using System.Buffers.Binary;

namespace FieldSession.Store.Recordings;

/// <summary>The chunk of a WAV file that says how samples are written.</summary>
/// <param name="Sound">How they are written.</param>
/// <param name="SampleBytes">Bytes of one sample.</param>
internal sealed record WavFormat(SoundFormat Sound, int SampleBytes)
{
    private const int Pcm = 1;
    private const int Float = 3;
    private const int Extensible = 0xFFFE;

    /// <summary>Reads the chunk.</summary>
    /// <exception cref="RecordingRefusedException">The format is lossy or broken.</exception>
    public static WavFormat Of(ReadOnlySpan<byte> chunk)
    {
        if (chunk.Length < 16)
        {
            throw new RecordingRefusedException(RecordingWords.HeaderCutOff);
        }

        int tag = TagOf(chunk);
        int channels = BinaryPrimitives.ReadUInt16LittleEndian(chunk[2..]);
        int rate = BinaryPrimitives.ReadInt32LittleEndian(chunk[4..]);
        int frameBytes = BinaryPrimitives.ReadUInt16LittleEndian(chunk[12..]);
        int bits = BinaryPrimitives.ReadUInt16LittleEndian(chunk[14..]);
        if (tag is not (Pcm or Float))
        {
            throw new RecordingRefusedException(RecordingWords.Lossy(NameOf(tag)));
        }

        if (bits is > 0 and < 16)
        {
            throw new RecordingRefusedException(RecordingWords.Bits(bits));
        }

        if (channels == 0 || frameBytes % channels != 0 || !Fits(tag, bits, frameBytes / channels))
        {
            throw new RecordingRefusedException(RecordingWords.Layout(bits, channels, frameBytes));
        }

        return new(SoundRates.Accepted(new(rate, bits, channels, tag == Float)), frameBytes / channels);
    }

    // an extensible format has its tag at the beginning of a longer name
    private static int TagOf(ReadOnlySpan<byte> chunk)
    {
        int tag = BinaryPrimitives.ReadUInt16LittleEndian(chunk);
        return tag == Extensible && chunk.Length >= 26 ? BinaryPrimitives.ReadUInt16LittleEndian(chunk[24..]) : tag;
    }

    private static bool Fits(int tag, int bits, int sampleBytes) => tag == Pcm
        ? bits is >= 16 and <= 32 && sampleBytes is 2 or 3 or 4 && bits <= 8 * sampleBytes
        : bits is 32 or 64 && sampleBytes == bits / 8;

    // names of the registry of wave formats (RFC 2361), those that recorders write
    private static string NameOf(int tag) => tag switch
    {
        0x0002 or 0x0011 => "ADPCM",
        0x0006 => "A-law",
        0x0007 => "mu-law",
        0x0050 or 0x0055 => "MPEG",
        0x00FF or 0x1610 => "AAC",
        _ => $"WAV 0x{tag:X4}",
    };
}
