using System.Buffers.Binary;

namespace FieldSession.Store.Recordings;

/// <summary>What is before the sound in a WAV file.</summary>
/// <param name="Format">How the samples are written.</param>
/// <param name="SampleBytes">Bytes of one sample.</param>
/// <param name="SoundBytes">Bytes of sound; null: the recorder did not close the file, the sound goes to its end.</param>
/// <param name="Clock">The recorder's own time; null: not told.</param>
internal sealed record WavHeader(SoundFormat Format, int SampleBytes, long? SoundBytes, SoundClock? Clock)
{
    private const int ChunkHead = 8;

    /// <summary>Reads to the first byte of sound: RIFF, RF64 or BW64 (ITU-R BS.2088, EBU Tech 3285 for the broadcast chunk; from memory).</summary>
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
