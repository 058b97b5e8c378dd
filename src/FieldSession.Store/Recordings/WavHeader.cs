using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace FieldSession.Store.Recordings;

/// <summary>What is before the sound in a WAV file.</summary>
/// <param name="Format">How the samples are written.</param>
/// <param name="SampleBytes">Bytes of one sample.</param>
/// <param name="SoundBytes">Bytes of sound; null: the recorder did not close the file, the sound goes to its end.</param>
/// <param name="Clock">The recorder's own time; null: not told.</param>
internal sealed record WavHeader(SoundFormat Format, int SampleBytes, long? SoundBytes, SoundClock? Clock)
{
    private const int ChunkHead = 8;

    /// <summary>
    /// Reads to the first byte of sound: RIFF, RF64 or BW64 (ITU-R BS.2088, EBU Tech 3285 for the broadcast chunk; from memory).
    /// </summary>
    /// <exception cref="RecordingRefusedException">The file is no WAV that levels can be taken from.</exception>
    public static WavHeader Read(ByteSource bytes)
    {
        Span<byte> head = stackalloc byte[12];
        Fill(bytes, head);
        if (!head[8..].SequenceEqual("WAVE"u8))
        {
            throw new RecordingRefusedException(RecordingWords.UnknownFormat);
        }

        WavFormat? format = null;
        long? longSound = null;
        BroadcastTime? time = null;
        while (true)
        {
            (string name, uint size) = NextChunk(bytes, head[..ChunkHead]);
            if (name == "data")
            {
                return Of(format ?? throw new RecordingRefusedException(RecordingWords.NoFormatChunk), size, longSound, time);
            }

            switch (name)
            {
                case "fmt ":
                    format = WavFormat.Of(Content(bytes, size));
                    break;
                case "ds64":
                    longSound = LongSound(Content(bytes, size));
                    break;
                case "bext":
                    time = BroadcastTime.Of(Content(bytes, size));
                    break;
                default:
                    bytes.Skip(size + (size & 1L));
                    break;
            }
        }
    }

    // the size of the sound is behind the size of the whole
    private static long? LongSound(byte[] sizes) => sizes.Length >= 16 ? BinaryPrimitives.ReadInt64LittleEndian(sizes.AsSpan(8)) : null;

    private static WavHeader Of(WavFormat format, uint size, long? longSound, BroadcastTime? time)
    {
        long? sound = size switch
        {
            uint.MaxValue when longSound is > 0 => longSound,
            0 or uint.MaxValue => null,
            _ => size,
        };
        return new(format.Sound, format.SampleBytes, sound, time is null ? null : new(time.SamplesSinceMidnight, time.BegunAt));
    }

    private static (string Name, uint Size) NextChunk(ByteSource bytes, Span<byte> head)
    {
        if (bytes.Read(head) < head.Length)
        {
            throw new RecordingRefusedException(RecordingWords.NoSoundChunk);
        }

        return (System.Text.Encoding.Latin1.GetString(head[..4]), BinaryPrimitives.ReadUInt32LittleEndian(head[4..]));
    }

    // enough of a chunk for what is read of it; a chunk of odd length has one more byte
    private static byte[] Content(ByteSource bytes, uint size)
    {
        byte[] content = new byte[Math.Min(size, 1024)];
        Fill(bytes, content);
        bytes.Skip(size - content.Length + (size & 1));
        return content;
    }

    private static void Fill(ByteSource bytes, Span<byte> into)
    {
        if (bytes.Read(into) < into.Length)
        {
            throw new RecordingRefusedException(RecordingWords.HeaderCutOff);
        }
    }
}

/// <summary>The time in the broadcast chunk of a WAV file (EBU Tech 3285, from memory); its free text is never read.</summary>
/// <param name="SamplesSinceMidnight">Time reference of the first sample.</param>
/// <param name="BegunAt">Date and time of day; null: not readable.</param>
internal sealed record BroadcastTime(long SamplesSinceMidnight, DateTime? BegunAt)
{
    private const int DateAt = 320;
    private const int ReferenceAt = 338;
    private const int Length = 346;

    /// <summary>Reads the chunk; null: it is too short.</summary>
    public static BroadcastTime? Of(ReadOnlySpan<byte> chunk)
    {
        if (chunk.Length < Length)
        {
            return null;
        }

        // recorders part the numbers with '-', '_', ':', '.' or blank
        string text = new([.. Encoding.Latin1.GetString(chunk[DateAt..ReferenceAt]).Select(c => char.IsAsciiDigit(c) ? c : ' ')]);
        bool isTime = DateTime.TryParseExact(
            text.Replace(" ", "", StringComparison.Ordinal),
            "yyyyMMddHHmmss",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out DateTime begun
        );
        return new(BinaryPrimitives.ReadInt64LittleEndian(chunk[ReferenceAt..]), isTime ? begun : null);
    }
}

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

    private static bool Fits(int tag, int bits, int sampleBytes) =>
        tag == Pcm
            ? bits is >= 16 and <= 32 && sampleBytes is 2 or 3 or 4 && bits <= 8 * sampleBytes
            : bits is 32 or 64 && sampleBytes == bits / 8;

    // names of the registry of wave formats (RFC 2361), those that recorders write
    private static string NameOf(int tag) =>
        tag switch
        {
            0x0002 or 0x0011 => "ADPCM",
            0x0006 => "A-law",
            0x0007 => "mu-law",
            0x0050 or 0x0055 => "MPEG",
            0x00FF or 0x1610 => "AAC",
            _ => $"WAV 0x{tag:X4}",
        };
}
